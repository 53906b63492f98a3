import type { Blank, Breakout } from '../breakout.ts';
import type { RunWish } from '../wanted.ts';
import { areaOf } from '../wood/blankType.ts';
import type { Solution } from './solve.ts';

/** The lists without one that stands in the way: one that found no room, or the largest. */
export const withoutWorst = (
  runs: readonly RunWish[],
  { types, missing }: Pick<Solution, 'types' | 'missing'>,
): RunWish[] => {
  const first = types.length - runs.length;
  const weight = (i: number) => {
    const type = types[first + i];
    return ((missing[first + i] ?? 0) > 0 ? 1e18 : 1) * (type === undefined ? 0 : areaOf(type));
  };
  const worst = runs.reduce((most, _, i) => (weight(i) > weight(most) ? i : most), 0);
  return runs.filter((_, i) => i !== worst);
};

/** For each list, the board in which it runs through: laid out so, or so cut already. */
export const metRuns = (
  runs: readonly RunWish[],
  laidOut: readonly RunWish[],
  blanks: readonly (Blank & { readonly plank: number })[],
): Breakout['runs'] =>
  runs.map((run) => {
    const own = run.pieces.map((piece) => blanks.find(({ wanted }) => wanted === piece));
    const [first] = own;
    if (first === undefined) return {};
    if (laidOut.includes(run)) return { plank: first.plank };
    const from = run.kind === 'row' ? 'x' : 'y';
    const across = run.kind === 'row' ? 'y' : 'x';
    const order = first.turned ? [...own].reverse() : own;
    const inOrder = order.every((blank, i) => {
      const before = order[i - 1];
      return blank !== undefined && (before === undefined || blank[from] > before[from]);
    });
    const alike = own.every(
      (blank) =>
        blank?.plank === first.plank &&
        blank.turned === first.turned &&
        Math.abs(blank[across] - first[across]) < 1e-3 &&
        blank.why.kind === 'cut already',
    );
    return inOrder && alike ? { plank: first.plank } : {};
  });
