import type { Breakout } from '../../stock/breakout.ts';
import type { Plank, StockName } from '../../stock/plank.ts';
import { rectangle } from '../../stock/polygon.ts';
import { type BreakOutOptions, breakOut } from '../../stock/search/breakOut.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { PartBlank } from './partBlanks.ts';
import type { StockWork } from './stockWork.ts';

/** Which part comes out of which board, and what there is no board for. */
export interface BrokenOut extends StockWork {
  readonly breakout: Breakout;
  /** Boards that would do for what is missing; none where nothing is. */
  readonly toBuy: readonly BoardToBuy[];
}

/** Boards to buy, all of one size: the least that does, in mm. */
export interface BoardToBuy {
  readonly stocks: readonly StockName[];
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
}

/** What is missing of stocks that come out of the same boards, of one thickness. */
interface Missing {
  readonly stocks: readonly StockName[];
  readonly blanks: readonly PartBlank[];
}

/** The longest board that is asked for where shorter and wider ones do as well, in mm. */
const LONG = 2500;

/** Breaks the boards of a plan out into the parts of its drawers. */
export const brokenOut = (work: StockWork, saw: Sawing, options: BreakOutOptions = {}): BrokenOut => {
  const { planks, blanks, runs } = work;
  const wishes = runs.flatMap(({ wish }) => wish ?? []);
  const breakout = breakOut(planks, blanks, wishes, saw, options);
  return {
    ...work,
    breakout: { ...breakout, runs: atTheirWishes(work, breakout) },
    toBuy: toBuy(work, breakout, saw, options),
  };
};

/** What became of each run, in the plan's order: one that cannot be wished for is not met. */
const atTheirWishes = ({ runs }: StockWork, breakout: Breakout): Breakout['runs'] => {
  const answers = [...breakout.runs];
  return runs.map(({ wish }) => (wish === undefined ? {} : (answers.shift() ?? {})));
};

/** One board for all that is missing of a stock where a layout proves that it does; or else one for each. */
const toBuy = (
  { planks, blanks }: StockWork,
  { missing }: Breakout,
  saw: Sawing,
  options: BreakOutOptions,
): readonly BoardToBuy[] => {
  if (missing.length === 0) return [];
  // Stocks that one board is listed for are bought as one board.
  const stocksFor = (stock: StockName) =>
    planks.find(({ stocks }) => stocks.includes(stock))?.stocks ?? [stock];
  const groups = new Map<string, Missing>();
  for (const index of missing) {
    const blank = blanks[index];
    // What is pinned to a board comes out of no other.
    if (blank === undefined || blank.pin !== undefined) continue;
    const stocks = stocksFor(blank.stock);
    const key = `${stocks.join()} ${blank.thickness.toFixed(3)}`;
    groups.set(key, { stocks, blanks: [...(groups.get(key)?.blanks ?? []), blank] });
  }
  if (groups.size === 0) return [];
  const together = [...groups.values()].map((group) => boardFor(group, saw));
  const bought = together.map((board, i) => asPlank(board, i));
  const { onProgress: _, ...quiet } = options;
  const wanted = blanks.flatMap(({ pin, ...blank }, index) => {
    if (missing.includes(index) && pin !== undefined) return [{ ...blank, spare: true }];
    return blank.spare ? [] : [{ ...blank, ...(pin && { pin }) }];
  });
  return breakOut([...planks, ...bought], wanted, [], saw, quiet).missing.length === 0
    ? together
    : [...groups.values()].flatMap((group) => oneForEach(group, saw));
};

const asPlank = ({ stocks, length, width, thickness }: BoardToBuy, index: number): Plank => ({
  name: `${index}`,
  copy: 1,
  stocks,
  thickness,
  outline: rectangle({ x0: 0, y0: 0, x1: length, y1: width }),
  defects: [],
  clean: { left: false, right: false },
  keep: true,
});

/** The least board for some blanks in as few rows as make it no longer than boards are. */
const boardFor = ({ stocks, blanks }: Missing, saw: Sawing): BoardToBuy => {
  const [first] = blanks;
  const widestFirst = blanks.toSorted((a, b) => b.width - a.width || b.length - a.length);
  const inRows = (count: number) => {
    const per = Math.ceil(blanks.length / count);
    const rows = Array.from({ length: count }, (_, i) => widestFirst.slice(i * per, (i + 1) * per)).filter(
      (row) => row.length > 0,
    );
    const sum = (sizes: readonly number[]) =>
      sizes.reduce((total, size) => total + size, 0) + (sizes.length - 1) * saw.kerf;
    return {
      length: Math.max(...rows.map((row) => sum(row.map(({ length }) => length)))) + 2 * saw.ends,
      width: sum(rows.map((row) => row[0]?.width ?? 0)),
    };
  };
  const counts = Array.from({ length: blanks.length }, (_, i) => i + 1);
  const rows = counts.find((count) => inRows(count).length <= LONG) ?? blanks.length;
  return {
    stocks,
    count: 1,
    ...inRows(rows),
    thickness: first?.thickness ?? 0,
  };
};

/** A board for each blank, equal ones together. */
const oneForEach = ({ stocks, blanks }: Missing, saw: Sawing): BoardToBuy[] => {
  const boards = new Map<string, BoardToBuy>();
  for (const board of blanks.map((blank) => boardFor({ stocks, blanks: [blank] }, saw))) {
    const key = `${board.length.toFixed(3)} ${board.width.toFixed(3)}`;
    boards.set(key, { ...board, count: (boards.get(key)?.count ?? 0) + 1 });
  }
  return [...boards.values()];
};
