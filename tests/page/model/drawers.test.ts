import { describe, expect, it } from 'vitest';
import {
  addCorner,
  addDrawer,
  blankPlan,
  duplicate,
  move,
  remove,
  rename,
  setCount,
} from '../../../src/page/model/drawers.ts';
import { dragLine, setTailCount } from '../../../src/page/model/edits.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import type { Result } from '../../../src/units/complaint.ts';
import { speak } from '../../../src/units/phrase.ts';
import { BOX, CHEST, cornerIn, FRONT, LONE, snapshotOf } from '../chest.ts';

const chest = snapshotOf(CHEST);
const box = snapshotOf(BOX);
const made = (result: Result<Snapshot>): Snapshot => {
  if (!result.ok) throw new Error(result.complaints.map(({ says }) => speak(says, 'mm')).join('; '));
  return result.value;
};
const names = ({ project }: Snapshot) => project.set.drawers.map(({ spec }) => spec.name);

describe('the drawers of a plan', () => {
  it('can be renamed, though not as another is', () => {
    expect(names(made(rename(chest, cornerIn(chest, FRONT), 'Pins: & <needles>')))[0]).toBe(
      'Pins: & <needles>',
    );
    const result = rename(chest, cornerIn(chest, FRONT), 'thread');
    expect(result.ok ? '' : speak(result.complaints[0]?.says ?? [], 'mm')).toMatch(
      /every name must be different/u,
    );
  });

  it('are made as often as is typed, though not by halves', () => {
    expect(made(setCount(chest, cornerIn(chest, FRONT), 4)).project.set.drawers[0]?.spec.count).toBe(4);
    expect(setCount(chest, cornerIn(chest, FRONT), 2.5).ok).toBe(false);
  });

  it('can be had once more, with a name that none has', () => {
    const two = made(duplicate(chest, cornerIn(chest, FRONT)));
    expect(names(two).slice(0, 3)).toEqual(['Buttons', 'Buttons 2', 'Thread']);
    const three = made(duplicate(two, cornerIn(two, { of: 'drawer', index: 1, end: 'front' })));
    expect(names(three).slice(0, 4)).toEqual(['Buttons', 'Buttons 2', 'Buttons 3', 'Thread']);
    expect(three.text).toContain(
      '  - {name: Buttons 2, count: 2, opening: {width: 280, height: 76, depth: 420}}\n',
    );
  });

  it('can be removed, all but the last', () => {
    expect(names(made(remove(chest, cornerIn(chest, FRONT))))).toEqual(names(chest).slice(1));
    expect(remove(box, cornerIn(box, LONE)).ok).toBe(false);
    const two = made(duplicate(box, cornerIn(box, LONE)));
    expect(made(remove(two, cornerIn(two, LONE))).project.joints.map(({ name }) => name)).toEqual([
      'Corner 2',
    ]);
  });
});

/** A cabinet whose rows name the drawers, and a board that one has been cut from. */
const ROWS = `stock: {front: {thickness: 20}, side: {thickness: 11}}
cabinet:
  width: 574
  height: 370
  depth: 420
  rail: 14
  rows: [[Buttons, BUTTONS], [{name: Thread, width: 200}, {rows: [Ribbon, Buttonhooks], heights: [40, auto]}], Cloth]
breakout: {runThrough: [[Buttons, Ribbon], {stack: [Cloth, "Buttons"]}]}
boards:
  - {name: Buttons, stock: front, thickness: 26, length: 2000, width: 230}
`;
const NAMES = ['Buttons', 'Thread', 'Ribbon', 'Buttonhooks', 'Cloth'];

describe('a drawer that is named elsewhere', () => {
  it('is renamed in the rows of its cabinet, and in what runs through, and nothing else is', () => {
    const now = snapshotOf(ROWS);
    expect(names(now)).toEqual(NAMES);
    const { text } = made(rename(now, cornerIn(now, FRONT), 'Bobbins'));
    expect(text).toBe(
      ROWS.replace('[Buttons, BUTTONS]', '[Bobbins, Bobbins]')
        .replace('[[Buttons, Ribbon]', '[[Bobbins, Ribbon]')
        .replace('"Buttons"', '"Bobbins"'),
    );
  });

  it('is renamed in its own entry too, and in what was cut of a board', () => {
    const cut =
      '{cuts: [{kind: crosscut, piece: 0, at: 25}, {kind: crosscut, piece: 2, at: 350}, {kind: rip, piece: 3, at: 130}], blanks: [{drawer: Thread, part: front, index: 1, turned: false, x: 28, y: 0, length: 322, width: 130, piece: 5}]}';
    const listed = ROWS.replace('width: 230}', `width: 230, cut: ${cut}}`).replace(
      'breakout:',
      `drawers: [${NAMES.map((name) => `{name: ${name}}`).join(', ')}]\nbreakout:`,
    );
    const now = snapshotOf(listed);
    const thread = cornerIn(now, { of: 'drawer', index: 1, end: 'front' });
    expect(made(rename(now, thread, 'Twine')).text).toBe(listed.replaceAll('Thread', 'Twine'));
  });

  it('takes no name that another has, nor an empty one', () => {
    const now = snapshotOf(ROWS);
    for (const name of ['CLOTH', ' ']) expect(rename(now, cornerIn(now, FRONT), name).ok).toBe(false);
  });
});

