import { type Joint, meanTail, type TailCount } from '../joint/joint.ts';
import { TARGET_TAIL_IN_PINS } from '../joint/jointLimits.ts';
import { ratioBetween } from '../joint/spacing.ts';
import { EPSILON } from '../units/epsilon.ts';
import type { Family } from './drawer.ts';
import { TARGET_RANGE_IN_PINS } from './drawerLimits.ts';

/** Sums of squares whose means differ by less are equal; what running sums lose lies far below. */
const TIE = 1e-12;

/**
 * The tail width T that a set is matched to: the one in [2p, 4p] with the least sum of (ln t - ln T)² over all drawers, t being
 * a drawer's tip width nearest to T in ratio; of equally good ones the nearest to 3p in ratio, of two
 * as near the narrower. Exact.
 *
 * A drawer's nearest tip changes where T passes the geometric mean of two that are neighbours. Between such points the sum is one parabola
 * in ln T, known by its running sums; at such points it bends downward, so its least value lies at a parabola's
 * bottom or at an end of the range. That takes N log N time.
 * @param tips for each drawer the tip widths it can have, mm, at least one; those of drawers that made no choice are left out
 * @param pin the set's pin, mm
 */
export const familyTarget = (tips: readonly (readonly number[])[], pin: number): number => {
  const middle = TARGET_TAIL_IN_PINS * pin;
  if (tips.length === 0) return middle;
  // All in logarithms of the ratio to the middle, so that ties are decided by the distance from 0.
  const from = Math.log(TARGET_RANGE_IN_PINS.least / TARGET_TAIL_IN_PINS);
  const to = Math.log(TARGET_RANGE_IN_PINS.most / TARGET_TAIL_IN_PINS);
  let sum = 0;
  // Counted from the beginning of the range: a cost that all targets share makes no difference.
  let squares = 0;
  const changes: { at: number; sum: number; squares: number }[] = [];
  // Sums are rounded by the order of what is summed, which must not be that of the drawers.
  const logsOfTips = tips
    .map((choices) => choices.map((tip) => Math.log(tip / middle)).sort((a, b) => a - b))
    .sort(inOrder);
  for (const logs of logsOfTips)
    logs.forEach((log, i) => {
      const last = logs[i - 1];
      const change = { at: last === undefined ? from : (last + log) / 2, sum: log, squares: log * log };
      if (last !== undefined) {
        change.sum -= last;
        change.squares -= last * last;
      }
      if (change.at <= from) sum += change.sum;
      else if (change.at < to) changes.push(change);
    });
  changes.sort((a, b) => a.at - b.at);

  const count = tips.length;
  let best = { at: from, cost: Number.POSITIVE_INFINITY };
  const consider = (at: number) => {
    const cost = (squares - 2 * sum * at) / count + at * at;
    if (cost < best.cost - TIE || (cost < best.cost + TIE && Math.abs(at) < Math.abs(best.at) - EPSILON))
      best = { at, cost };
  };
  consider(from);
  let start = from;
  for (const change of [...changes, { at: to, sum: 0, squares: 0 }]) {
    const bottom = sum / count;
    if (bottom >= start && bottom <= change.at) consider(bottom);
    start = change.at;
    sum += change.sum;
    squares += change.squares;
  }
  consider(to);
  return middle * Math.exp(best.at);
};

/** The order of two lists by the first number that differs. */
const inOrder = (a: readonly number[], b: readonly number[]): number => {
  const differs = a.findIndex((each, i) => each !== b[i]);
  return differs < 0 ? a.length - b.length : (a[differs] ?? 0) - (b[differs] ?? Number.NEGATIVE_INFINITY);
};

/**
 * The choice whose tip width is nearest to a target in ratio; of two as near, the one with fewer tails.
 * @param choices in rising order of tails
 */
export const nearestChoice = <C extends TailCount>(choices: readonly C[], target: number): C | undefined => {
  let best: C | undefined;
  for (const choice of choices)
    if (best === undefined || ratioBetween(choice.tip, target) < ratioBetween(best.tip, target) - EPSILON)
      best = choice;
  return best;
};

/** The family of joints that were set out for a target. */
export const familyOf = (joints: readonly Joint[], target: number, pin: number): Family => {
  const tips = joints.map(meanTail);
  return { target, pin, tips, spread: Math.max(...tips) / Math.min(...tips) };
};

/** The pin that most drawers have; of pins as frequent, the narrowest. Pins that only floats tell apart are equal. */
export const commonPin = (pins: readonly number[]): number | undefined => {
  let best: { readonly pin: number; readonly count: number } | undefined;
  let run: { readonly pin: number; readonly count: number } | undefined;
  for (const pin of [...pins].sort((a, b) => a - b)) {
    run = run !== undefined && pin - run.pin < EPSILON ? { ...run, count: run.count + 1 } : { pin, count: 1 };
    if (best === undefined || run.count > best.count) best = run;
  }
  return best?.pin;
};
