import type { Plank, StockName } from '../../stock/plank.ts';
import { formatNumber, formatVolume, nextMark } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { blankLetters, blankName, plankName } from './blankWords.ts';
import type { BoardToBuy, BrokenOut } from './brokenOut.ts';
import type { PartBlank } from './partBlanks.ts';
import { woodUsed } from './yieldOf.ts';

/** `E Buttons front 1`: a blank's letter and name. */
export const letteredName = (blanks: readonly PartBlank[], wanted: number): string => {
  const part = blanks[wanted];
  return part === undefined ? '' : `${blankLetters(wanted)} ${blankName(part)}`;
};

/** What is missing, and the boards that would do; nothing where nothing is missing. */
export const missingSentences = (
  { planks, blanks, breakout: { missing }, toBuy }: BrokenOut,
  units: Notation,
): string[] =>
  missing.length === 0
    ? []
    : [
        `these parts are missing: ${missing.map((wanted) => letteredName(blanks, wanted)).join('; ')}`,
        ...toBuy.map((board) => buySentence(board, units)),
        ...missing.flatMap((wanted) => {
          const board = planks[blanks[wanted]?.pin?.plank ?? -1];
          return board === undefined
            ? []
            : [
                `${letteredName(blanks, wanted)} is pinned to ${plankName(board, planks)}, and beside the rest there is no room for it there; set it free, or pin it to another board`,
              ];
        }),
      ];

/** `one more board for fronts of at least 610 x 118 x 22 mm would do` */
export const buySentence = (
  { stocks, count, length, width, thickness }: BoardToBuy,
  units: Notation,
): string => {
  const least = [length, width, thickness].map((value) =>
    formatNumber(nextMark(value, 'above', units), units),
  );
  const size = `${least.join(' x ')}${units === 'mm' ? ' mm' : '"'}`;
  return count === 1
    ? `one more board for ${plurals(stocks)} of at least ${size} would do`
    : `${count} more boards for ${plurals(stocks)}, each of at least ${size}, would do`;
};

/** For each list that was to run through, the board it lies in, or why it does not. */
export const runSentences = ({ runs, planks, breakout }: BrokenOut): string[] =>
  runs.map(({ kind, drawers, wish }, i) => {
    const board = planks[breakout.runs[i]?.plank ?? -1];
    const fronts = `${kind === 'row' ? 'Row' : 'Stack'} of ${drawers.join(', ')}`;
    if (board !== undefined) return `${fronts}: the figure runs through, from ${plankName(board, planks)}`;
    return wish === undefined
      ? `${fronts}: the figure cannot run through, as not all of them are in one width`
      : `${fronts}: no board has room for the figure to run through`;
  });

/** `6 of 9 boards are cut into; fewer would not do. Their parts take 69.3 % of their area.` */
export const usedSentence = (broken: BrokenOut): string => {
  const { planks, breakout } = broken;
  const { used, yield: share } = woodUsed(broken);
  const proof =
    breakout.missing.length > 0 || breakout.bound === undefined
      ? ''
      : breakout.bound === used
        ? '; fewer would not do'
        : `; fewer than ${breakout.bound} would not do`;
  return `${used} of ${planks.length} boards are cut into${proof}. Their parts take ${(100 * share).toFixed(1)} % of their area.`;
};

/** How much wood there is and what becomes of it. */
export const woodSentences = (broken: BrokenOut, units: Notation): string[] => {
  const { volume, offcuts } = woodUsed(broken);
  return [
    `All boards: ${formatVolume(volume.all, units)}; those cut into: ${formatVolume(volume.used, units)}; parts as sawn: ${formatVolume(volume.blanks, units)}.`,
    `${offcuts.count} ${offcuts.count === 1 ? 'offcut is' : 'offcuts are'} worth keeping.`,
  ];
};

/** Stocks of which no board is listed; nothing where there is one for each. */
export const unlistedSentences = ({ unlisted }: BrokenOut): string[] =>
  unlisted.length === 0 ? [] : [`No board is listed for ${plurals(unlisted)}: they are left out.`];

/** `sides and backs`. */
export const plurals = (stocks: readonly StockName[]): string =>
  stocks.map((stock) => `${stock}s`).join(' and ');

/** `for sides and backs, cupped`, `for fronts (from its left end) and sides`. */
export const boardUse = ({ stocks, bow, figure }: Plank): string => {
  const from = figure === undefined ? '' : ` (from its ${figure} end)`;
  const parts = stocks.map((stock) => `${stock}s${stock === 'front' ? from : ''}`);
  const bend = bow === undefined ? '' : bow === 'long' ? ', bent along its length' : ', cupped';
  return `for ${parts.join(' and ')}${bend}`;
};
