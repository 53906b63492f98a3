import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withDefaults } from '../../src/joint/defaults.ts';
import type { JointSpec, Spacing } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { tailWidths } from '../../src/joint/tailWidths.ts';
import { ordinarySpec } from './anySpec.ts';
import { against, jointOf } from './told.ts';

// Pins and half pins of 5; over 12 mm, 1:8 takes 1.5 from each side of a tail, so that a base of 3 needs a tip of 6.
const wish = (spacing: Spacing, width = 100): JointSpec => ({
  kind: 'through',
  width,
  tailBoard: 10,
  pinBoard: 12,
  spacing,
});

describe('the number of tails', () => {
  it('is the one whose tails are nearest, in ratio, to three pins, where none is given', () => {
    // Target 15. Four tails of 75/4 = 18.75 are 1.25 times that; five of 70/5 = 14, 1.071; six of 65/6 = 10.83, 1.385.
    const joint = jointOf(wish({ kind: 'even' }));
    expect(joint.tails).toHaveLength(5);
    expect(joint.tails[0]?.tip).toEqual([5, 19]);
  });

  it('comes with one fewer and one more', () => {
    expect(jointOf(wish({ kind: 'even' })).alternatives).toEqual([
      { tails: 4, tip: 18.75 },
      { tails: 6, tip: 65 / 6 },
    ]);
  });

  it('comes with no alternative that cannot be cut', () => {
    // (90 + 5) / (6 + 5) = 8.6: at most eight tails.
    expect(jointOf(wish({ kind: 'even', tails: 8 })).alternatives).toEqual([{ tails: 7, tip: 60 / 7 }]);
    expect(jointOf(wish({ kind: 'even', tails: 1 })).alternatives).toEqual([{ tails: 2, tip: 42.5 }]);
    // 20 - 10 leaves 10, and two tails with a pin between them need 17.
    expect(jointOf(wish({ kind: 'even' }, 20)).alternatives).toEqual([]);
  });

  it('may be as many as fit to the last hair', () => {
    // Eight tails of 6 and nine pins of 5: 93.
    expect(jointOf(wish({ kind: 'even', tails: 8 }, 93)).tails).toHaveLength(8);
    expect(against(wish({ kind: 'even', tails: 8 }, 92.99))).toHaveLength(1);
  });

  it('is refused where a base would be under 3 mm, with the number that may be and the best', () => {
    expect(against(wish({ kind: 'even', tails: 9 }))).toEqual([
      'tails: 9 tails are too many for 100 mm: each base must be at least 3 mm, so there may be 1 to 8; try 5',
    ]);
    expect(against(wish({ kind: 'even', tails: 1e9 }))).toHaveLength(1);
  });

  it('in graded spacing may be only as many as leave the narrowest its base', () => {
    // Three of 70 x 4/7, 2/7, 1/7: 40, 20, 10. Four share 100 - 25 = 75: the last gets 75/15 = 5, under 6.
    expect(against(wish({ kind: 'graded', ratio: 0.5, from: 'edge', tails: 4 }))).toEqual([
      'tails: 4 tails are too many for 100 mm: each base must be at least 3 mm, so there may be 1 to 3; try 3',
    ]);
  });

  it('in graded spacing may be as many as fit to the last hair', () => {
    // 24 + 12 + 6, and four pins of 5: 62.
    expect(
      jointOf(wish({ kind: 'graded', ratio: 0.5, from: 'edge', tails: 3 }, 62)).tails.map(({ tip }) => tip),
    ).toEqual([
      [5, 29],
      [34, 46],
      [51, 57],
    ]);
    expect(against(wish({ kind: 'graded', ratio: 0.5, from: 'edge', tails: 3 }, 61.99))).toHaveLength(1);
    // 6 + 12 + 6 and four pins; 6 + 12 + 12 + 6 and five.
    for (const [tails, width] of [
      [3, 44],
      [4, 61],
    ] as const) {
      const middle = { kind: 'graded', ratio: 0.5, from: 'middle', tails } as const;
      expect(jointOf(wish(middle, width)).tails.map(({ tip }) => tip[1] - tip[0])).toEqual(
        tails === 3 ? [6, 12, 6] : [6, 12, 12, 6],
      );
      expect(against(wish(middle, width - 0.01))).toHaveLength(1);
    }
  });

  it('that is chosen can be cut, and no other that can is nearer to three pins', () => {
    fc.assert(
      fc.property(ordinarySpec, (spec) => {
        const { spacing, width } = spec;
        if (spacing.kind === 'listed' || spacing.kind === 'grouped') throw new Error(spacing.kind);
        const { tails: _, ...open } = spacing;
        const result = layOut({ ...spec, spacing: open });
        const pin = spec.pin ?? Math.max(3, spec.tailBoard / 2);
        const { lower, upper } = spec.halfPin ?? { lower: pin, upper: pin };
        const room = (count: number): number => width - lower - upper - (count - 1) * pin;
        const miss = (count: number): number => Math.abs(Math.log(room(count) / count / (3 * pin)));
        // Each count laid out by itself says whether it can be cut: the bound on the count plays no part.
        const possible = Array.from({ length: Math.ceil(width / 4) }, (__, i) => i + 1).filter(
          (tails) => room(tails) > 0 && layOut({ ...spec, spacing: { ...open, tails } }).ok,
        );
        if (!result.ok) return expectNone(possible);
        const count = result.value.tails.length;
        expect(possible).toContain(count);
        expect(miss(count)).toBeLessThan(Math.min(...possible.map(miss)) + 1e-9);
        expect(result.value.alternatives.map(({ tails }) => tails)).toEqual(
          [count - 1, count + 1].filter((other) => possible.includes(other)),
        );
      }),
    );
  });

  const expectNone = (possible: readonly number[]): void => {
    expect(possible).toEqual([]);
  };

  it('in even spacing is refused exactly where a base would be under 3 mm', () => {
    fc.assert(
      fc.property(ordinarySpec, fc.integer({ min: 1, max: 60 }), (spec, tails) => {
        const lap = spec.kind === 'lapped' ? Math.max(3, Math.round(spec.pinBoard / 2) / 2) : 0;
        const pin = spec.pin ?? Math.max(3, spec.tailBoard / 2);
        const { lower, upper } = spec.halfPin ?? { lower: pin, upper: pin };
        const tip = (spec.width - lower - upper - (tails - 1) * pin) / tails;
        const base = tip - (2 * (spec.pinBoard - lap)) / (spec.slope?.run ?? 8);
        fc.pre(Math.abs(base - 3) > 1e-6);
        expect(layOut({ ...spec, spacing: { kind: 'even', tails } }).ok).toBe(base > 3);
      }),
    );
  });
});

