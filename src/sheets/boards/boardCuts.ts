import { blankLetters } from '../../drawer/blanks/blankWords.ts';
import { replay } from '../../stock/replay.ts';
import { type SawStep, sawSteps } from '../../stock/sawSteps.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import type { BoardView } from './boardView.ts';

/** A saw cut in words. */
export interface CutWords {
  /** What is measured, without its unit. */
  readonly measure: string;
  /** `Crosscut, from the left end of the board. Left: waste. Right: E, F.` */
  readonly text: string;
}

/** The most letters that stand for what is cut. */
const MOST_LETTERS = 8;

/** The cuts of a board in order; what is left of it is named by the letters of the blanks that it holds. */
export const boardCuts = (view: BoardView, units: Notation): CutWords[] => {
  const { plank, layout, kerf } = view;
  const done = plank.done?.cuts.length ?? 0;
  const holds = contents(view);
  return sawSteps(plank, layout.cuts, kerf).map((step, k) => ({
    measure: formatNumber(step.measure, units).replaceAll(' ', '\u00A0'),
    text: `${k < done ? 'Made already: ' : ''}${cutText(step, holds)}`,
  }));
};

const cutText = (
  { kind, piece, from, leaves: [first, second] }: SawStep,
  holds: (piece: number) => string,
): string => {
  const [one, other] = kind === 'crosscut' ? ['Left', 'Right'] : ['Below', 'Above'];
  const what = piece === 0 ? 'the board' : holds(piece);
  return [
    `${kind}, from the ${from} of ${what}.`,
    ...(first === undefined ? [] : [`${one}: ${holds(first)}.`]),
    ...(second === undefined ? [] : [`${other}: ${holds(second)}.`]),
  ].join(' ');
};

/** What the blanks of any part of a board are, or what it is without any. */
const contents = ({ plank: { outline }, layout, kerf }: BoardView): ((piece: number) => string) => {
  const letters = new Map<number, string[]>();
  for (const { piece, wanted } of layout.blanks.toSorted((a, b) => a.wanted - b.wanted))
    for (const part of withAncestors(piece, layout.cuts))
      letters.set(part, [...(letters.get(part) ?? []), blankLetters(wanted)]);
  const left = replay(outline, layout.cuts, kerf);
  const kept = new Set(
    [...(left.ok ? left.left : [])].flatMap(([piece, { x0, y0, x1, y1 }]) =>
      layout.offcuts.some(
        ({ x, y, length, width }) =>
          x + length / 2 > x0 && x + length / 2 < x1 && y + width / 2 > y0 && y + width / 2 < y1,
      )
        ? withAncestors(piece, layout.cuts)
        : [],
    ),
  );
  return (piece) => {
    const named = letters.get(piece) ?? [];
    if (named.length === 0) return kept.has(piece) ? 'offcut to keep' : 'waste';
    const more = named.length - MOST_LETTERS;
    return more > 1 ? `${named.slice(0, MOST_LETTERS).join(', ')} and ${more} more` : named.join(', ');
  };
};

/** A part of a board, and all that it was cut from. */
const withAncestors = (piece: number, cuts: BoardView['layout']['cuts']): number[] => {
  const found: number[] = [];
  for (let each: number | undefined = piece; each !== undefined; each = parentOf(each, cuts))
    found.push(each);
  return found;
};

const parentOf = (piece: number, cuts: BoardView['layout']['cuts']): number | undefined =>
  piece === 0 ? undefined : cuts[Math.floor((piece - 1) / 2)]?.piece;
