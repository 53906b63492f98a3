import { table } from '../../render/table.ts';
import { CAUTIONS } from '../../router/limits/cautions.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import type { RoundSocket } from '../../router/passes/roundSocket.ts';
import { type PinCut, type RouterCut, tailsByHand } from '../../router/passes/routerCut.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf, unitWords } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { terminalLines } from './jointText.ts';

/**
 * How to cut a corner with a router: where the cutter's centre goes, how deep, and what to ease.
 * @param pinBoardFrom what a lapped socket's stop is measured from, where that is not the pin board's end
 */
export const cutText = (
  cut: RouterCut,
  { cutter }: Cutting,
  unit: Notation,
  pinBoardFrom = "the pin board's end",
): string[] => {
  const { passes, depth, leastPin, pinCut } = cut;
  const length = (value: number): string => formatLength(value, unit);
  const tool = `Cut with the dovetail cutter of ${length(cutter.diameter)} at ${cutter.angle}°, its depth ${length(depth)}`;
  return [
    ...(tailsByHand(cut) && pinCut.kind === 'round'
      ? terminalLines(
          `${tool}: the sockets only, and while the pin board's end is whole. Saw and chop the tails: a cutter that runs from face to face would cut what stays beside them.`,
        )
      : [
          ...terminalLines(`${tool}; the least pin at this depth is ${length(leastPin)}.`),
          `The cutter's centres on the tail board, from the reference edge, ${unitWords(unit)}:`,
          ...passTable(
            passes.map((centres, i) => [spaceName(i, passes.length), centres]),
            unit,
          ),
        ]),
    '',
    ...pinText(pinCut, pinBoardFrom, length, unit),
  ];
};

/** How far the cutter comes into the pin board, and the round that it leaves there. */
const pinText = (cut: PinCut, from: string, length: (value: number) => string, unit: Notation): string[] =>
  cut.kind === 'round'
    ? [
        `Its centres on the pin board, from the reference edge, ${unitWords(unit)}:`,
        ...passTable(
          cut.passes.map((centres, i) => [`socket ${i + 1}`, centres]),
          unit,
        ),
        ...roundText(cut.socket, from, length),
      ]
    : [
        ...terminalLines(
          `Pins with a straight cutter of ${length(cut.diameter)}, its depth ${length(cut.depth)} from the pin board's end; its centres, from the reference edge, ${unitWords(unit)}:`,
        ),
        ...table(
          ['', 'pass', 'at the inside face', 'at the outside face'],
          cut.passes.flatMap((passes, i) =>
            passes.map(({ inside, outside }, j) => [
              j === 0 ? `socket ${i + 1}` : '',
              String(j + 1),
              formatNumber(inside, unit),
              formatNumber(outside, unit),
            ]),
          ),
          [false, true, true, true],
        ),
      ];

const roundText = (
  { length, stop, ease }: RoundSocket,
  from: string,
  shown: (value: number) => string,
): string[] => [
  ...terminalLines(
    `A socket is ${shown(length)} long: stop the cutter's centre ${shown(stop)} from ${from}. There run it across from the first pass to the last, so that no ridge is left.`,
  ),
  ...terminalLines(
    `Round both inside arrises of every tail. Start ${shown(ease.fromFace)} from the inside face; end ${shown(ease.atBase)} in at the base, ${shown(ease.atTip)} at the tip.`,
  ),
];

/** What a space between tails is called: those at both edges are half. */
const spaceName = (i: number, count: number): string =>
  i === 0 ? 'lower half space' : i === count - 1 ? 'upper half space' : `space ${i}`;

/** No row holds more centres, so that none is wider than a terminal. */
const A_ROW = { mm: 8, in: 4 } as const;

const passTable = (
  rows: readonly (readonly [name: string, centres: readonly number[]])[],
  unit: Notation,
): string[] => {
  const most = A_ROW[unitOf(unit)];
  const columns = Math.min(most, Math.max(1, ...rows.map(([, centres]) => centres.length)));
  const split = rows.flatMap(([name, centres]) => {
    const cells = centres.length === 0 ? ['by hand'] : centres.map((centre) => formatNumber(centre, unit));
    return Array.from({ length: Math.ceil(cells.length / most) }, (_, row) => {
      const shown = cells.slice(row * most, (row + 1) * most);
      return [row === 0 ? name : '', ...shown, ...new Array<string>(columns - shown.length).fill('')];
    });
  });
  const heading = ['', ...Array.from({ length: columns }, (_, i) => `pass ${i + 1}`)];
  return table(
    heading,
    split,
    heading.map((_, i) => i > 0),
  );
};

/** The cautions for work with any router. */
export const cautionText = (unit: Notation): string[] => [
  'At the router:',
  ...CAUTIONS.flatMap((caution) => terminalLines(`- ${speak(caution, unit)}`)),
];
