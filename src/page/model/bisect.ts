import type { Complaint, Result } from '../../units/complaint.ts';

/** How far a movement was possible. */
export interface Reach<T> {
  /** The last possible step; 0 where not even the first is possible. */
  readonly step: number;
  readonly value?: T;
  /** The complaints about the next step; none where all steps are possible. */
  readonly stop: readonly Complaint[];
}

/**
 * The furthest possible of `steps` steps, by bisection. Exact where every step before the first refusal is possible, as
 * along one measure.
 */
export const bisect = <T>(steps: number, judge: (step: number) => Result<T>): Reach<T> => {
  const all = judge(steps);
  if (all.ok) return { step: steps, value: all.value, stop: [] };
  let reached: { step: number; value?: T } = { step: 0 };
  let refused = { step: steps, stop: all.complaints };
  while (refused.step - reached.step > 1) {
    const step = (reached.step + refused.step) >> 1;
    const judged = judge(step);
    if (judged.ok) reached = { step, value: judged.value };
    else refused = { step, stop: judged.complaints };
  }
  return { ...reached, stop: refused.stop };
};

/** Moves by an amount in steps, the last of which is whole, as far as is possible. */
export const stepTowards = <T>(by: number, step: number, judge: (part: number) => Result<T>) => {
  const steps = Math.ceil(Math.abs(by) / step - 1e-6);
  return steps === 0
    ? { value: undefined, stop: [] }
    : bisect(steps, (i) => judge(by - Math.sign(by) * step * (steps - i)));
};
