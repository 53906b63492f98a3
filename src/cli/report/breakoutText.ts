import { blankName, plankName, reasonWords } from '../../drawer/blanks/blankWords.ts';
import type { BoardToBuy, BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import { woodUsed } from '../../drawer/blanks/yieldOf.ts';
import type { PlankLayout } from '../../stock/breakout.ts';
import type { StockName } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { type SawStep, sawSteps } from '../../stock/sawSteps.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import { formatLength, formatNumber, formatVolume, nextMark } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { fitTable } from './fitTable.ts';
import { terminalLines } from './jointText.ts';

/** A layout to saw by: each board with its cuts in order, the board of each part, and what became of the wood. */
export const breakoutText = (broken: BrokenOut, saw: Sawing, units: Notation): string[] => [
  ...terminalLines(
    `Lengths in ${unitWords(units)}; every saw cut is ${formatLength(saw.kerf, units)} wide, and its measure ends at its near side. Boards lie show face up, the left end at the left.`,
  ),
  ...broken.breakout.boards.flatMap((layout) => ['', ...boardText(broken, layout, saw, units)]),
  '',
  ...placesText(broken),
  '',
  ...runsText(broken),
  ...totalsText(broken, units),
];

const boardText = (
  { planks, blanks }: BrokenOut,
  { plank, blanks: placed, cuts, offcuts }: PlankLayout,
  saw: Sawing,
  units: Notation,
): string[] => {
  const board = planks[plank];
  if (board === undefined) return [];
  const { x0, y0, x1, y1 } = extentsOf(board.outline);
  const number = (value: number) => formatNumber(value, units);
  const freed = new Map(
    placed.flatMap((blank) => {
      const part = blanks[blank.wanted];
      return part === undefined
        ? []
        : [[blank.piece, `${blankName(part)}${blank.turned ? ' (turned)' : ''}`] as const];
    }),
  );
  const further = new Set(cuts.map(({ piece }) => piece));
  const leaves = (piece: number): string =>
    freed.get(piece) ?? (further.has(piece) ? `no. ${piece}` : 'the rest');
  return [
    ...terminalLines(
      `${plankName(board, planks)}: ${number(x1 - x0)} x ${number(y1 - y0)} x ${number(board.thickness)}, for ${plurals(board.stocks)}`,
    ),
    ...sawSteps(board, cuts, saw.kerf).flatMap((step, i) =>
      terminalLines(`${String(i + 1).padStart(3)}  ${stepText(step, number, leaves)}`),
    ),
    ...(offcuts.length === 0
      ? []
      : terminalLines(
          `     clear offcuts: ${offcuts.map(({ length, width }) => `${number(length)} x ${number(width)}`).join(', ')}`,
        )),
  ];
};

/** `crosscut the board 628 from its left end: left Buttons front 1, right no. 2`. */
const stepText = (
  { kind, piece, from, measure, leaves: [first, second] }: SawStep,
  number: (value: number) => string,
  nameOf: (piece: number) => string,
): string => {
  const [one, other] = kind === 'crosscut' ? ['left', 'right'] : ['below', 'above'];
  const left = [
    ...(first === undefined ? [] : [`${one} ${nameOf(first)}`]),
    ...(second === undefined ? [] : [`${other} ${nameOf(second)}`]),
  ];
  const what = piece === 0 ? 'the board' : `no. ${piece}`;
  return `${kind} ${what} ${number(measure)} from its ${from}: ${left.join('; ')}`;
};

const placesText = (broken: BrokenOut): string[] => {
  const { planks, blanks, breakout } = broken;
  const rows = breakout.boards.flatMap(({ plank, blanks: placed }) =>
    placed.flatMap((blank) => {
      const [part, board] = [blanks[blank.wanted], planks[plank]];
      return part === undefined || board === undefined
        ? []
        : [
            {
              order: blank.wanted,
              cells: [blankName(part), plankName(board, planks), reasonWords(blank.why, blanks)],
            },
          ];
    }),
  );
  return fitTable(
    ['part', 'board', 'why'],
    rows.toSorted((a, b) => a.order - b.order).map(({ cells }) => cells),
    [false, false, false],
    1,
  );
};

const runsText = ({ runs, planks, breakout }: BrokenOut): string[] =>
  runs.flatMap(({ kind, drawers, wish }, i) => {
    const board = planks[breakout.runs[i]?.plank ?? -1];
    const fronts = `${kind === 'row' ? 'Row' : 'Stack'} of ${drawers.join(', ')}`;
    if (board !== undefined)
      return terminalLines(`${fronts}: the figure runs through, from ${plankName(board, planks)}`);
    return terminalLines(
      wish === undefined
        ? `${fronts}: the figure cannot run through, as not all of them are in one width`
        : `${fronts}: no board has room for the figure to run through`,
    );
  });

const totalsText = (broken: BrokenOut, units: Notation): string[] => {
  const { planks, unlisted, breakout } = broken;
  const { used, yield: share, volume, offcuts } = woodUsed(broken);
  const proof =
    breakout.missing.length > 0 || breakout.bound === undefined
      ? ''
      : breakout.bound === used
        ? '; fewer would not do'
        : `; fewer than ${breakout.bound} would not do`;
  return [
    ...terminalLines(
      `${used} of ${planks.length} boards are cut into${proof}. Their parts take ${(100 * share).toFixed(1)} % of their area.`,
    ),
    ...terminalLines(
      `All boards: ${formatVolume(volume.all, units)}; those cut into: ${formatVolume(volume.used, units)}; parts as sawn: ${formatVolume(volume.blanks, units)}.`,
    ),
    ...terminalLines(`${offcuts.count} ${offcuts.count === 1 ? 'offcut is' : 'offcuts are'} worth keeping.`),
    ...(unlisted.length === 0
      ? []
      : terminalLines(`No board is listed for ${plurals(unlisted)}: they are left out.`)),
  ];
};

/** What is missing, and the boards that would do. */
export const missingLines = (
  { blanks, breakout: { missing }, toBuy }: BrokenOut,
  units: Notation,
): string[] => [
  `these parts are missing: ${missing.flatMap((index) => (blanks[index] ? [blankName(blanks[index])] : [])).join('; ')}`,
  ...toBuy.map((board) => buyLine(board, units)),
];

const buyLine = ({ stocks, count, length, width, thickness }: BoardToBuy, units: Notation): string => {
  const least = [length, width, thickness].map((value) =>
    formatNumber(nextMark(value, 'above', units), units),
  );
  const size = `${least.join(' x ')}${units === 'mm' ? ' mm' : '"'}`;
  return count === 1
    ? `one more board for ${plurals(stocks)} of at least ${size} would do`
    : `${count} more boards for ${plurals(stocks)}, each of at least ${size}, would do`;
};

const plurals = (stocks: readonly StockName[]): string => stocks.map((stock) => `${stock}s`).join(' and ');
