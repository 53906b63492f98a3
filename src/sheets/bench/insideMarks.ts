import type { CornerLetter } from '../../drawer/cornerLetters.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import type { Box, Mark, Path, Point } from '../../drawing/drawing.ts';
import { stroke, textMark } from '../../drawing/shapes.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../../drawing/textWidth.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { letterSize } from './sketchAxes.ts';

/** Gap between a board and a corner's letter, ems of the letter. */
const PAD = 0.3;
/** Gap between a text and a line, mm. */
const AIR = 1;
/** Half the width of a board's name with a gap, ems. */
const NAME = 1.6;
const LEAST_LINE = 5;
const EQUAL = 'A–C = B–D';

/** What is inside the boards of a sketch from above. */
export interface InsideMarks {
  readonly marks: readonly Mark[];
  /** What has no room there and is written elsewhere: the diagonals' length. */
  readonly without: readonly string[];
}

/**
 * The marks inside the boards of a sketch from above: the corners' letters, the names of front and back, and the diagonals
 * with their length. Names are left out where they do not fit.
 */
export const insideMarks = (inside: Box, diagonal: string, type: TypeSizes): InsideMarks => {
  const { x0, y0, x1, y1 } = inside;
  const [width, height] = [x1 - x0, y1 - y0];
  const middle = (x0 + x1) / 2;
  const centre = (y0 + y1) / 2;
  const size = letterSize(type);
  const pad = PAD * size;
  const low = y0 + pad;
  const high = y1 - pad - CAP_HEIGHT * size;
  const letter = (text: CornerLetter, x: number, y: number, anchor: 'start' | 'end') =>
    textMark(text, [x, y], size, { weight: 'bold', anchor });
  // Reach of a letter from its inside corner, mm.
  const taken = {
    x: pad + Math.max(...['A', 'B', 'C', 'D'].map((text) => textWidth(text, size, 'bold'))) + AIR,
    y: pad + Math.max(ASCENT, CAP_HEIGHT + DESCENT) * size + AIR,
  };
  const named = textWidth('front', type.text, 'regular') + 2 * taken.x <= width;
  // Reach of a name from its board.
  const name = named ? pad + Math.max(ASCENT, CAP_HEIGHT + DESCENT) * type.text + AIR : 0;
  const half = {
    x: Math.max(textWidth(EQUAL, type.note, 'regular'), textWidth(diagonal, type.figure, 'bold')) / 2 + AIR,
    y: 1.25 * type.figure + AIR,
  };
  const betweenLetters = 2 * (half.x + taken.x) <= width;
  const measured =
    2 * half.x <= width && 2 * (half.y + (betweenLetters ? name : Math.max(name, taken.y))) <= height;
  // The stretch of a diagonal clear of letters, names and its length, as shares.
  const clearOfLetters = Math.min(taken.x / width, taken.y / height);
  const meetsName = named && (name / height) * width > width / 2 - NAME * type.text;
  const from = meetsName ? Math.max(clearOfLetters, name / height) : clearOfLetters;
  const to = measured ? 0.5 - Math.min(half.x / width, half.y / height) : 0.5;
  const marks = [
    letter('A', x0 + pad, low, 'start'),
    letter('B', x1 - pad, low, 'end'),
    letter('C', x1 - pad, high, 'end'),
    letter('D', x0 + pad, high, 'start'),
    ...(named
      ? [
          textMark('front', [middle, low], type.text, { anchor: 'middle' }),
          textMark('back', [middle, y1 - pad - CAP_HEIGHT * type.text], type.text, { anchor: 'middle' }),
        ]
      : []),
    stroke('label', 'fold', diagonals(inside, [from, to])),
    ...(measured
      ? [
          textMark(EQUAL, [middle, centre + 0.3 * type.note], type.note, { anchor: 'middle' }),
          textMark(diagonal, [middle, centre - type.figure], type.figure, {
            anchor: 'middle',
            weight: 'bold',
          }),
        ]
      : []),
  ];
  return { marks, without: measured ? [] : [`${EQUAL} = ${diagonal}`] };
};

/** A stretch of both diagonals of a box, from each corner; none where it is too short to look like a line. */
const diagonals = ({ x0, y0, x1, y1 }: Box, [from, to]: readonly [number, number]): Path[] => {
  const [width, height] = [x1 - x0, y1 - y0];
  if ((to - from) * Math.hypot(width, height) < LEAST_LINE) return [];
  const at = (share: number, rises: boolean): Point => [
    x0 + share * width,
    rises ? y0 + share * height : y1 - share * height,
  ];
  return [true, false].flatMap((rises) => [
    { points: [at(from, rises), at(to, rises)] },
    { points: [at(1 - to, rises), at(1 - from, rises)] },
  ]);
};

/** Diagonal between opposite inside corners, level, mm; equal diagonals show that a drawer is square. */
export const insideDiagonal = ({ sizes: { inside, width, backWidth } }: Drawer): number =>
  // Of sides that converge, from the wide end to the narrow one.
  Math.hypot(inside.width - (width - backWidth) / 2, inside.depth);
