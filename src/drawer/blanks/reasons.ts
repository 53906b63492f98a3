import type { Blank } from '../../stock/breakout.ts';
import { widestOf } from '../../stock/polygon.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { listNames } from '../../units/listNames.ts';
import type { BrokenOut } from './brokenOut.ts';
import type { PartBlank } from './partBlanks.ts';

/**
 * Why a blank lies where it does, so that who moves it knows what that breaks: the strongest reason, in a few words.
 * @param plank the board's place among those of the plan
 */
export const reasonFor = (broken: BrokenOut, plank: number, { wanted: index }: Blank): string => {
  const { planks, blanks, breakout } = broken;
  const blank = blanks[index];
  const board = planks[plank];
  if (blank === undefined || board === undefined) return '';
  if (board.done?.blanks.some(({ wanted }) => wanted === index)) return 'cut already';
  const others = runningOn(broken, index);
  if (others.length > 0) return `runs through with ${listNames(others)}`;
  if (blank.spare) return 'a second try, as there was room';
  const serving = planks.filter(
    ({ stocks, thickness }) => stocks.includes(blank.stock) && thickness >= blank.thickness - EPSILON,
  );
  if (serving.length === 1) return `the only board for its ${blank.part}s`;
  const holding = serving.filter(({ outline }) => widestOf(outline, blank.length) >= blank.width - EPSILON);
  if (holding.length === 1) return 'the only board wide enough';
  const own = breakout.boards.find((layout) => layout.plank === plank)?.blanks ?? [];
  const beside = own.some(({ wanted }) => wanted !== index && isPair(blank, blanks[wanted]));
  if (beside) return 'beside its other side';
  return breakout.bound === breakout.boards.length
    ? 'no fewer boards would do'
    : 'the fewest boards that were found';
};

/** The other fronts of a run that is met, by their drawers. */
const runningOn = ({ runs, blanks, breakout }: BrokenOut, index: number): string[] =>
  runs.flatMap(({ wish }, i) =>
    wish?.pieces.includes(index) && breakout.runs[i]?.plank !== undefined
      ? [...new Set(wish.pieces.flatMap((other) => (other === index ? [] : (blanks[other]?.drawer ?? []))))]
      : [],
  );

const isPair = (one: PartBlank, other: PartBlank | undefined): boolean =>
  one.beside !== undefined && one.beside === other?.beside;
