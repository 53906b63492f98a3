import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec, JointWish } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import type { Joint } from '../../src/joint/joint.ts';
import { KIND_NAMES } from '../../src/joint/kinds/kinds.ts';
import { speak } from '../../src/units/phrase.ts';
import { box } from './chest.ts';

const LID = { height: 30, kerf: 1.5 };

const lidded = (
  height: number,
  joint: Partial<JointWish> = {},
  change: Partial<DrawerSpec> = {},
): DrawerSpec =>
  box({
    space: { kind: 'size', size: { width: 200, height, depth: 140 } },
    joint: {
      kind: 'through',
      pin: 5,
      halfPin: { lower: 4, upper: 4 },
      spacing: { kind: 'even' },
      ...joint,
    } as JointWish,
    box: { lid: LID },
    ...change,
  });

const laid = (spec: DrawerSpec) => layOutSet([], undefined, {}, [spec]);
const jointOf = (spec: DrawerSpec): Joint => {
  const set = laid(spec);
  const [made] = set.ok ? (set.value.boxes ?? []) : [];
  if (made === undefined) throw new Error(refusals(spec).join('\n'));
  return made.front;
};
const refusals = (spec: DrawerSpec): string[] => {
  const set = laid(spec);
  return set.ok ? [] : set.complaints.map(({ at, says }) => `${at.slice(2).join('.')}: ${speak(says, 'mm')}`);
};
const widths = (intervals: readonly (readonly [number, number])[]): number[] =>
  intervals.map(([from, to]) => Number((to - from).toFixed(6)));

describe('a lid that is sawn off', () => {
  it('leaves each part with tails and half pins of its own', () => {
    // Below the cut 101.5 - 30 - 1.5 = 70  has three tails of (70 - 8 - 10) / 3; above, one of 30 - 8.
    const { tails, pins, sawCut } = jointOf(lidded(101.5, { spacing: { kind: 'even', tails: 4 } }));
    expect(sawCut).toEqual([70, 71.5]);
    expect(widths(tails.map(({ tip }) => tip))).toEqual([17.333333, 17.333333, 17.333333, 22]);
    // 4 + 1.5 + 4 over the cut.
    expect(widths(pins.map(({ narrow }) => narrow))).toEqual([4, 5, 5, 9.5, 4]);
    expect(pins[3]?.narrow).toEqual([66, 75.5]);
  });

  it('fills the height: 2 h + tails + (n - 2) p + 2 h + kerf', () => {
    const length = (least: number, most: number) =>
      fc.integer({ min: 10 * least, max: 10 * most }).map((n) => n / 10);
    let madeOnes = 0;
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom(...KIND_NAMES),
          height: length(60, 200),
          lid: length(14, 80),
          kerf: length(0, 4),
          h: length(3, 8),
          p: length(3, 8),
          shoulder: fc.constantFrom(undefined, 'both' as const),
          tails: fc.option(fc.integer({ min: 2, max: 9 }), { nil: undefined }),
        }),
        ({ kind, height, lid, kerf, h, p, shoulder, tails: wished }) => {
          const isOpen = kind === 'through' || kind === 'lapped';
          const set = laid(
            lidded(
              height,
              {
                kind,
                pin: p,
                halfPin: { lower: h, upper: h },
                spacing: { kind: 'even', ...(wished && { tails: wished }) },
                ...(isOpen && shoulder && { shoulder }),
              },
              {
                box: { lid: { height: lid, kerf } },
                groove: {
                  offset: 8,
                  width: 4,
                  depth: 4,
                  ...(kind === 'through' && !shoulder && { stopped: 3 }),
                },
              },
            ),
          );
          if (!set.ok) return;
          madeOnes++;
          for (const { front, back } of set.value.boxes ?? [])
            for (const { tails, pins, sawCut, shoulder: mitred, width } of [front, back]) {
              const [from, to] = [height - lid - kerf, height - lid];
              expect(sawCut?.[0]).toBeCloseTo(from, 9);
              expect(sawCut?.[1]).toBeCloseTo(to, 9);
              if (wished !== undefined) expect(tails).toHaveLength(wished);
              const over = pins.filter(({ narrow }) => narrow[0] < from && narrow[1] > to);
              expect(over).toHaveLength(1);
              expect(over[0]?.narrow[0]).toBeCloseTo(from - h, 9);
              expect(over[0]?.narrow[1]).toBeCloseTo(to + h, 9);
              // The lower half pin may be another, for the groove.
              const lower = (tails[0]?.tip[0] ?? 0) - mitred.lower;
              const sum = widths(tails.map(({ tip }) => tip)).reduce((a, b) => a + b, 0);
              const filled =
                mitred.lower + mitred.upper + lower + h + sum + (tails.length - 2) * p + 2 * h + kerf;
              expect(filled).toBeCloseTo(width, 4);
            }
        },
      ),
      { numRuns: 120 },
    );
    expect(madeOnes).toBeGreaterThan(30);
  });

  it('is found of listed tails where a pin lies over the saw cut', () => {
    const spacing = { kind: 'listed', tails: [26, 26, 22], pins: [6, 9.5] } as const;
    expect(jointOf(lidded(97.5, { spacing })).sawCut).toEqual([66, 67.5]);
  });
});

