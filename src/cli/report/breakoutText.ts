import { blankLetters, blankName, plankName, reasonWords } from '../../drawer/blanks/blankWords.ts';
import {
  boardUse,
  letteredName,
  runSentences,
  unlistedSentences,
  usedSentence,
  woodSentences,
} from '../../drawer/blanks/breakoutWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import type { PlankLayout } from '../../stock/breakout.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { type SawStep, sawSteps } from '../../stock/sawSteps.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
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
  ...runSentences(broken).flatMap(terminalLines),
  ...[usedSentence(broken), ...woodSentences(broken, units), ...unlistedSentences(broken)].flatMap(
    terminalLines,
  ),
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
    placed.map(
      ({ piece, wanted, turned }) =>
        [piece, `${letteredName(blanks, wanted)}${turned ? ' (turned)' : ''}`] as const,
    ),
  );
  const further = new Set(cuts.map(({ piece }) => piece));
  const leaves = (piece: number): string =>
    freed.get(piece) ?? (further.has(piece) ? `no. ${piece}` : 'the rest');
  return [
    ...terminalLines(
      `${plankName(board, planks)}: ${number(x1 - x0)} x ${number(y1 - y0)} x ${number(board.thickness)}, ${boardUse(board)}`,
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
              cells: [
                blankLetters(blank.wanted),
                blankName(part),
                plankName(board, planks),
                reasonWords(blank.why, blanks),
              ],
            },
          ];
    }),
  );
  return fitTable(
    ['letter', 'part', 'board', 'why'],
    rows.toSorted((a, b) => a.order - b.order).map(({ cells }) => cells),
    [false, false, false, false],
    2,
  );
};
