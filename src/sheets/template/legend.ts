import { compose, translation } from '../../drawing/affine.ts';
import type { Drawing, Mark, StrokeMark } from '../../drawing/drawing.ts';
import { hatch } from '../../drawing/hatch.ts';
import { line, polygon, stroke, textMark } from '../../drawing/shapes.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../../drawing/textWidth.ts';
import { transformMarks } from '../../drawing/transform.ts';
import { edgeMark } from './edgeMark.ts';
import { SMALL } from './lettering.ts';

/** A sign on templates that the legend explains. */
export type Sign = 'waste' | 'fold' | 'edge' | 'lap' | 'tips' | 'bases';

/** Height of every sign, that of capitals, mm. */
const HEIGHT = CAP_HEIGHT * SMALL;

const ROW = (ASCENT + DESCENT) * SMALL;
/** Gap above the rows, to the page's content, mm. */
const OVER = 1.6;
/** Gaps between a sign and its words, and between two signs, mm. */
const GAP = 1.2;
const APART = 4;
/** Indent of a row, mm: half the width of the boldest line. */
const INDENT = 0.125;

interface Entry {
  readonly width: number;
  /** The sign on the line of its words, from 0, 0. */
  readonly marks: readonly StrokeMark[];
  /** Its meaning, from the fullest wording to the shortest. */
  readonly means: readonly [full: string, short: string, shortest: string];
}

const level = (pen: 'fold' | 'lap', length: number): StrokeMark =>
  stroke('label', pen, [line(0, HEIGHT / 2, length, HEIGHT / 2)]);

const swatch = (width: number): StrokeMark[] => {
  const corners = [
    [0, 0],
    [width, 0],
    [width, HEIGHT],
    [0, HEIGHT],
  ] as const;
  return [stroke('label', 'hatch', hatch(corners)), stroke('label', 'thin', [polygon(corners)])];
};

const ENTRIES: Readonly<Record<Sign, Entry>> = {
  waste: {
    width: 9,
    marks: swatch(9),
    means: ['hatched = waste, cut away', 'waste, cut away', 'waste'],
  },
  fold: {
    width: 15.1,
    marks: [level('fold', 15.1)],
    means: ['fold', 'fold', 'fold'],
  },
  edge: {
    width: 3.2,
    marks: transformMarks(
      [edgeMark(1.6)],
      compose([HEIGHT / 3.2, 0, 0, HEIGHT / 3.2, 0, 0], translation(0.4, 0)),
      'medium',
    ),
    means: [
      'line up here: reference edge = lower edge',
      'reference edge = lower edge',
      'reference = lower edge',
    ],
  },
  lap: {
    width: 11,
    marks: [level('lap', 11)],
    means: ['lap: stop here', 'lap: stop here', 'lap: stop'],
  },
  // Names of a rod's edges.
  tips: {
    width: 0,
    marks: [],
    means: ['TIPS: tails at the end', 'TIPS: at the end', 'TIPS: at the end'],
  },
  bases: {
    width: 0,
    marks: [],
    means: ['BASES: tails at the baseline', 'BASES: at the baseline', 'BASES: at the baseline'],
  },
};

const SIGNS: readonly Sign[] = ['waste', 'fold', 'edge', 'lap', 'tips', 'bases'];

/** A sign with its words, in its place: mm from the left, and the row from the top. */
interface Set {
  readonly entry: Entry;
  readonly text: string;
  readonly x: number;
  readonly row: number;
}

const lengthOf = ({ width }: Entry, text: string): number => width + GAP + textWidth(text, SMALL, 'regular');

/** Signs in rows at most `room` mm wide, in one of the three wordings. */
const setRows = (entries: readonly Entry[], wording: 0 | 1 | 2, room: number): Set[] => {
  let [x, row] = [INDENT, 0];
  return entries.map((entry) => {
    const text = entry.means[wording];
    const length = lengthOf(entry, text);
    if (x > INDENT && x + length > room) [x, row] = [INDENT, row + 1];
    const set = { entry, text, x, row };
    x += length + APART;
    return set;
  });
};

/**
 * The meaning of the signs on some templates, drawn up from 0, 0 and `width` mm wide: on one row in the fullest wording
 * that fits, or in the shortest on several rows.
 * @param signs those on the templates
 */
export const legend = (signs: ReadonlySet<Sign>, width: number): Drawing => {
  const entries = SIGNS.filter((sign) => signs.has(sign)).map((sign) => ENTRIES[sign]);
  const rowsOf = (sets: readonly Set[]): number => (sets.at(-1)?.row ?? 0) + 1;
  const sets =
    ([0, 1, 2] as const)
      .map((wording) => setRows(entries, wording, width))
      .find((each) => rowsOf(each) === 1) ?? setRows(entries, 2, width);
  const rows = rowsOf(sets);
  return {
    box: { x0: 0, y0: 0, x1: width, y1: rows * ROW + OVER },
    marks: sets.flatMap(({ entry, text, x, row }): Mark[] => {
      const y = (rows - 1 - row) * ROW + DESCENT * SMALL;
      return [
        ...entry.marks.flatMap((mark) => transformMarks([mark], translation(x, y), mark.pen)),
        textMark(text, [x + entry.width + GAP, y], SMALL),
      ];
    }),
  };
};
