import { describe, expect, it } from 'vitest';
import { dragLine, makeEven, oneFewer, oneMore, setTailCount } from '../../../src/page/model/edits.ts';
import { handlesOf } from '../../../src/page/model/handles.ts';
import { quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE } from '../../../src/page/model/scope.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { value } from '../../value.ts';
import { BACK, CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const planOf = (keys: string): Snapshot =>
  snapshotOf(
    `joints: [{name: Case, kind: through, width: 430, tailBoard: 19, pinBoard: 19, pin: 9, ${keys}}]\n`,
  );
const lone = (now: Snapshot) => cornerIn(now, LONE);
const GROUPS = 'spacing: grouped, groups: [1, 3, 2], groupPin: 30';

describe('grouped tails on the page', () => {
  const now = planOf(GROUPS);

  it('take one more, or one fewer, in the highest group', () => {
    expect(value(oneMore(now, lone(now))).text).toContain('groups: [1, 3, 3]');
    const fewer = value(oneFewer(now, lone(now)));
    expect(fewer.text).toContain('groups: [1, 3, 1]');
    // A group of none goes.
    expect(value(oneFewer(fewer, lone(fewer))).text).toContain('groups: [1, 3], groupPin: 30');
  });

  it('are listed, and grouped no more, once a line is moved', () => {
    const { snapshot } = dragLine(now, lone(now), 0, 12);
    expect(snapshot.text).toMatch(/tails: \[/u);
    expect(snapshot.text).not.toMatch(/spacing|group/u);
    expect(lone(snapshot).joint.tails[0]?.tip[0]).toBe(12);
  });

  it('are equal, and grouped no more, where they are counted or made even', () => {
    for (const made of [setTailCount(now, lone(now), 5), makeEven(now, lone(now))]) {
      const { text } = value(made);
      expect(text).not.toMatch(/spacing|group/u);
      expect(text).toMatch(/tails: [56]/u);
    }
  });

  it('stay in groups while a pin between those is moved, all of which are as wide as each other', () => {
    const handles = handlesOf(lone(now)).filter(({ id }) => id.startsWith('group pin'));
    expect(handles.map(({ label, value: width }) => [label, Math.round(width)])).toEqual([
      ['pin between groups 1 and 2', 30],
      ['pin between groups 2 and 3', 30],
    ]);
    const { snapshot } = handles[1]?.move(now, lone(now), 34, FIRST_SCOPE) ?? {};
    expect(snapshot?.text).toContain('groups: [1, 3, 2], groupPin: 34');
    // 430 less 2 half pins of 9, 3 pins of 9 and 2 of 34, over 6 tails.
    expect(snapshot && lone(snapshot).joint.tails[0]?.tip[1]).toBeCloseTo(9 + (430 - 18 - 27 - 68) / 6, 9);
    const listed = dragLine(now, lone(now), 0, 12).snapshot;
    expect(handlesOf(lone(listed)).some(({ id }) => id.startsWith('group pin'))).toBe(false);
  });

  it('have the pin inside a group as their pin', () => {
    expect(quantity(lone(now), 'pin')?.get(lone(now))).toBe(9);
    const apart = planOf('spacing: grouped, groups: [1, 1, 1]');
    // Of which the pins between groups are three, though none is inside one.
    expect(quantity(lone(apart), 'pin')?.get(lone(apart))).toBe(9);
  });
});

describe('tails closer at the edges on the page', () => {
  const now = planOf('spacing: closer-edges, closer: 0.8, closerTails: 1');

  it('stay so where they are counted', () => {
    const { text } = value(oneMore(now, lone(now)));
    expect(text).toContain('spacing: closer-edges, closer: 0.8, closerTails: 1');
    expect(text).toContain(`tails: ${lone(now).joint.tails.length + 1}`);
  });

  it('are listed, or equal, and closer no more, once a line is moved or they are made even', () => {
    const { snapshot } = dragLine(now, lone(now), 0, 12);
    expect(snapshot.text).toMatch(/tails: \[/u);
    expect(snapshot.text).not.toMatch(/spacing|closer/u);
    const even = value(makeEven(now, lone(now)));
    expect(even.text).not.toMatch(/spacing|closer/u);
    expect(lone(even).joint.even).toBe(true);
  });

  it('are made even where the plan has them so for all drawers', () => {
    const drawers = snapshotOf(
      CHEST.replace('joint:  {', 'joint:  {spacing: closer-edges, closerTails: 1, '),
    );
    const even = value(makeEven(drawers, cornerIn(drawers, FRONT)));
    expect(even.text).toContain('spacing: even');
    expect(cornerIn(even, FRONT).joint.even).toBe(true);
  });
});

describe("a hound's tooth on the page", () => {
  it('has a handle on each small pin, and all become as wide as the one that is moved', () => {
    const now = planOf('spacing: hounds-tooth, tails: 6');
    const handles = handlesOf(lone(now)).filter(({ id }) => id.startsWith('small pin'));
    expect(handles.map(({ value: width }) => width)).toEqual(new Array(6).fill(4.5));
    const { snapshot } = handles[2]?.move(now, lone(now), 6, FIRST_SCOPE) ?? {};
    expect(snapshot?.text).toContain('smallPin: 6');
    expect(
      snapshot && lone(snapshot).joint.smallPins?.map(({ narrow: [from, to] }) => Math.round(to - from)),
    ).toEqual(new Array(6).fill(6));
    // The chisel of 3 stops it.
    const stopped = handles[0]?.move(now, lone(now), 1, FIRST_SCOPE);
    expect(stopped?.stop).not.toEqual([]);
  });

  it('of a drawer’s back writes its small pins there, and leaves the other drawers', () => {
    const drawers = snapshotOf(
      CHEST.replace('back:   {drop: 4}', 'back:   {drop: 4, joint: {spacing: hounds-tooth, pin: 6}}'),
    );
    const back = cornerIn(drawers, BACK);
    const handle = handlesOf(back).find(({ id }) => id === 'small pin 1');
    const { snapshot } = handle?.move(drawers, back, 4, FIRST_SCOPE) ?? {};
    expect(
      snapshot?.project.set.drawers
        .map(
          ({ back: { smallPins: [first] = [] } }) => first && Math.round(first.narrow[1] - first.narrow[0]),
        )
        .slice(0, 2),
    ).toEqual([4, 3]);
  });

  it('keeps its small pins where its tails are listed, counted or made even', () => {
    const now = planOf('spacing: hounds-tooth, smallPin: 5');
    const { snapshot } = dragLine(now, lone(now), 0, 12);
    for (const { text } of [
      snapshot,
      value(setTailCount(now, lone(now), 5)),
      value(makeEven(now, lone(now))),
    ])
      expect(text).toContain('spacing: hounds-tooth, smallPin: 5');
    const { tails, smallPins } = lone(snapshot).joint;
    expect(smallPins).toHaveLength(tails.length);
  });
});
