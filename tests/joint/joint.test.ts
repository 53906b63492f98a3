import { describe, expect, it } from 'vitest';
import { meanPin, meanTail } from '../../src/joint/joint.ts';
import type { Spacing } from '../../src/joint/jointSpec.ts';
import { jointOf } from './told.ts';

const joint = (spacing: Spacing) =>
  jointOf({
    kind: 'through',
    width: 60,
    tailBoard: 10,
    pinBoard: 8,
    halfPin: { lower: 8, upper: 6 },
    spacing,
  });

describe('the proportion of a joint', () => {
  it('is that of its mean tail to its mean whole pin', () => {
    // 8 + 15 + 4 + 12 + 6 + 9 + 6 = 60
    const uneven = joint({ kind: 'listed', tails: [15, 12, 9], pins: [4, 6] });
    expect(meanTail(uneven)).toBeCloseTo(12, 12);
    expect(meanPin(uneven)).toBeCloseTo(5, 12);
  });

  it('uses the half pins where one tail leaves no whole one', () => {
    const single = joint({ kind: 'even', tails: 1 });
    expect(meanTail(single)).toBeCloseTo(46, 12);
    expect(meanPin(single)).toBeCloseTo(7, 12);
  });
});
