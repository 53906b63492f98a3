import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { spacerList } from '../../../src/drawer/spacers/spacerList.ts';
import { spacerPrices } from '../../../src/drawer/spacers/spacerPrices.ts';
import type { SpacerWish } from '../../../src/drawer/spacers/spacerWish.ts';
import type { Joint } from '../../../src/joint/joint.ts';
import { fingerSetting } from '../../../src/router/fingers/fingerSetting.ts';
import { complaintsOf, value } from '../../value.ts';
import { inOpening, joint } from '../chest.ts';

const CUTTER = { diameter: 12.7, angle: 8, length: 20 };
const FINGERS = { together: 14, bush: 16 };
const { slope: _, ...unsloped } = joint;
const WISH = { ...unsloped, pin: 8.5 };

/** A drawer whose sides are so wide, cut along fingers. */
const drawer = (name: string, width: number, change: Partial<DrawerSpec> = {}): DrawerSpec =>
  inOpening(400, width + 1, 400, {
    name,
    cutter: CUTTER,
    fingers: FINGERS,
    joint: WISH,
    backJoint: { pin: 9.7, halfPin: { lower: 6, upper: 6 }, spacing: { kind: 'even' } },
    ...change,
  });

const SET = [drawer('Buttons', 75), drawer('Ribbon', 109), drawer('Notions', 145), drawer('Cloth', 189)];

const set = (wish: SpacerWish, specs = SET, target?: number) => value(layOutSet(specs, target, wish));
const spacersOf = (front: Joint): number[] =>
  fingerSetting(front, CUTTER, FINGERS).pairs.map(({ spacer }) => spacer);
/** Those that are more than a millionth apart. */
const different = (fronts: readonly Joint[]): number[] => [
  ...new Set(
    fronts
      .flatMap(spacersOf)
      .filter((spacer) => spacer > 0)
      .map((spacer) => Number(spacer.toFixed(6))),
  ),
];

