import { areaOf, type BlankType } from '../wood/blankType.ts';
import { after, type Filling, worth } from './fillInTurn.ts';
import { type Choice, type Pool, poolOf } from './pool.ts';
import type { Told } from './told.ts';

/** Steps for a new pattern of one bin. */
const PATTERN_STEPS = 20_000;

/** How what is open is preferred to what lies somewhere already; in turn. */
const PREFERENCES = [1, 1.3, 2];

interface Own {
  readonly pool: Pool;
  /** Absent where it is not cut into. */
  readonly choice: Choice | undefined;
  /** What is taken of it. */
  readonly counts: readonly number[];
}

const minus = (a: readonly number[], b: readonly number[]): number[] => a.map((n, i) => n - (b[i] ?? 0));
const plus = (a: readonly number[], b: readonly number[]): number[] => a.map((n, i) => n + (b[i] ?? 0));

/**
 * Puts what a filling leaves open into some bins: takes two of them at a time and fills them anew with what they held and what
 * is open, and keeps what leaves less open.
 * @param pools where anything may lie
 * @param steps for patterns
 */
export const squeeze = (
  chosen: Filling['chosen'],
  pools: readonly Pool[],
  types: readonly BlankType[],
  demand: readonly number[],
  steps: number,
  told: Told,
): Filling => {
  const areas = types.map(areaOf);
  const sum = (counts: readonly number[]) => counts.reduce((all, n, i) => all + n * (areas[i] ?? 0), 0);
  let open = demand;
  const own = pools.map((pool): Own => {
    const choice = chosen.get(pool);
    const before = open;
    if (choice !== undefined) open = after(choice, open);
    return { pool, choice, counts: minus(before, open) };
  });
  let left = steps;
  const fillOne = (pool: Pool, wanted: readonly number[], prices: readonly number[]): Own => {
    let choices: readonly Choice[] = pool.choices;
    if (!pool.complete) {
      const found = poolOf(pool.bin, { types, most: wanted, prices, breadth: 2, steps: PATTERN_STEPS });
      left -= found.steps;
      choices = [...choices, ...found.choices];
    }
    left -= choices.length;
    let best: Choice | undefined;
    let most = 0;
    for (const choice of choices) {
      const value = worth(choice, wanted, prices);
      if (value > most) [most, best] = [value, choice];
    }
    return { pool, choice: best, counts: minus(wanted, best === undefined ? wanted : after(best, wanted)) };
  };
  let idle = 0;
  const pairs = own.flatMap((_, i) => own.flatMap((_, k): [number, number][] => (i === k ? [] : [[i, k]])));
  for (
    let turn = 0;
    left > 0 && open.some((n) => n > 0) && idle < pairs.length * PREFERENCES.length;
    turn++
  ) {
    told(1 - left / steps);
    const [i, k] = pairs[turn % pairs.length] ?? [0, 0];
    const preference = PREFERENCES[Math.floor(turn / pairs.length) % PREFERENCES.length] ?? 1;
    const [a, b] = [own[i], own[k]];
    if (a === undefined || b === undefined) break;
    const wanted = plus(plus(a.counts, b.counts), open);
    const prices = areas.map((area, type) => ((open[type] ?? 0) > 0 ? area * preference : area));
    const first = fillOne(a.pool, wanted, prices);
    const second = fillOne(b.pool, minus(wanted, first.counts), prices);
    const rest = minus(minus(wanted, first.counts), second.counts);
    if (sum(rest) < sum(open) * (1 - 1e-9)) {
      open = rest;
      own[i] = first;
      own[k] = second;
      idle = 0;
    } else idle++;
  }
  const found = new Map<Pool, Choice>();
  open = demand;
  for (const { pool, choice } of own) {
    if (choice === undefined || worth(choice, open, areas) === 0) continue;
    found.set(pool, choice);
    open = after(choice, open);
  }
  return { chosen: found, open, boards: [...found.keys()].filter(({ bin }) => !bin.free).length };
};
