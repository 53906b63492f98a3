import { load } from 'js-yaml';
import { describe, expect, it } from 'vitest';
import { addBox, duplicate, move, remove, rename } from '../../../src/page/model/drawers.ts';
import { type CornerRef, cornersOf } from '../../../src/page/model/editedCorner.ts';
import { makeEven } from '../../../src/page/model/edits.ts';
import { setKeys } from '../../../src/page/model/fields/setKeys.ts';
import { quantitiesOf, quantity } from '../../../src/page/model/quantities.ts';
import { FIRST_SCOPE } from '../../../src/page/model/scope.ts';
import { selectedCorner, startSession } from '../../../src/page/model/session.ts';
import type { Snapshot } from '../../../src/page/model/snapshot.ts';
import { typeMeasure } from '../../../src/page/model/typeMeasure.ts';
import type { Written } from '../../../src/page/text/writeValue.ts';
import type { Result } from '../../../src/units/complaint.ts';
import { CHEST, cornerIn, snapshotOf } from '../chest.ts';

const BOXES = `boxes:
  - {name: Stamps, size: {width: 200, height: 80, depth: 140}, stock: {front: {thickness: 9}}}
  - {name: Seals, kind: lapped, size: {width: 200, height: 90, depth: 140}, stock: {front: {thickness: 12}, side: {thickness: 9}, back: {thickness: 10}}, lid: {height: 30}}
  - {name: Wax, size: {width: 200, height: 100, depth: 140}, stock: {front: {thickness: 9}}, lid: {height: 30, made: apart}}
`;
const box = (index: number, end: 'front' | 'back' = 'front'): CornerRef => ({ of: 'box', index, end });
const taken = (made: Result<Snapshot>): Snapshot => {
  if (!made.ok) throw new Error(JSON.stringify(made.complaints));
  return made.value;
};
const namesIn = ({ text }: Snapshot): unknown =>
  (load(text) as { boxes: { name: string }[] }).boxes.map(({ name }) => name);

describe('a plan of boxes alone on the page', () => {
  const now = snapshotOf(BOXES);

  it('begins with the first box', () => {
    expect(selectedCorner(startSession(now)).ref).toEqual(box(0));
  });

  it('has one corner of a box whose corners are alike, two of another, and none of a lid made apart', () => {
    expect(cornersOf(now.project)).toEqual([box(0), box(1), box(1, 'back'), box(2)]);
  });

  it('renames, copies, moves and removes boxes in their own list', () => {
    expect(namesIn(taken(rename(now, cornerIn(now, box(0)), 'Ink')))).toEqual(['Ink', 'Seals', 'Wax']);
    expect(rename(now, cornerIn(now, box(0)), 'seals').ok).toBe(false);
    expect(namesIn(taken(duplicate(now, cornerIn(now, box(0)))))).toEqual([
      'Stamps',
      'Stamps 2',
      'Seals',
      'Wax',
    ]);
    expect(namesIn(taken(move(now, cornerIn(now, box(0)), 1)))).toEqual(['Seals', 'Stamps', 'Wax']);
    expect(namesIn(taken(remove(now, cornerIn(now, box(1)))))).toEqual(['Stamps', 'Wax']);
  });

  it('sets every measure of a box in its own entry', () => {
    for (const ref of [box(0), box(1), box(1, 'back')]) {
      const corner = cornerIn(now, ref);
      for (const each of quantitiesOf(corner)) {
        const to =
          (each.get(corner) ?? 0) +
          (each.kind === 'slope' ? -0.5 : each.key.startsWith('groove') ? -0.25 : 0.25);
        const set = taken(typeMeasure(now, corner, each, to, FIRST_SCOPE));
        expect([each.key, each.get(cornerIn(set, ref))?.toFixed(3)]).toEqual([each.key, to.toFixed(3)]);
        const { boxes, ...rest } = load(set.text) as Record<string, unknown>;
        expect([boxes !== undefined, rest]).toEqual([true, {}]);
      }
    }
  });

  it('shows the pin between tails, not the one over the saw cut of a lid', () => {
    const corner = cornerIn(now, box(1));
    // Half of sides of 9.
    expect(quantity(corner, 'pin')?.get(corner)).toBe(4.5);
  });

  it('makes listed tails of a box even again, on both sides of the saw cut', () => {
    const listed = snapshotOf(
      BOXES.replace(
        'lid: {height: 30}',
        'joint: {halfPin: 4.5, tails: [20, 20, 21], pins: [4, 16]}, lid: {height: 30}',
      ),
    );
    const even = taken(makeEven(listed, cornerIn(listed, box(1))));
    const { joint } = cornerIn(even, box(1));
    expect(joint.tails).toHaveLength(3);
    // 4.5 at both sides of 1.5.
    expect(joint.pins.map(({ narrow: [from, to] }) => Number((to - from).toFixed(4)))).toContain(10.5);
  });
});