describe('a set of drawers along fingers', () => {
  it('keeps its setting out where no number of spacers is asked for', () => {
    const plain = set({}).drawers.map(({ front }) => front.tails);
    const byRule = value(layOutSet(SET.map(({ fingers: _, ...spec }) => spec))).drawers.map(
      ({ front }) => front.tails,
    );
    expect(plain).toEqual(byRule);
  });

  it('leaves out the counts whose tails are narrower than their fingers, at the front and at the back', () => {
    // 24 + 16 - 8.48 = 31.5 at the front, 24 + 16 - 9.61 = 30.4 at the back.
    const wide = SET.map((spec) => ({ ...spec, fingers: { together: 24, bush: 16 } }));
    const { drawers } = set({}, wide);
    for (const { front, back } of drawers)
      for (const [corner, least] of [
        [front, 31.5],
        [back, 30.4],
      ] as const)
        for (const { tip } of corner.tails) expect(tip[1] - tip[0]).toBeGreaterThan(least);
    expect(drawers.flatMap(({ choices }) => choices.map(({ tip }) => tip)).every((tip) => tip > 31.5)).toBe(
      true,
    );
  });

  it('is refused where no count is left, with the nearest that works', () => {
    const narrow = [drawer('Buttons', 75, { fingers: { together: 60, bush: 16 } })];
    const [first] = complaintsOf(layOutSet(narrow));
    expect(first).toBe(
      'drawers.0.joint.tails: "Buttons": front corners: a tail is 63 mm wide; the pair of fingers that guards it would be 55.48 mm wide, and is 60 mm pushed together, so it must be 67.52 mm or more; use fewer and wider tails, or narrower fingers: 55.48 mm together',
    );
    const asked = [
      drawer('Buttons', 75, { joint: { ...WISH, spacing: { kind: 'even', tails: 3 } }, fingers: FINGERS }),
    ];
    expect(complaintsOf(layOutSet(asked))[0]).toMatch(
      /^drawers\.0\.joint\.tails: .*; the nearest that works: 2 tails of 27\.25 mm, pins of 8\.5 mm/u,
    );
  });

  it.each([1, 2, 3])('needs at most %i different spacers where so many are asked for', (spacers) => {
    const { drawers, family } = set({ spacers });
    const fronts = drawers.map(({ front }) => front);
    expect(different(fronts).length).toBeLessThanOrEqual(spacers);
    for (const { pins } of fronts)
      for (const { narrow } of pins.filter(({ half }) => half)) {
        expect(narrow[1] - narrow[0]).toBeGreaterThanOrEqual(3 - 1e-9);
        expect(narrow[1] - narrow[0]).toBeLessThanOrEqual(12 + 1e-9);
      }
    expect(family?.spread).toBeLessThanOrEqual(1 + 1e-9);
  });

  it('moves half pins within the range that is given', () => {
    const { drawers } = set({ spacers: 3, halfPins: { least: 5, most: 8 } });
    const halves = drawers.flatMap(({ front }) =>
      front.pins.filter(({ half }) => half).map(({ narrow }) => narrow[1] - narrow[0]),
    );
    expect(Math.min(...halves)).toBeGreaterThanOrEqual(5 - 1e-9);
    expect(Math.max(...halves)).toBeLessThanOrEqual(8 + 1e-9);
  });

  it('keeps a wished count, and all of listed and graded tails, whose spacers count', () => {
    const listed = drawer('Listed', 109, {
      joint: { ...WISH, spacing: { kind: 'listed', tails: [28, 28, 24] } },
    });
    const graded = drawer('Graded', 145, {
      joint: { ...WISH, spacing: { kind: 'graded', tails: 2, ratio: 0.8, from: 'edge' } },
    });
    const counted = drawer('Counted', 189, { joint: { ...WISH, spacing: { kind: 'even', tails: 4 } } });
    // 109 - 17 - 12 = 80.
    const specs = [drawer('Buttons', 75), listed, counted];
    const plain = set({}, specs).drawers;
    const few = set({ spacers: 3 }, specs).drawers;
    expect(few[1]?.front.tails).toEqual(plain[1]?.front.tails);
    expect(few[2]?.front.tails).toHaveLength(4);
    expect(different(few.map(({ front }) => front)).length).toBeLessThanOrEqual(3);
    // Two of the listed tails and two of the graded differ.
    expect(complaintsOf(layOutSet([...specs, graded], undefined, { spacers: 3 }))).toEqual([
      'family.spacers: the front corners cannot do with 3 different spacers: those that stay as they are need 4; try 5, or wish for wider half pins, which may then move further',
    ]);
  });

  it('keeps every drawer where the tail width is given, and counts', () => {
    const free = set({}, SET, 30).drawers.map(({ front }) => front.tails);
    expect(set({ spacers: 6 }, SET, 30).drawers.map(({ front }) => front.tails)).toEqual(free);
    expect(complaintsOf(layOutSet(SET, 30, { spacers: 1 }))[0]).toMatch(
      /^family\.spacers: the front corners cannot do with 1 different spacer: those that stay as they are need \d; try \d$/u,
    );
  });

  it('is refused by name where it cannot do with so few', () => {
    expect(complaintsOf(layOutSet(SET, undefined, { spacers: 0 }))).toEqual([
      'family.spacers: the front corners cannot do with 0 different spacers: not every tail can be just as wide as its fingers; try 1, or wish for wider half pins, which may then move further',
    ]);
    // 9 less 6 / 7.12 is the most that the groove, 11 up, leaves below; no half pin of 10 hides it.
    expect(
      complaintsOf(layOutSet(SET, undefined, { spacers: 2, halfPins: { least: 10, most: 12 } })),
    ).toEqual([
      'family.halfPins: "Buttons", "Ribbon", "Notions", "Cloth": no half pins of 10 mm to 12 mm, from half to twice the wished ones, leave tails as wide as their fingers that hide the groove; wish for other half pins or another number of tails there, or use narrower fingers',
    ]);
    const many = Array.from({ length: 17 }, (_, i) => drawer(`Drawer ${i}`, 75 + i));
    expect(complaintsOf(layOutSet(many, undefined, { spacers: 2 }))).toEqual([
      'family.spacers: few spacers are sought for at most 16 drawers, and this set has 17 whose tails are not listed or graded; list the tails of some, make a plan of each part of the set, or remove the key',
    ]);
  });
});

