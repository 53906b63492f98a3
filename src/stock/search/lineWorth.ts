import { areaOf, type BlankType } from '../wood/blankType.ts';
import { type ClearLines, clearLines } from '../wood/clearLines.ts';
import type { PieceView } from '../wood/pieceView.ts';
import type { Bin } from './bin.ts';

/** What can lie on a line: so much of its length, at most so many; each as wide as told. */
interface Item {
  readonly type: number;
  readonly length: number;
  readonly width: number;
  readonly most: number;
  /** Its share of its type's worth: less than 1 for one piece of a run. */
  readonly share: number;
}

/** Items on one line: their lengths and kerfs together, and what they are worth for each tick of the line's width. */
interface Load {
  readonly length: number;
  readonly worth: number;
  readonly item: Item | undefined;
  readonly before: Load | undefined;
}

/** The most that a bin's blanks can be worth, never below the truth, and about how many of each type that would be. */
export interface LineWorth {
  readonly worth: number;
  readonly counts: readonly number[];
}

const NO_LIMIT: LineWorth = { worth: Number.POSITIVE_INFINITY, counts: [] };

/** More loads than these are rounded down to steps of their length, which is never below the truth either. */
const MOST_LOADS = 300;

const itemsOf = ({ shapes }: PieceView, types: readonly BlankType[], demand: readonly number[]): Item[] =>
  shapes.flatMap(({ type, length, width, orders }): Item[] => {
    const most = demand[type] ?? 0;
    const [order] = orders ?? [];
    const whole = types[type];
    if (order === undefined || whole === undefined) return [{ type, length, width, most, share: 1 }];
    return order.members.map(({ type: member, pose }) => {
      const share = areaOf(member) / areaOf(whole);
      return { type, length: pose.length, width: pose.width, most, share };
    });
  });

/** Of loads, those that no shorter one equals; rising. */
const best = (loads: readonly Load[], step: number): Load[] => {
  const rising = [...loads].sort((a, b) => a.length - b.length || b.worth - a.worth);
  const kept: Load[] = [];
  for (const load of rising) if (load.worth > (kept.at(-1)?.worth ?? -1)) kept.push(load);
  if (kept.length <= MOST_LOADS) return kept;
  const rounded = kept.map((load) => ({ ...load, length: Math.floor(load.length / step) * step }));
  return best(rounded, step * 1.5);
};

const loadsOf = (items: readonly Item[], kerf: number, most: number, prices: readonly number[]): Load[] => {
  let loads: Load[] = [{ length: 0, worth: 0, item: undefined, before: undefined }];
  for (const item of items) {
    const worth = ((prices[item.type] ?? 0) * item.share) / item.width;
    if (worth === 0) continue;
    const all = [...loads];
    let last = loads;
    for (let n = 0; n < item.most && last.length > 0; n++) {
      last = last.flatMap((load): Load[] => {
        const length = load.length + item.length + kerf;
        return length > most ? [] : [{ length, worth: load.worth + worth, item, before: load }];
      });
      all.push(...last);
    }
    loads = best(all, most / MOST_LOADS);
  }
  return loads;
};

/** The last load that is not longer. */
const within = (loads: readonly Load[], length: number): Load | undefined => {
  let [low, high] = [0, loads.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((loads[middle]?.length ?? 0) <= length) low = middle + 1;
    else high = middle;
  }
  return loads[low - 1];
};

const worthOf = (
  lines: readonly ClearLines[],
  loads: readonly Load[],
  kerf: number,
  types: number,
): LineWorth => {
  const counts = new Array<number>(types).fill(0);
  let worth = 0;
  for (const { length, width } of lines) {
    const load = within(loads, length + kerf + 1);
    worth += (load?.worth ?? 0) * width;
    for (let at = load; at?.item !== undefined; at = at.before)
      counts[at.item.type] = (counts[at.item.type] ?? 0) + (width / at.item.width) * at.item.share;
  }
  return { worth, counts };
};

/**
 * For some bins, at any prices, the most that each can hold: on every line along a board, and on every line across it, blanks
 * lie one after the other, a kerf apart and clear of defects. The lesser of what the lines along and those across can hold.
 * The bar relaxation of two-dimensional packing: Scheithauer, International Transactions in Operational Research 6 (1999).
 */
export const lineWorths = (
  bins: readonly Bin[],
  types: readonly BlankType[],
  demand: readonly number[],
): ((prices: readonly number[]) => readonly LineWorth[]) => {
  const all = bins.map(({ ways }) => {
    const able = new Set(ways.flatMap(({ view }) => view.shapes.map(({ type }) => type)));
    return ways.flatMap(({ view }) => {
      const items = itemsOf(view, types, demand);
      const here = new Set(items.map(({ type }) => type));
      // A row or a stack is seen one way only.
      if (here.size < able.size) return [];
      const own = [...here].flatMap((type) => types[type]?.run?.members ?? types[type] ?? []);
      const lines = clearLines(view.ground, view.region, own);
      return [{ kerf: view.kerf, items, key: JSON.stringify([view.axis, items]), lines }];
    });
  });
  const longest = Math.max(...all.flat().flatMap(({ lines }) => lines.map(({ length }) => length)), 0);
  return (prices) => {
    const known = new Map<string, Load[]>();
    return all.map((ways) =>
      ways
        .map(({ kerf, items, key, lines }) => {
          const loads = known.get(key) ?? loadsOf(items, kerf, longest + kerf, prices);
          known.set(key, loads);
          return worthOf(lines, loads, kerf, types.length);
        })
        .reduce((a, b) => (a.worth <= b.worth ? a : b), NO_LIMIT),
    );
  };
};