describe('pins that leave no tails', () => {
  it('are refused with what they leave and what a tail needs', () => {
    expect(against(wish({ kind: 'even' }, 15.9))).toEqual([
      'width: half pins of 5 mm and 5 mm leave 5.9 mm of 15.9 mm; one tail needs 6 mm for a base of 3 mm; use narrower half pins, a gentler slope or a wider board',
    ]);
    expect(against(wish({ kind: 'even', tails: 3 }, 9))).toEqual([
      'width: half pins of 5 mm and 5 mm leave 0 mm of 9 mm; one tail needs 6 mm for a base of 3 mm; use narrower half pins, a gentler slope or a wider board',
    ]);
  });
});

describe('the pins between tails', () => {
  it('are one fewer than the tails', () => {
    for (const tails of [1, 3]) {
      const widths = tailWidths(withDefaults(wish({ kind: 'even', tails })));
      expect(widths.ok && widths.value.pins).toEqual(new Array(tails - 1).fill(5));
    }
  });
});

describe('listed widths', () => {
  const listed = (tails: number[], pins: number[]): Spacing => ({ kind: 'listed', tails, pins });

  it('that do not fill the board are refused with the sum, and half pins that would', () => {
    // 5 + 40 + 5 + 40 + 5 = 95
    expect(against(wish(listed([40, 40], [5])))).toEqual([
      "tails: tails, pins and half pins together are 95 mm, 5 mm less than the board's 100 mm; make the half pins 7.5 mm, or list widths that fill it",
    ]);
    expect(
      jointOf({ ...wish(listed([40, 40], [5])), halfPin: { lower: 7.5, upper: 7.5 } }).tails,
    ).toHaveLength(2);
  });

  it('that overfill it are refused with half pins only where some would do', () => {
    expect(against(wish(listed([43, 45], [5])))).toEqual([
      "tails: tails, pins and half pins together are 103 mm, 3 mm more than the board's 100 mm; make the half pins 3.5 mm, or list widths that fill it",
    ]);
    // Half pins of 1 are the least that can be cut: 5 + 5 less 8 are two of them.
    expect(against(wish(listed([48, 45], [5])))[0]).toMatch(
      /; make the half pins 1 mm, or list widths that fill it$/u,
    );
    expect(against(wish(listed([48, 45.1], [5])))[0]).toMatch(/; list widths that fill it$/u);
    expect(against(wish(listed([60, 60], [5])))).toEqual([
      "tails: tails, pins and half pins together are 135 mm, 35 mm more than the board's 100 mm; list widths that fill it",
    ]);
  });

  it('may miss it by half a tenth, as rounding does', () => {
    expect(against(wish(listed([42.5, 42.45], [5])))).toEqual([]);
    expect(against(wish(listed([42.5, 42.55], [5])))).toEqual([]);
    // In binary 20.05 - 20 comes out a hair over 0.05.
    expect(against(wish(listed([10.05], []), 20))).toEqual([]);
    expect(against(wish(listed([42.5, 42.449], [5])))).toHaveLength(1);
    expect(against(wish(listed([42.5, 42.551], [5])))).toHaveLength(1);
  });
});
