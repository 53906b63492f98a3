import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CabinetPlace, CabinetSpec } from '../../src/cabinet/cabinetSpec.ts';
import { openingsOf } from '../../src/cabinet/openings.ts';
import { complaintsOf, value } from '../value.ts';

const CHEST: CabinetSpec = {
  width: 600,
  height: 418,
  depth: 420,
  rail: 18,
  divider: 12,
  heights: { kind: 'equal' },
  rows: [[{ name: 'Buttons' }, { name: 'Thread', width: 200 }], [{ name: 'Cloth' }]],
};
const DIVIDED: CabinetPlace = {
  rows: [[{ name: 'Ribbon' }], [{ name: 'Patches' }, { name: 'Notions' }]],
  heights: { kind: 'listed', heights: [70, undefined] },
  width: 212,
};

const opening = (cabinet: CabinetSpec, name: string) =>
  value(openingsOf(cabinet, 0.5)).find((each) => each.name === name);

describe('openingsOf', () => {
  it('stacks rows from the top with a rail between, and shares what a row leaves', () => {
    // 418 less a rail of 18 is 200 for each of two rows; 600 less 12 and 200 is 388.
    expect(opening(CHEST, 'Buttons')).toEqual({
      name: 'Buttons',
      row: 1,
      column: 1,
      x: 0,
      y: 218,
      width: 388,
      height: 200,
      depth: 420,
    });
    expect(opening(CHEST, 'Thread')).toMatchObject({ row: 1, column: 2, x: 400, y: 218, width: 200 });
    expect(opening(CHEST, 'Cloth')).toMatchObject({ row: 2, column: 1, x: 0, y: 0, width: 600, height: 200 });
  });

  it('lets a divider run through several rows, as high as what stands beside them', () => {
    const cabinet = { ...CHEST, rows: [[{ name: 'Buttons' }, DIVIDED], [{ name: 'Cloth' }]] };
    expect(opening(cabinet, 'Buttons')).toMatchObject({ x: 0, width: 376, height: 200 });
    expect(opening(cabinet, 'Ribbon')).toMatchObject({
      row: 1,
      column: 2,
      inner: [1, 1],
      x: 388,
      y: 348,
      width: 212,
      height: 70,
    });
    // 200 less 70 and a rail of 18 is 112; 212 less 12 is twice 100.
    expect(opening(cabinet, 'Notions')).toMatchObject({
      inner: [2, 2],
      x: 500,
      y: 218,
      width: 100,
      height: 112,
    });
  });

  it.each<[string, Partial<CabinetSpec>, string]>([
    [
      'rails as thick as the cabinet',
      { rail: 418 },
      'rail: a rail of 418 mm leaves the drawers nothing of 418 mm',
    ],
    [
      'dividers as wide as the cabinet',
      { divider: 600 },
      'divider: a divider of 600 mm leaves the drawers nothing of 600 mm',
    ],
    [
      'widths that leave the others nothing',
      { rows: [[{ name: 'Buttons' }, { name: 'Thread', width: 588 }]] },
      'rows.0: the drawers with a width of their own take 588 mm of the 588 mm between the dividers, and nothing is left for the others; give them less',
    ],
    [
      'rows in a place that do not fill it, at that place',
      {
        rows: [
          [{ name: 'Buttons' }, { ...DIVIDED, heights: { kind: 'listed', heights: [70, 70] } }],
          [{ name: 'Cloth' }],
        ],
      },
      'rows.0.1.heights: the rows take 140 mm of the 182 mm between the rails; 42 mm is left over; change one of them, or write auto for those that are to share what is left',
    ],
  ])('refuses %s', (_, part, says) => {
    expect(complaintsOf(openingsOf({ ...CHEST, ...part }, 0.5))).toEqual([says]);
  });

  it('fills the cabinet exactly: openings, rails and dividers leave nothing and overlap nowhere', () => {
    const places = fc.array(
      fc.constantFrom<CabinetPlace>(
        { name: 'Buttons' },
        { name: 'Thread', width: 90 },
        { ...DIVIDED, width: 120, heights: { kind: 'equal' } },
      ),
      { minLength: 1, maxLength: 4 },
    );
    const cabinets = fc.record({
      width: fc.double({ min: 700, max: 1200, noNaN: true }),
      height: fc.double({ min: 900, max: 2000, noNaN: true }),
      rail: fc.double({ min: 1, max: 25, noNaN: true }),
      divider: fc.double({ min: 1, max: 20, noNaN: true }),
      rows: fc.array(
        places.map((row) => [...row, { name: 'Cloth' }]),
        { minLength: 1, maxLength: 5 },
      ),
    });
    fc.assert(
      fc.property(cabinets, fc.constantFrom(0.5, 25.4 / 16), (given, mark) => {
        const cabinet: CabinetSpec = { ...given, depth: 420, heights: { kind: 'arithmetic' } };
        const openings = value(openingsOf(cabinet, mark));
        for (const each of openings) {
          // Grown by the wood that each has to its right and above, all openings tile the cabinet grown likewise.
          expect(each.x).toBeGreaterThan(-1e-9);
          expect(each.y).toBeGreaterThan(-1e-9);
          for (const other of openings)
            if (other !== each)
              expect(
                each.x + each.width + cabinet.divider <= other.x + 1e-6 ||
                  other.x + other.width + cabinet.divider <= each.x + 1e-6 ||
                  each.y + each.height + cabinet.rail <= other.y + 1e-6 ||
                  other.y + other.height + cabinet.rail <= each.y + 1e-6,
              ).toBe(true);
        }
        const area = openings.reduce(
          (sum, { width, height }) => sum + (width + cabinet.divider) * (height + cabinet.rail),
          0,
        );
        expect(area).toBeCloseTo((cabinet.width + cabinet.divider) * (cabinet.height + cabinet.rail), 3);
      }),
      { numRuns: 60 },
    );
  });
});
