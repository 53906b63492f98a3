import { describe, expect, it } from 'vitest';
import { layOutWidths } from '../../src/drawer/layOutWidths.ts';
import type { JointSpec, Spacing } from '../../src/joint/jointSpec.ts';
import { complaintsOf, value } from '../value.ts';

/** Pins and half pins of 6 mm, so k tails on W are (W - 6 (k + 1)) / k wide. */
const wish = (spacing: Spacing = { kind: 'even' }): JointSpec => ({
  kind: 'lapped',
  width: Number.NaN,
  tailBoard: 12,
  pinBoard: 20,
  lap: 5,
  pin: 6,
  spacing,
});
const laid = (widths: readonly number[], spacing?: Spacing) => value(layOutWidths(wish(spacing), widths));
const counts = (widths: readonly number[], spacing?: Spacing) =>
  laid(widths, spacing).joints.map(({ tails }) => tails.length);

describe('bare widths', () => {
  it('get the numbers of tails that look most alike', () => {
    // 2 tails of 21 mm on 60 mm, 3 of 22 mm on 90 mm: nothing else comes as near.
    const { joints, family } = laid([60, 90]);
    expect(joints.map(({ width, tails }) => [width, tails.length])).toEqual([
      [60, 2],
      [90, 3],
    ]);
    expect(family.tips[0]).toBeCloseTo(21, 12);
    expect(family.tips[1]).toBeCloseTo(22, 12);
    expect(family.target).toBeCloseTo(Math.sqrt(21 * 22), 9);
    expect(family.spread).toBeCloseTo(22 / 21, 12);
    expect(family.pin).toBe(6);
  });

  it('have tails of two to four pins, however few are wished for', () => {
    // Two tails are 21 and 36 mm: their mean, 27.5 mm, is more than four pins.
    const { family } = laid([60, 90], { kind: 'even', tails: 2 });
    expect(family.tips[0]).toBeCloseTo(21, 12);
    expect(family.tips[1]).toBeCloseTo(36, 12);
    expect(family.target).toBe(24);
    expect(counts([60, 90], { kind: 'even', tails: 2 })).toEqual([2, 2]);
  });

  it('may be graded, and are compared by their mean tails', () => {
    const spacing = { kind: 'graded', ratio: 0.9, from: 'edge' } as const;
    expect(counts([60, 90], spacing)).toEqual([2, 3]);
    const [narrow] = laid([60, 90], spacing).joints;
    const [first = [0, 0], second = [0, 0]] = narrow?.tails.map(({ tip }) => tip) ?? [];
    expect((second[1] - second[0]) / (first[1] - first[0])).toBeCloseTo(0.9, 9);
  });

  it('of listed tails stay as they were listed', () => {
    const { joints, family } = laid([60], { kind: 'listed', tails: [25, 17] });
    expect(joints[0]?.tails.map(({ tip }) => tip[1] - tip[0])).toEqual([25, 17]);
    expect(family.target).toBeCloseTo(21, 9);
    expect(family.spread).toBe(1);
  });

  it('that cannot be cut are reported by their place in the list, all at once', () => {
    expect(complaintsOf(layOutWidths(wish(), [4, 90, 6000]))).toEqual([
      "widths.0: the boards' width is 4 mm; it must be 5 mm to 5000 mm",
      "widths.2: the boards' width is 6000 mm; it must be 5 mm to 5000 mm",
    ]);
  });
});
