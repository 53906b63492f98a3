import type { Complaint, Result } from '../../units/complaint.ts';

/** How far a wish could be met. */
export interface Reach<T> {
  /** The step that was reached, 0 where not even the first could be taken. */
  readonly step: number;
  readonly value?: T;
  /** What refused the next step; nothing where all were taken. */
  readonly stop: readonly Complaint[];
}

/**
 * The furthest of `steps` steps that is allowed, found by halving: as far as the first refusal where everything before
 * it is allowed, as it is along one measure.
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

/** Goes a way in steps, the last of which is whole, as far as is allowed. */
export const stepTowards = <T>(by: number, step: number, judge: (part: number) => Result<T>) => {
  const steps = Math.ceil(Math.abs(by) / step - 1e-6);
  return steps === 0
    ? { value: undefined, stop: [] }
    : bisect(steps, (i) => judge(by - Math.sign(by) * step * (steps - i)));
};
