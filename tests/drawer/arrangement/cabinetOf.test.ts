import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../../src/drawer/arrangement/cabinetOf.ts';
import type { Drawer } from '../../../src/drawer/drawer.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { CHEST, snapshotOf } from '../../page/chest.ts';
import { anyDrawer, made as makeDrawer } from '../../sheets/anyDrawer.ts';
import { inOpening } from '../chest.ts';

const made = (spec: DrawerSpec) => {
  const found = makeDrawer(spec);
  if (found === undefined) throw new Error('this drawer can be made');
  return found.drawer;
};

const { drawers } = snapshotOf(CHEST).project.set;

describe('cabinetOf', () => {
  it('places narrow drawers of one height side by side, where together they are as wide as the widest', () => {
    const { width, rows } = cabinetOf(drawers);
    expect(width).toBe(573);
    expect(rows.flat().map(({ index, x, width: own }) => [index, x, own])).toEqual([
      [0, 0, 279],
      [0, 294, 279],
      [1, 0, 279],
      [1, 294, 279],
      [2, 0, 279],
      [2, 294, 279],
      [3, 0, 573],
      [4, 0, 573],
      [5, 0, 573],
    ]);
  });

  it('stacks rows in the order of the plan, the first on top, 14 mm apart', () => {
    const { height, rows } = cabinetOf(drawers);
    // 75, 75, 109, 109, 145, 189 and five rails.
    expect(height).toBe(702 + 5 * 14);
    expect(rows.flat().map(({ y }) => y)).toEqual([697, 697, 608, 608, 485, 485, 362, 203, 0]);
  });

  it('places a narrow drawer that has no neighbour in the middle', () => {
    const [narrow, , , , wide] = drawers;
    if (narrow === undefined || wide === undefined) throw new Error('no drawers');
    const one = { ...narrow, spec: { ...narrow.spec, count: 1 } };
    expect(cabinetOf([one, wide]).rows[0]?.[0]).toMatchObject({ x: 147, width: 279 });
  });

  it('arranges no more than 60 of one kind and 400 of all, and counts the others', () => {
    const [narrow] = drawers;
    if (narrow === undefined) throw new Error('no drawers');
    const many = { ...narrow, spec: { ...narrow.spec, count: 1000 } };
    const arranged = (set: readonly Drawer[]) => {
      const { rows, leftOut } = cabinetOf(set);
      return [rows.flat().length, new Set(rows.flat().map(({ index }) => index)).size, leftOut];
    };
    expect(arranged([many])).toEqual([60, 1, 940]);
    // Every kind is seen: two of each of 200.
    expect(arranged(Array(200).fill(many))).toEqual([400, 200, 199_600]);
    expect(arranged(Array(500).fill(narrow))).toEqual([400, 400, 600]);
  });

  it('is empty where there are no drawers', () => {
    expect(cabinetOf([])).toEqual({ width: 0, height: 0, rows: [], leftOut: 0, planned: false });
  });

  it('stands drawers of some widths and heights in rows and columns', () => {
    const widths = [120, 180, 260];
    const apothecary = [70, 90, 110, 150].flatMap((height) =>
      widths.map((width) => made(inOpening(width, height, 250))),
    );
    const { rows } = cabinetOf(apothecary);
    expect(rows.map((row) => row.map(({ index, x }) => [index, x]))).toEqual(
      // Fronts 1 mm narrower than their openings, uprights of 6.
      [0, 3, 6, 9].map((first) => [
        [first, 0],
        [first + 1, 125],
        [first + 2, 310],
      ]),
    );
  });

  it('stands equal drawers so that the cabinet is neither slender nor half empty', () => {
    const thirty = { ...made(inOpening(180, 80, 250)) };
    const { rows } = cabinetOf([{ ...thirty, spec: { ...thirty.spec, count: 30 } }]);
    expect(rows.map((row) => row.length)).toEqual(Array(10).fill(3));
    const chest = { ...made(inOpening(800, 200, 450)) };
    expect(cabinetOf([{ ...chest, spec: { ...chest.spec, count: 4 } }]).rows).toHaveLength(4);
  });

  it('keeps fronts with lips apart, and gives their outlines', () => {
    const lip = { sides: 8, top: 8, bottom: 8 };
    const { width, height, rows } = cabinetOf([
      { ...made(inOpening(300, 90, 420, { lip })), spec: inOpening(300, 90, 420, { lip, count: 2 }) },
      made(inOpening(620, 120, 420, { lip })),
    ]);
    // 619 + 2 × 8.5 wide; 90 + 16 and 120 + 16 high, with 3 between as the lips cover the rail.
    expect([width, height]).toEqual([636, 106 + 3 + 136]);
    expect(rows.map((row) => row.map((front) => [front.x, front.y, front.width, front.height]))).toEqual([
      [
        [0, 139, 316, 106],
        [320, 139, 316, 106],
      ],
      [[0, 0, 636, 136]],
    ]);
  });

  it('has no front over another and none outside, whatever the set', () => {
    fc.assert(
      fc.property(fc.array(anyDrawer, { minLength: 1, maxLength: 12 }), (all) => {
        const { width, height, rows, leftOut } = cabinetOf(all.map(({ drawer }) => drawer));
        const fronts = rows.flat();
        const count = all.reduce((sum, { drawer }) => sum + drawer.spec.count, 0);
        expect(fronts.length + leftOut).toBe(count);
        const outside = fronts.filter(
          (front) =>
            Math.min(front.x, front.y) < -1e-6 ||
            front.x + front.width > width + 1e-6 ||
            front.y + front.height > height + 1e-6,
        );
        const close = rows.flatMap((row, i) => [
          ...row.slice(1).filter((front, j) => {
            const left = row[j];
            return front.x - (left?.x ?? 0) - (left?.width ?? 0) < 3 - 1e-6;
          }),
          ...(rows[i + 1] ?? []).filter((front) => (row[0]?.y ?? 0) - front.y - front.height < 3 - 1e-6),
        ]);
        expect([outside, close]).toEqual([[], []]);
      }),
      { numRuns: 30 },
    );
  });
});
