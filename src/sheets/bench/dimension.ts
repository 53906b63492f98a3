import type { Mark, Path, Point } from '../../drawing/drawing.ts';
import { stroke } from '../../drawing/shapes.ts';
import { ASCENT, DESCENT } from '../../drawing/textWidth.ts';
import { startsOf, type TextRun } from '../typeset/block.ts';

/** A length between two edges, mm: `from` and `to` along its line, `edge` and `line` across it. The line is to the left of an upright dimension's edge, or below a level one's. */
export interface Dimension {
  readonly way: 'level' | 'upright';
  readonly from: number;
  readonly to: number;
  /** The edge of the measured thing, where the extension lines begin. */
  readonly edge: number;
  readonly line: number;
  /** Runs on one line, the largest first. */
  readonly text: readonly TextRun[];
}

const GAP = 1;
/** Reach of extension lines beyond a dimension's line, mm. */
export const OVERSHOOT = 1.5;
/** Gap between a text and its line, mm. */
const AIR = 0.5;
const ARROW = { length: 3, half: 0.45 };

/** Least distance of a dimension's line from its edge, mm, for its text to be clear of the edge. */
export const roomFor = (way: Dimension['way'], size: number): number =>
  way === 'level' ? (ASCENT + DESCENT) * size + 2 * AIR : 5;

/** A dimension line with its extension lines, arrowheads and text, after the practice of ISO 129: thin lines, closed arrowheads, the text over the line. */
export const dimension = ({ way, from, to, edge, line, text }: Dimension): Mark[] => {
  const place = (along: number, across: number): Point =>
    way === 'level' ? [along, across] : [across, along];
  const starts = startsOf(text);
  const length = starts.at(-1) ?? 0;
  const begin = (from + to - length) / 2;
  // Extension lines stop at a text that is longer than the dimension.
  const short = length + 2 * AIR > to - from;
  const top = short && way === 'level' ? line + AIR / 2 : edge - GAP;
  const bottom = short && way === 'upright' ? line : line - OVERSHOOT;
  const extension = (along: number): Path => ({ points: [place(along, top), place(along, bottom)] });
  const arrow = (tip: number, inward: number): Path => ({
    points: [
      place(tip, line),
      place(tip + inward * ARROW.length, line + ARROW.half),
      place(tip + inward * ARROW.length, line - ARROW.half),
    ],
    closed: true,
  });
  const up = DESCENT * (text[0]?.size ?? 0) + AIR;
  return [
    stroke('label', 'thin', [
      extension(from),
      extension(to),
      { points: [place(from, line), place(to, line)] },
    ]),
    { kind: 'fill', role: 'label', tone: 0, paths: [arrow(from, 1), arrow(to, -1)] },
    ...text.map((run, i): Mark => {
      const along = begin + (starts[i] ?? 0);
      return {
        kind: 'text',
        role: 'label',
        ...run,
        // An upright dimension reads from the right, so its text is to the left of its line.
        at: place(along, way === 'level' ? line + up : line - up),
        turn: way === 'level' ? 0 : 90,
        anchor: 'start',
      };
    }),
  ];
};
