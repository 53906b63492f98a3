import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NO_SPLITS } from '../../../src/paper/piece.ts';
import { splitToFit } from '../../../src/paper/split.ts';
import { fingerSetting } from '../../../src/router/fingers/fingerSetting.ts';
import { lettersSeen } from '../../../src/sheets/guide/seenCorners.ts';
import { settingRod } from '../../../src/sheets/guide/settingRod.ts';
import type { NamedSetting } from '../../../src/sheets/guide/settingsToMake.ts';
import { groupNames } from '../../../src/units/shortNames.ts';
import { anyName } from '../anyCorner.ts';
import { faults } from '../faults.ts';
import { wordsOf } from '../pieces.ts';

/** The setting of even tails, so wide at their base and so far apart. */
const settingOf = (
  { tails, base, space, from }: { tails: number; base: number; space: number; from: number },
  item = 'Buttons front',
  units: 'mm' | 'in' = 'mm',
): NamedSetting => {
  const [together, bush] = [Math.max(1, base - 3.3 - 6.25), 16];
  const bases = Array.from({ length: tails }, (_, i): [number, number] => [
    5 + i * (base + space),
    5 + i * (base + space) + base,
  ]);
  const { pairs, gaps } = fingerSetting(
    { tails: bases.map((each) => ({ base: each, tip: each })) },
    { diameter: 12.7 },
    { together, bush },
  );
  return {
    setting: {
      pairs: pairs.map((pair) => ({ ...pair, from: pair.from + from, to: pair.to + from })),
      gaps,
      from,
      to: from + 10 + tails * base + (tails - 1) * space,
      together,
      bush,
      cutter: { diameter: 12.7, depth: 15 },
      supports: tails % 2 > 0,
    },
    titles: {
      ...groupNames([item], [])([item]),
      stem: 'buttons-front',
      units,
      ends: ['front', 'back'],
      upper: 'upper edge',
    },
  };
};

const anySizes = fc.record({
  tails: fc.integer({ min: 1, max: 8 }),
  base: fc.double({ min: 4.5, max: 60, noNaN: true }),
  space: fc.double({ min: 13, max: 20, noNaN: true }),
  from: fc.constantFrom(0, 16),
});

describe('a setting rod', () => {
  it('has labels 2.4 mm high, inside it, off every line, every split and each other', () => {
    fc.assert(
      fc.property(anySizes, anyName, fc.constantFrom('mm' as const, 'in' as const), (sizes, item, units) => {
        const piece = settingRod(settingOf(sizes, item, units), 1);
        const splits = splitToFit(piece, { width: 200, height: 140 }) ?? NO_SPLITS;
        for (const each of [NO_SPLITS, splits]) expect(faults(piece, each)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('names every pair, gap and spacer, and which face is towards the maker at either stop', () => {
    const words = wordsOf(
      settingRod(settingOf({ tails: 3, base: 40, space: 14, from: 0 }), 7).draw(NO_SPLITS),
    );
    expect(words).toContain('7 · Buttons front · setting rod');
    expect(words.filter((word) => word.startsWith('PAIR'))).toEqual(['PAIR 1', 'PAIR 2', 'PAIR 3']);
    // 14 + 16 - 12.7: the space, and the bush's room beyond the cutter's.
    expect(words.filter((word) => word.endsWith('17.3'))).toHaveLength(2);
    expect(words).toContain('spacers 6.25');
    expect(words.join(' ')).toContain('at your right: A, C OUTSIDE FACE, B, D INSIDE FACE');
    expect(words.join(' ')).toContain('at your left: B, D OUTSIDE FACE, A, C INSIDE FACE');
  });
});

type Vector = readonly [number, number, number];
const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d];

describe('the side of the reference edge', () => {
  it('follows from how a side is clamped: its end up, and its outside face towards the maker', () => {
    // In the drawer x is to the right, y from the front to the back, z up. On the bench x is to the maker's right, y from the
    // maker away, z up. A turn keeps the handedness of end, outside face and reference edge, which in the drawer is the lower one.
    const [onTheRight] = cross([0, 0, 1], [0, -1, 0]);
    expect(onTheRight).toBe(1);
    const end = { front: [0, -1, 0], back: [0, 1, 0] } as const;
    const outside = { left: [-1, 0, 0], right: [1, 0, 0] } as const;
    const corners = {
      A: ['front', 'left'],
      B: ['front', 'right'],
      C: ['back', 'right'],
      D: ['back', 'left'],
    } as const;
    const atRight = Object.entries(corners)
      .filter(([, [where, hand]]) => cross(end[where], outside[hand])[2] === -1)
      .map(([letter]) => letter);
    expect(lettersSeen(['front', 'back'], 'left')).toBe(atRight.join(', '));
  });
});
