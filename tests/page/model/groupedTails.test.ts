import { describe, expect, it } from 'vitest';
import { dragLine, makeEven, oneFewer, oneMore, setTailCount } from '../../../src/page/model/edits.ts';
import { quantity } from '../../../src/page/model/quantities.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { value } from '../../value.ts';
import { CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

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

  it('have the pin inside a group as their pin', () => {
    expect(quantity(lone(now), 'pin')?.get(lone(now))).toBe(9);
    const apart = planOf('spacing: grouped, groups: [1, 1, 1]');
    expect(quantity(lone(apart), 'pin')).toBe(undefined);
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