describe('the price of few spacers', () => {
  it('is no sum that grows with a spacer more, and names the drawers that change', () => {
    const prices = spacerPrices(set({}));
    expect(prices.map(({ spacers }) => spacers)).toEqual([1, 2, 3]);
    const sums = prices.map(({ look }) => look?.sum ?? Number.POSITIVE_INFINITY);
    expect([...sums].sort((a, b) => b - a)).toEqual(sums);
    const plain = set({}).drawers;
    const asked = set({ spacers: 2 });
    expect(prices[1]?.look?.spread).toBeCloseTo(asked.family?.spread ?? 0, 9);
    expect(prices[1]?.look?.changed).toEqual(
      asked.drawers
        .filter(
          ({ front }, i) =>
            Math.abs((front.tails[0]?.tip[0] ?? 0) - (plain[i]?.front.tails[0]?.tip[0] ?? 0)) > 1e-6,
        )
        .map(({ spec }) => spec.name),
    );
  });

  it('is told of as many as are asked for, and of those that cannot be', () => {
    const fixed = SET.map((spec, i) => ({
      ...spec,
      joint: { ...WISH, spacing: { kind: 'even', tails: [2, 2, 3, 3][i] ?? 1 } as const },
    }));
    const prices = spacerPrices(set({ spacers: 4 }, fixed));
    expect(prices.map(({ look }) => look !== undefined)).toEqual([false, false, true, true]);
  });

  it('counts the spacers of listed fronts as one where only the digits of a plan tell them apart', () => {
    const listed = (name: string, tail: number) =>
      drawer(name, 2 * 25.1234 + 8.5 + 12, {
        joint: {
          ...WISH,
          halfPin: { lower: 6, upper: 6 + 2 * (25.1234 - tail) },
          spacing: { kind: 'listed', tails: [tail, tail], pins: [8.5] },
        },
      });
    const asked = (tail: number) =>
      layOutSet([listed('One', 25.1234), listed('Two', tail)], undefined, { spacers: 1 }).ok;
    expect([asked(25.1235), asked(25.1334)]).toEqual([true, false]);
  });

  it('has none without fingers', () => {
    const byHand = value(layOutSet(SET.map(({ fingers: _, ...spec }) => spec)));
    expect([spacerPrices(byHand), spacerList(byHand)]).toEqual([[], []]);
  });
});

describe('the list of spacers', () => {
  it('puts those together that differ by no more than is asked, from the least up, as many as one corner needs', () => {
    // Tails of 25, 25.08, 25.12 and 30; a spacer is 25 - 21.52 where a tail is 25 wide.
    const one = drawer('One', 25 + 25.08 + 25.12 + 17 + 12, {
      joint: { ...WISH, spacing: { kind: 'listed', tails: [25, 25.08, 25.12] } },
    });
    const two = drawer('Two', 30 + 25 + 25.06 + 17 + 12, {
      joint: { ...WISH, spacing: { kind: 'listed', tails: [30, 25, 25.06] } },
    });
    const fronts = (within: number) =>
      spacerList(set({ within }, [one, two]))
        .filter(({ corner }) => corner === 'front')
        .map(({ width, count, drawers }) => [width.toFixed(2), count, drawers]);
    const least = 25 - (14 + 16 - (12.7 - 30 * Math.tan((8 * Math.PI) / 180)));
    const wide = (more: number) => (least + more).toFixed(2);
    expect(fronts(0.1)).toEqual([
      [wide(0), 2, ['One', 'Two']],
      [wide(0.12), 1, ['One']],
      [wide(5), 1, ['Two']],
    ]);
    expect(fronts(0.2)).toEqual([
      [wide(0), 3, ['One', 'Two']],
      [wide(5), 1, ['Two']],
    ]);
  });

  it('has those of the back corners after those of the front', () => {
    const corners = spacerList(set({})).map(({ corner }) => corner);
    expect(new Set(corners)).toEqual(new Set(['front', 'back']));
    expect(corners.lastIndexOf('front')).toBeLessThan(corners.indexOf('back'));
  });
});