describe('what is given for all drawers, in a plan with boxes', () => {
  const PLAN = `stock: {front: {thickness: 22}, side: {thickness: 12}, bottom: {thickness: 6}}
joint: {slope: "1:7", pin: 5, halfPin: 7, lap: 6}
groove: {offset: 12, width: 6, depth: 5}
drawers:
  - {name: Gloves, opening: {width: 300, height: 110, depth: 420}, joint: {shoulder: lower, mitre: corner}}
  - {name: Keys, opening: {width: 300, height: 120, depth: 420}}
boxes:
  - {name: Buttons, size: {width: 210, height: 95, depth: 140}, stock: {front: {thickness: 9}, side: {thickness: 9}}, lid: {height: 30}}
  - {name: Stamps, kind: lapped, size: {width: 210, height: 95, depth: 140}, stock: {back: {thickness: 18}}}
  - {name: Seals, size: {width: 210, height: 95, depth: 140}, bottom: {hold: rebate}, lid: {height: 30, made: apart}}
  - {name: Wax, size: {width: 210, height: 95, depth: 140}, joint: {slope: "1:8", pin: 6, halfPin: 8}, groove: {offset: 9}}
  - {name: Ink, size: {width: 210, height: 95, depth: 140}, stock: {front: {thickness: 12}}, joint: {shoulder: lower}}
`;
  const BARE = PLAN.replace(/^(?:joint|groove):.*\n/gmu, '').replace(', bottom: {thickness: 6}', '');
  const given = snapshotOf(PLAN);
  const bare = snapshotOf(BARE);
  const made = ({ project: { set } }: Snapshot, of: 'boxes' | 'drawers') =>
    (set[of] ?? []).map(({ spec, sizes, boards, front, back }) => ({
      sizes,
      boards,
      front,
      back,
      groove: spec.groove,
      bottom: spec.bottom,
    }));
  const drawer = (index: number, end: 'front' | 'back' = 'front'): CornerRef => ({
    of: 'drawer',
    index,
    end,
  });

  it('leaves every box as it is when a measure of all drawers is changed', () => {
    for (const now of [given, bare])
      for (const [ref, ends] of [
        [drawer(0), 'both'],
        [drawer(1), 'shown'],
        [drawer(0, 'back'), 'both'],
      ] as const) {
        const corner = cornerIn(now, ref);
        for (const each of quantitiesOf(corner).filter(({ shared }) => shared)) {
          const to = (each.get(corner) ?? 0) + (each.key.startsWith('groove') ? -0.5 : 0.5);
          const set = taken(typeMeasure(now, corner, each, to, { drawers: 'all', ends }));
          expect([each.key, each.get(cornerIn(set, ref))?.toFixed(3)]).toEqual([each.key, to.toFixed(3)]);
          expect([each.key, made(set, 'boxes')]).toEqual([each.key, made(now, 'boxes')]);
        }
      }
  });

  it.each<[at: string, value: Written | undefined]>([
    ['joint.pin', undefined],
    ['joint.halfPin', 9],
    ['joint.halfPin', undefined],
    ['joint.tails', 3],
    ['groove.offset', undefined],
    ['groove.width', undefined],
    ['stock.bottom.thickness', 7],
    ['stock.bottom.thickness', undefined],
    ['bottom.kind', 'solid'],
    ['bottom.slack', 1],
  ])('leaves every box as it is when %s of all drawers becomes %s', (at, value) => {
    const corner = cornerIn(given, drawer(0));
    const set = taken(setKeys(given, corner, [[{ of: 'drawers', at: at.split('.') }, value]], FIRST_SCOPE));
    expect(set.text).not.toBe(given.text);
    expect(made(set, 'boxes')).toEqual(made(given, 'boxes'));
  });

  it('leaves every drawer as it is when a measure of a box is changed', () => {
    const corner = cornerIn(given, box(0));
    for (const each of quantitiesOf(corner)) {
      const set = taken(typeMeasure(given, corner, each, (each.get(corner) ?? 0) + 0.25, FIRST_SCOPE));
      expect([each.key, made(set, 'drawers')]).toEqual([each.key, made(given, 'drawers')]);
    }
  });
});

describe('addBox', () => {
  it('adds a box with the front that the plan gives, or with one of its own', () => {
    const beside = taken(addBox(snapshotOf(CHEST)));
    expect(load(beside.text)).toMatchObject({
      boxes: [{ name: 'Box 1', size: { width: 300, height: 100, depth: 400 } }],
    });
    expect(beside.text).not.toContain('boxes:\n  - stock');
    const alone = taken(addBox(snapshotOf(BOXES)));
    expect(namesIn(alone)).toEqual(['Stamps', 'Seals', 'Wax', 'Box 4']);
    expect(alone.project.set.boxes?.[3]?.spec.stock.front.thickness).toBe(12);
  });
});
