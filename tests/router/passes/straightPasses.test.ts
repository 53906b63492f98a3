import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkStraight,
  defaultStraight,
  mostStraight,
  straightPasses,
} from '../../../src/router/passes/straightPasses.ts';
import { speak } from '../../../src/units/phrase.ts';
import { CUTTER, cutOf, THROUGH } from '../example.ts';

const { joint } = cutOf(THROUGH);
const ANGLE = (8 * Math.PI) / 180;

describe('straightPasses', () => {
  it('runs along both sloped sides of every socket, its edge on them', () => {
    straightPasses(joint, 8).forEach((passes, i) => {
      const { tip, base } = joint.tails[i] ?? { tip: [0, 0], base: [0, 0] };
      // A centre 4 mm square off a line that leans by 8° lies 4 / cos 8° from it along the board.
      const off = 4 / Math.cos(ANGLE);
      expect(passes[0]?.inside).toBeCloseTo(base[0] + off, 9);
      expect(passes[0]?.outside).toBeCloseTo(tip[0] + off, 9);
      expect(passes.at(-1)?.inside).toBeCloseTo(base[1] - off, 9);
      expect(passes.at(-1)?.outside).toBeCloseTo(tip[1] - off, 9);
    });
  });

  it('has no more passes than overlap by a tenth', () => {
    // 34 - 8 / cos 8° = 25.92 to travel at the outside, in steps of 7.2.
    expect(straightPasses(joint, 8).map((passes) => passes.length)).toEqual([5, 5, 5]);
  });

  it('leaves no ridge between two passes at either face', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: mostStraight(joint), noNaN: true }), (diameter) => {
        for (const passes of straightPasses(joint, diameter))
          passes.slice(1).forEach(({ inside, outside }, i) => {
            expect(inside - (passes[i]?.inside ?? 0)).toBeLessThan(diameter);
            expect(outside - (passes[i]?.outside ?? 0)).toBeLessThan(diameter);
          });
      }),
    );
  });
});

describe('the straight cutter', () => {
  it('may be as thick as passes the narrowest socket at its slope', () => {
    const [first] = joint.tails;
    const base = (first?.base[1] ?? 0) - (first?.base[0] ?? 0);
    expect(mostStraight(joint)).toBeCloseTo(base * Math.cos(ANGLE), 9);
    expect(checkStraight(joint, mostStraight(joint))).toEqual([]);
  });

  it('must pass the narrowest of sockets that differ', () => {
    const { pin: _, ...wish } = THROUGH;
    const uneven = cutOf({ ...wish, spacing: { kind: 'graded', tails: 3, ratio: 0.7, from: 'edge' } }).joint;
    const bases = uneven.tails.map(({ base }) => base[1] - base[0]);
    expect(Math.max(...bases)).toBeGreaterThan(1.5 * Math.min(...bases));
    expect(mostStraight(uneven)).toBeCloseTo(Math.min(...bases) * Math.cos(ANGLE), 9);
  });

  it('is as thick as the dovetail cutter unless the sockets are narrower, then the most whole mm', () => {
    expect(defaultStraight(joint, CUTTER)).toBe(12.7);
    const narrow = cutOf({ ...THROUGH, spacing: { kind: 'even', tails: 6 } }).joint;
    // (150 - 7 x 12) / 6 = 11 at the tip, less 2 x 16 tan 8° = 4.5 at the base.
    expect(defaultStraight(narrow, CUTTER)).toBe(6);
  });

  it.each([0, 0.99, -1, Number.NaN, 40])('is refused at %d mm, with what passes', (diameter) => {
    // (150 - 4 x 12) / 3 = 34 at the tip, 29.50 at the base, 29.50 cos 8° = 29.219: the last hundredth that passes is 29.21.
    const [complaint] = checkStraight(joint, diameter);
    expect(complaint?.at).toEqual(['straight']);
    expect(complaint && speak(complaint.says, 'mm')).toContain('it must be 1 mm to 29.21 mm');
  });
});
