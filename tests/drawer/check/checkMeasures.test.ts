import { describe, expect, it } from 'vitest';
import { checkMeasures } from '../../../src/drawer/check/checkMeasures.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { complaintsOf } from '../../value.ts';
import { drawer } from '../chest.ts';

const wrongWith = (change: Partial<DrawerSpec>) => complaintsOf(refuse(...checkMeasures(drawer(change))));

const { stock, bottom, groove } = drawer();
const opening = { width: 280, height: 76, depth: 420 };
const fit = { side: 0.5, top: 1, behind: 12 };
const lip = { sides: 6, top: 6, bottom: 0 };
const slips = { kind: 'slips', width: 12, height: 20 } as const;

/** Each measure with what it is called, what it may be, and a drawer that has it. */
const MEASURES: readonly [
  place: string,
  what: string,
  least: number,
  most: number,
  of: (value: number) => Partial<DrawerSpec>,
][] = [
  ...(['width', 'height', 'depth'] as const).flatMap((side): (typeof MEASURES)[number][] => [
    [
      `opening.${side}`,
      `the opening's ${side}`,
      10,
      5000,
      (value) => ({ space: { kind: 'opening', opening: { ...opening, [side]: value }, fit } }),
    ],
    [
      `size.${side}`,
      `the drawer's ${side}`,
      10,
      5000,
      (value) => ({ space: { kind: 'size', size: { ...opening, [side]: value } } }),
    ],
  ]),
  ...(
    [
      ['front', "the front's thickness", 2, 200],
      ['side', "the sides' thickness", 2, 200],
      ['back', "the back's thickness", 2, 200],
      ['bottom', "the bottom's thickness", 1, 60],
    ] as const
  ).map(([board, what, least, most]): (typeof MEASURES)[number] => [
    `stock.${board}.thickness`,
    what,
    least,
    most,
    (thickness) => ({ stock: { ...stock, [board]: { thickness } } }),
  ]),
  ['groove.offset', "the groove's offset", 0, 1000, (offset) => ({ groove: { ...groove, offset } })],
  ['groove.width', "the groove's width", 1, 100, (width) => ({ groove: { ...groove, width } })],
  ['groove.depth', "the groove's depth", 1, 100, (depth) => ({ groove: { ...groove, depth } })],
  ['back.drop', "the back's drop", 0, 1000, (backDrop) => ({ backDrop })],
  ['bottom.slack', "the bottom's slack", 0, 1000, (slack) => ({ bottom: { ...bottom, slack } })],
  ...(
    [
      ['side', 'the clearance at each side'],
      ['top', 'the clearance above'],
      ['behind', 'the clearance behind'],
    ] as const
  ).map(([where, what]): (typeof MEASURES)[number] => [
    `fit.${where}`,
    what,
    0,
    1000,
    (value) => ({ space: { kind: 'opening', opening, fit: { ...fit, [where]: value } } }),
  ]),
  ...(
    [
      ['sides', 'the lip at each side'],
      ['top', 'the lip above'],
      ['bottom', 'the lip below'],
    ] as const
  ).map(([where, what]): (typeof MEASURES)[number] => [
    `front.lip.${where}`,
    what,
    0,
    100,
    (value) => ({ lip: { ...lip, [where]: value } }),
  ]),
  ...(
    [
      ['width', "the slips' width"],
      ['height', "the slips' height"],
    ] as const
  ).map(([side, what]): (typeof MEASURES)[number] => [
    `bottom.slips.${side}`,
    what,
    2,
    200,
    (value) => ({ bottom: { ...bottom, hold: { ...slips, [side]: value } } }),
  ]),
];

describe('the measures of a drawer', () => {
  it.each(MEASURES)('hold %s, %s, of %d to %d mm', (place, what, least, most, of) => {
    expect(wrongWith(of(least))).toEqual([]);
    expect(wrongWith(of(most))).toEqual([]);
    for (const value of [least - 0.5, most + 0.5])
      expect(wrongWith(of(value))).toEqual([
        `${place}: ${what} is ${value} mm; it must be ${least} mm to ${most} mm`,
      ]);
  });

  it('are all judged at once', () => {
    expect(wrongWith({ backDrop: -1, groove: { offset: -1, width: 0, depth: 0 } })).toHaveLength(4);
  });

  it.each([1, 2, 1000])('hold %d equal drawers', (count) => {
    expect(wrongWith({ count })).toEqual([]);
  });

  it.each([0, -1, 1.5, 1001])('do not hold %d equal drawers', (count) => {
    expect(wrongWith({ count })).toEqual([
      `count: ${count} is no number of drawers; it must be a whole number, 1 to 1000`,
    ]);
  });
});
