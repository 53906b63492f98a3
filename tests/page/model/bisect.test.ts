import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bisect } from '../../../src/page/model/bisect.ts';
import { accept, refuse } from '../../../src/units/complaint.ts';

const upTo = (most: number) => (step: number) =>
  step <= most ? accept(step * 10) : refuse({ at: [], says: [`${step} is over ${most}`] });

describe('bisect', () => {
  it('makes all steps where none is refused', () => {
    expect(bisect(7, upTo(7))).toEqual({ step: 7, value: 70, stop: [] });
  });

  it('stops before the first refusal, and returns it', () => {
    expect(bisect(100, upTo(41))).toEqual({
      step: 41,
      value: 410,
      stop: [{ at: [], says: ['42 is over 41'] }],
    });
  });

  it('stays at the start where not even one step is possible', () => {
    const reach = bisect(5, upTo(0));
    expect(reach.step).toBe(0);
    expect(reach.value).toBeUndefined();
    expect(reach.stop).toEqual([{ at: [], says: ['1 is over 0'] }]);
  });

  it('judges no more often than halving needs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 0, max: 5000 }), (steps, most) => {
        let judged = 0;
        const reach = bisect(steps, (step) => {
          judged++;
          return upTo(most)(step);
        });
        expect(reach.step).toBe(Math.min(steps, most));
        expect(judged).toBeLessThanOrEqual(2 + Math.ceil(Math.log2(steps)));
      }),
    );
  });
});