describe('a lid is refused', () => {
  it('that is no lid of its box, with the heights that are', () => {
    // A base of 3 and 2 x 9 / 8 of slope and half pins of 8: 13.25 each. The groove below ends at 12.
    const low = lidded(100, {}, { box: { lid: { height: 8, kerf: 2 } } });
    expect(refusals(low)).toEqual([
      'lid.height: "Buttons": a lid of 8 mm is sawn off 90 mm to 92 mm up a box 100 mm high; with a tail in both, and the groove below, it must be 13.25 mm to 84 mm',
    ]);
    const over = lidded(100, {}, { box: { lid: { height: 120, kerf: 2 } } });
    expect(refusals(over)[0]).toMatch(
      /^lid\.height: "Buttons": a lid of 120 mm and a saw cut of 2 mm leave nothing of a box 100 mm high; with/u,
    );
    const none = lidded(28, {}, { box: { lid: { height: 14, kerf: 1 } } });
    expect(refusals(none)[0]).toMatch(/there is no room for a tail in both, with the groove below$/u);
  });

  it('through a listed tail', () => {
    const spacing = { kind: 'listed', tails: [40, 44.5], pins: [5] } as const;
    expect(refusals(lidded(97.5, { spacing }))).toEqual([
      'joint.tails: "Buttons": corners: no pin lies over the saw cut for the lid, 66 mm to 67.5 mm up, with 1 mm to spare at both edges, so a tail would be sawn through',
    ]);
  });

  it('beside tails that are graded or in groups', () => {
    const graded = { kind: 'graded', ratio: 0.9, from: 'edge' } as const;
    const groups = { kind: 'grouped', tails: 4, groups: [2, 2] } as const;
    const told = [graded, groups].map((spacing) => refusals(lidded(120, { spacing }))[0]);
    const says = 'the saw cut for the lid divides the tails, so they are even, or listed width by width';
    expect(told).toEqual([
      `joint.graded: "Buttons": corners: ${says}`,
      `joint.groups: "Buttons": corners: ${says}`,
    ]);
  });

  it('with more tails than both parts hold', () => {
    expect(refusals(lidded(101.5, { spacing: { kind: 'even', tails: 12 } }))[0]).toMatch(
      /^joint\.tails: "Buttons": corners: 12 tails cannot be shared by the box, 70 mm high, and its lid, 30 mm: there may be 2 to \d$/u,
    );
  });
});

describe('advice on a box', () => {
  const advice = (spec: DrawerSpec): string[] => {
    const set = laid(spec);
    return set.ok
      ? set.value.advice.map(({ at, says }) => `${at.slice(2).join('.')}: ${speak(says, 'mm')}`)
      : ['refused'];
  };

  it('is given on a lid of more than half its height', () => {
    expect(advice(lidded(100, {}, { box: { lid: { height: 50, kerf: 1 } } }))).toEqual([]);
    expect(advice(lidded(100, {}, { box: { lid: { height: 52, kerf: 1 } } }))).toEqual([
      'lid.height: "Buttons": a lid of 52 mm is more than half of a box 100 mm high; 25 mm to 33.33 mm is usual',
    ]);
  });

  it('is given on a solid bottom with too little slack', () => {
    // 140 less two boards of 9 and with two grooves of 4: 130, of which one in a hundred.
    const solid = (slack: number) => box({ bottom: { kind: 'solid', slack, hold: { kind: 'groove' } } });
    expect(advice(solid(0.5))).toEqual([
      'bottom.slack: "Buttons": a solid bottom that is held on all four sides may swell by 1.3 mm from front to back, and its slack leaves it 1 mm',
    ]);
    expect(advice(solid(0.65))).toEqual([]);
  });
});
