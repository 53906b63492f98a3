import type { Plank } from '../plank.ts';
import { areaOf, type BlankType } from '../wood/blankType.ts';
import { chooseBoards } from './chooseBoards.ts';
import { after, type Filling, worth } from './fillInTurn.ts';
import type { Choice, Pool } from './pool.ts';

/** So many ways to cut each bent board are tried, and the most small pieces come first. */
const TRIES = 12;

/**
 * The same number of boards with more small pieces out of bent ones: short pieces out of those that are bent along their length,
 * narrow ones out of cupped ones.
 * @param pools boards that may be cut into
 * @param steps for each choice of the other boards
 */
export const intoBent = (
  filling: Filling,
  pools: readonly Pool[],
  types: readonly BlankType[],
  asked: readonly number[],
  { planks, steps }: { readonly planks: readonly Plank[]; readonly steps: number },
): Filling => {
  if (filling.open.some((number) => number > 0)) return filling;
  const count = asked.reduce((sum, number) => sum + number, 0);
  /** What pieces are worth there: the more the smaller they are, less than nothing those above the mean; nothing on a flat board. */
  const worthIn = ({ bin }: Pool): readonly number[] => {
    const { bow } = planks[bin.plank] ?? {};
    const sizes = types.map(({ length, width }) => (bow === 'long' ? length : width));
    const mean = sizes.reduce((sum, size, type) => sum + (size * (asked[type] ?? 0)) / count, 0);
    return sizes.map((size) => (bow === undefined ? 0 : 1 - size / mean));
  };
  const smallIn = ({ chosen }: Filling): number => {
    let open = asked;
    let sum = 0;
    for (const [pool, choice] of chosen) {
      sum += worth(choice, open, worthIn(pool));
      open = after(choice, open);
    }
    return sum;
  };
  const areas = types.map(areaOf);
  const fixed = new Map<Pool, Choice>();
  let best = filling;
  let open = asked;
  let boards = filling.boards;
  const bent = pools.filter(({ bin }) => planks[bin.plank]?.bow !== undefined);
  const settled = new Set<Pool>();
  for (const pool of bent) {
    const values = worthIn(pool);
    settled.add(pool);
    const others = pools.filter((other) => !settled.has(other));
    const ofSmall = (choice: Choice): Choice => ({
      ...choice,
      yields: choice.yields.map((number, type) => ((values[type] ?? 0) > 0 ? number : 0)),
    });
    const tries = [...pool.choices.map(ofSmall), ...pool.choices]
      .map((choice) => ({ choice, small: worth(choice, open, values) }))
      .sort((a, b) => b.small - a.small)
      .slice(0, TRIES);
    for (const { choice } of tries) {
      const isCut = worth(choice, open, areas) > 0;
      const fewer = boards - (isCut && !pool.bin.free ? 1 : 0);
      const rest = after(choice, open);
      const { filling: found } = chooseBoards(others, rest, [areas], fewer, steps);
      if (found === undefined) continue;
      const own = new Map(isCut ? [...fixed, [pool, choice]] : fixed);
      const next = {
        chosen: new Map([...own, ...found.chosen]),
        open: found.open,
        boards: found.boards + filling.boards - fewer,
      };
      if (smallIn(next) > smallIn(best)) {
        best = next;
        if (isCut) fixed.set(pool, choice);
        [open, boards] = [rest, fewer];
      }
      break;
    }
  }
  return best;
};
