import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../../src/page/overview/cabinet.ts';
import { CHEST, snapshotOf } from '../chest.ts';

const { drawers } = snapshotOf(CHEST).project.set;

describe('cabinetOf', () => {
  it('places narrow drawers of one height side by side, where together they are as wide as the widest', () => {
    const { width, fronts } = cabinetOf(drawers);
    expect(width).toBe(573);
    expect(fronts.map(({ index, x, width: own }) => [index, x, own])).toEqual([
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
    const { height, fronts } = cabinetOf(drawers);
    // 75, 75, 109, 109, 145, 189 and five rails.
    expect(height).toBe(702 + 5 * 14);
    expect(fronts.map(({ y }) => y)).toEqual([697, 697, 608, 608, 485, 485, 362, 203, 0]);
  });

  it('places a narrow drawer that has no neighbour in the middle', () => {
    const [narrow, , , , wide] = drawers;
    if (narrow === undefined || wide === undefined) throw new Error('no drawers');
    const one = { ...narrow, spec: { ...narrow.spec, count: 1 } };
    expect(cabinetOf([one, wide]).fronts[0]).toMatchObject({ x: 147, width: 279 });
  });

  it('draws no more than 40 of one kind', () => {
    const [narrow] = drawers;
    if (narrow === undefined) throw new Error('no drawers');
    expect(cabinetOf([{ ...narrow, spec: { ...narrow.spec, count: 1000 } }]).fronts).toHaveLength(40);
  });

  it('is empty where there are no drawers', () => {
    expect(cabinetOf([])).toEqual({ width: 0, height: 0, fronts: [] });
  });
});
