import { describe, expect, it } from 'vitest';
import { coefficientOfShrinkage } from '../../src/wood/ownWood.ts';
import { WOODS } from '../../src/wood/species.ts';

type Shrinkage = readonly [name: string, radial: number, tangential: number];

/** Wood Handbook (FPL-GTR-190, 2010), Table 4-3: shrinkage in percent, green to oven-dry. */
const TABLE_4_3: readonly Shrinkage[] = [
  ['Alder, red', 4.4, 7.3],
  ['Ash, black', 5.0, 7.8],
  ['Ash, Oregon', 4.1, 8.1],
  ['Ash, pumpkin', 3.7, 6.3],
  ['Ash, white', 4.9, 7.8],
  ['Aspen, quaking', 3.5, 6.7],
  ['Basswood, American', 6.6, 9.3],
  ['Beech, American', 5.5, 11.9],
  ['Birch, paper', 6.3, 8.6],
  ['Birch, river', 4.7, 9.2],
  ['Birch, yellow', 7.3, 9.5],
  ['Buckeye, yellow', 3.6, 8.1],
  ['Butternut', 3.4, 6.4],
  ['Cherry, black', 3.7, 7.1],
  ['Chestnut, American', 3.4, 6.7],
  ['Cottonwood, black', 3.6, 8.6],
  ['Cottonwood, eastern', 3.9, 9.2],
  ['Elm, American', 4.2, 9.5],
  ['Elm, rock', 4.8, 8.1],
  ['Elm, slippery', 4.9, 8.9],
  ['Elm, winged', 5.3, 11.6],
  ['Hackberry', 4.8, 8.9],
  ['Hickory, pecan', 4.9, 8.9],
  ['Oak, live', 6.6, 9.5],
  ['Oak, overcup', 5.3, 12.7],
  ['Persimmon, common', 7.9, 11.2],
  ['Sassafras', 4.0, 6.2],
  ['Sweetgum', 5.3, 10.2],
  ['Sycamore, American', 5.0, 8.4],
  ['Tanoak', 4.9, 11.7],
  ['Tupelo, black', 5.1, 8.7],
  ['Tupelo, water', 4.2, 7.6],
  ['Walnut, black', 5.5, 7.8],
];

/** The same table, written down from memory. */
const TABLE_4_3_FROM_MEMORY: readonly Shrinkage[] = [
  ['Yellow-poplar', 4.6, 8.2],
  ['Douglas-fir, coast', 4.8, 7.6],
];

/** A coefficient is printed to five decimals from a shrinkage that is itself rounded: they agree to one in the last. */
const ONE_IN_THE_LAST_PLACE = 1.000001e-5;

describe('Tables 13-5 and 4-3 of the Wood Handbook, which agree through C = S / (30 (100 - 20 S/30))', () => {
  it.each([...TABLE_4_3, ...TABLE_4_3_FROM_MEMORY])(
    '%s: radial and tangential',
    (name, radial, tangential) => {
      const wood = WOODS.find((each) => each.name === name);
      expect(Math.abs(coefficientOfShrinkage(radial) - (wood?.radial ?? 0))).toBeLessThan(
        ONE_IN_THE_LAST_PLACE,
      );
      expect(Math.abs(coefficientOfShrinkage(tangential) - (wood?.tangential ?? 0))).toBeLessThan(
        ONE_IN_THE_LAST_PLACE,
      );
    },
  );

  it('holds for 70 values, 69 of them to the last digit printed', () => {
    const pairs = [...TABLE_4_3, ...TABLE_4_3_FROM_MEMORY].flatMap(([name, radial, tangential]) => {
      const wood = WOODS.find((each) => each.name === name);
      return [
        [radial, wood?.radial],
        [tangential, wood?.tangential],
      ] as const;
    });
    expect(pairs).toHaveLength(70);
    expect(
      pairs.filter(
        ([shrinkage, printed]) => coefficientOfShrinkage(shrinkage).toFixed(5) === printed?.toFixed(5),
      ),
    ).toHaveLength(69);
  });

  it('marks as from memory exactly the woods whose coefficients were written down so', () => {
    expect(WOODS.filter(({ source }) => source === 'memory').map(({ name }) => name)).toEqual([
      'Yellow-poplar',
      'Douglas-fir, coast',
      'Pine, eastern white',
      'Mahogany',
      'Teak',
    ]);
  });
});

describe('the rows of Table 13-5 without a shrinkage to check them by', () => {
  it('move less across the rings than along them, as all wood does', () => {
    for (const { radial, tangential } of WOODS) expect(radial).toBeLessThan(tangential);
  });

  it('stand as printed', () => {
    const checked = new Set([...TABLE_4_3, ...TABLE_4_3_FROM_MEMORY].map(([name]) => name));
    expect(
      WOODS.filter(({ name }) => !checked.has(name)).map(({ name, radial, tangential }) => [
        name,
        radial.toFixed(5),
        tangential.toFixed(5),
      ]),
    ).toEqual([
      ['Apple', '0.00205', '0.00376'],
      ['Catalpa, northern', '0.00085', '0.00169'],
      ['Honeylocust', '0.00144', '0.00230'],
      ['Locust, black', '0.00158', '0.00252'],
      ['Madrone, Pacific', '0.00194', '0.00451'],
      ['Magnolia, southern', '0.00187', '0.00230'],
      ['Maple, bigleaf', '0.00126', '0.00248'],
      ['Maple, red', '0.00137', '0.00289'],
      ['Maple, silver', '0.00102', '0.00252'],
      ['Maple, sugar', '0.00165', '0.00353'],
      ['Oak, black', '0.00123', '0.00230'],
      ['Oak, commercial red', '0.00158', '0.00369'],
      ['Oak, commercial white', '0.00180', '0.00365'],
      ['Pine, eastern white', '0.00071', '0.00212'],
      ['Mahogany', '0.00172', '0.00238'],
      ['Teak', '0.00101', '0.00186'],
    ]);
  });
});