describe('drawers that only the rows of a cabinet name', () => {
  const list = (at: number, more: string): string =>
    `drawers:\n${NAMES.map((name, i) => `  - {name: ${name}${i === at ? more : ''}}\n`).join('')}`;

  it('are listed where one of them gets something of its own', () => {
    const now = snapshotOf(ROWS);
    for (const index of [0, 2, 4]) {
      const corner = cornerIn(now, { of: 'drawer', index, end: 'front' });
      expect(made(setTailCount(now, corner, 1)).text).toBe(`${ROWS}${list(index, ', joint: {tails: 1}')}`);
    }
    const { snapshot: dragged } = dragLine(now, cornerIn(now, FRONT), 1, 20);
    expect(snapshotOf(dragged.text).project).toEqual(dragged.project);
  });

  it('are listed where their order changes', () => {
    const now = snapshotOf(ROWS);
    const moved = made(move(now, cornerIn(now, FRONT), 1));
    expect(names(moved)).toEqual(['Thread', 'Buttons', 'Ribbon', 'Buttonhooks', 'Cloth']);
  });
});

describe('move', () => {
  it.each([
    ['a block', CHEST],
    [
      'JSON',
      '{"stock": {"front": {"thickness": 20}, "side": {"thickness": 11}}, "drawers": [{"name": "A", "opening": {"width": 200, "height": 76, "depth": 300}}, {"name": "B", "opening": {"width": 220, "height": 76, "depth": 300}}]}',
    ],
  ])('lets an entry of %s change places with its neighbour, and back again', (_, text) => {
    const now = snapshotOf(text);
    const later = move(now, cornerIn(now, FRONT), 1);
    if (!later.ok) throw new Error('refused');
    const [first, second, ...others] = names(now);
    expect(names(later.value)).toEqual([second, first, ...others]);
    const back = move(later.value, cornerIn(later.value, { of: 'drawer', index: 1, end: 'front' }), -1);
    expect(back.ok && back.value.text).toBe(text);
  });

  it('takes the comment beside an entry along', () => {
    const now = snapshotOf(CHEST);
    const moved = move(now, cornerIn(now, { of: 'drawer', index: 5, end: 'front' }), -1);
    expect(moved.ok && moved.value.text).toMatch(
      /Cloth,.*# bolder, as it is the deepest\n {2}- \{name: Notions/u,
    );
  });
});

describe('addDrawer', () => {
  it('adds one as large as the selected drawer, and of two wishes for a name takes a free one', () => {
    const now = snapshotOf(CHEST);
    const added = addDrawer(now, cornerIn(now, FRONT));
    expect(added.ok && added.value.text).toBe(
      `${CHEST}  - {name: Drawer 7, opening: {width: 280, height: 76, depth: 420}}\n`,
    );
  });

  it('gives a plan without drawers what they cannot be without', () => {
    const now = snapshotOf(BOX);
    const added = addDrawer(now, cornerIn(now, LONE));
    expect(added.ok && added.value.project.set.drawers[0]?.spec).toMatchObject({
      name: 'Drawer 1',
      stock: { front: { thickness: 20 }, side: { thickness: 12 } },
    });
  });
});

describe('addCorner', () => {
  it.each(['mm', 'in'] as const)('adds a single corner, and another, to a plan in %s', (unit) => {
    const before = blankPlan(unit);
    const one = made(addCorner(snapshotOf(before)));
    expect(one.text.startsWith(before)).toBe(true);
    const two = made(addCorner(one));
    expect(two.project.joints.map(({ name, spec: { kind } }) => [name, kind])).toEqual([
      ['Corner 1', 'through'],
      ['Corner 2', 'through'],
    ]);
    expect(two.project.joints.flatMap(({ joint }) => joint.advice)).toEqual([]);
  });

  it('adds one with a name that none has', () => {
    const { project } = made(addCorner(snapshotOf(BOX.replace('name: Corner', 'name: corner 2'))));
    expect(project.joints.map(({ name }) => name)).toEqual(['corner 2', 'Corner 3']);
  });
});

describe('blankPlan', () => {
  it.each(['mm', 'in'] as const)('is one drawer that nothing is advised about, in %s', (unit) => {
    const { project } = snapshotOf(blankPlan(unit));
    expect(project.units).toBe(unit);
    expect(project.set.drawers).toHaveLength(1);
    expect(project.set.advice).toEqual([]);
  });
});
