import { clipMarks } from '../drawing/clip.ts';
import type { Box, Drawing, Mark, Path } from '../drawing/drawing.ts';
import { line, stroke } from '../drawing/shapes.ts';
import { textBox } from '../drawing/textBox.ts';
import type { Notation } from '../units/notation.ts';
import { checkMarks, type Join, joinMarks } from './join.ts';
import { CLEAR_OF_SPLITS, type Piece, type Splits } from './piece.ts';
import { CROSS, LINE_ROOM, TAB } from './split.ts';

/** A part of a piece in one place on one page; a piece that fits whole is a single part. */
export interface Tile {
  readonly piece: Piece;
  readonly splits: Splits;
  /** Its box of the piece, up to its joining lines; at the piece's edges, with the marks beyond the outline. */
  readonly cell: Box;
  /** The same box with the tabs under its neighbours. */
  readonly window: Box;
  /** The box that it needs on a page. */
  readonly room: Box;
  /** The joins with its own tab, at its upper and right side, and those where it covers a tab, below and on the left. */
  readonly tabbed: readonly Join[];
  readonly covering: readonly Join[];
}

/** Number of letters that no join has: A to D are corners. */
const CORNERS = 4;

/** Those of a piece in one part; a large set holds thousands of such pieces. */
const NO_JOINS: readonly Join[] = [];

/** A to Z, then AA. */
const letterOf = (index: number): string =>
  (index < 26 ? '' : letterOf(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));

/**
 * The parts of a piece divided at its splits, row by row from the lowest, each row from the left.
 * @param firstLetter number of joins before these in the set
 */
export const partsOf = (piece: Piece, splits: Splits, firstLetter: number): Tile[] => {
  const { width, height, overhang, splittable } = piece;
  if (joinCount(splits) === 0) {
    const whole = { x0: -overhang, y0: -overhang, x1: width + overhang, y1: height + overhang };
    return [{ piece, splits, cell: whole, window: whole, room: whole, tabbed: NO_JOINS, covering: NO_JOINS }];
  }
  const columns = [0, ...splits.x, width];
  const rows = [0, ...splits.y, height];
  const [across, up] = [columns.length - 1, rows.length - 1];

  const upperJoin = (column: number, row: number): Join | undefined => {
    const at = splits.y[row];
    if (at === undefined || row < 0) return undefined;
    const [, top = at] = splittable.y.find(([lo, hi]) => lo <= at && at <= hi) ?? [];
    return {
      axis: 'y',
      at,
      from: columns[column] ?? 0,
      to: columns[column + 1] ?? width,
      tab: Math.min(Math.max(top - at, TAB.least), TAB.most, (rows[row + 2] ?? height) - at),
      taped: piece.taped.y,
      letter: letterOf(CORNERS + firstLetter + row * across + column),
    };
  };
  const rightJoin = (column: number, row: number): Join | undefined => {
    const at = splits.x[column];
    if (at === undefined || column < 0) return undefined;
    return {
      axis: 'x',
      at,
      from: rows[row] ?? 0,
      to: rows[row + 1] ?? height,
      tab: Math.min(TAB.most, (columns[column + 2] ?? width) - at),
      ...(piece.taped.x && { taped: piece.taped.x }),
      letter: letterOf(CORNERS + firstLetter + (up - 1) * across + row * (across - 1) + column),
    };
  };
  const present = (...joins: readonly (Join | undefined)[]): Join[] =>
    joins.filter((join) => join !== undefined);

  return rows.slice(1).flatMap((y1, row) =>
    columns.slice(1).map((x1, column): Tile => {
      const [right, upper] = [rightJoin(column, row), upperJoin(column, row)];
      const [left, lower] = [rightJoin(column - 1, row), upperJoin(column, row - 1)];
      const cell = {
        x0: left?.at ?? -overhang,
        y0: lower?.at ?? -overhang,
        x1: right === undefined ? x1 + overhang : x1,
        y1: upper === undefined ? y1 + overhang : y1,
      };
      const window = { ...cell, x1: cell.x1 + (right?.tab ?? 0), y1: cell.y1 + (upper?.tab ?? 0) };
      const room = {
        x0: cell.x0 - (left === undefined ? 0 : CROSS + LINE_ROOM),
        y0: cell.y0 - (lower === undefined ? 0 : CROSS + LINE_ROOM),
        x1: window.x1 + (right === undefined ? 0 : LINE_ROOM),
        y1: window.y1 + (upper === undefined ? 0 : LINE_ROOM),
      };
      return {
        piece,
        splits,
        cell,
        window,
        room,
        tabbed: present(right, upper),
        covering: present(left, lower),
      };
    }),
  );
};

/** Number of joins, and so of letters, that the splits make. */
export const joinCount = ({ x, y }: Splits): number => y.length * (x.length + 1) + x.length * (y.length + 1);

/**
 * A part's drawing, mm on the piece: every line exactly where the whole piece has it, the joining lines, register crosses
 * and letters, and the lengths to measure when the parts are taped.
 * @param whole the piece's drawing for its splits
 */
export const drawPart = (part: Tile, whole: Drawing, unit: Notation): Drawing => {
  const { cell, window, room } = part;
  if (part.tabbed.length + part.covering.length === 0) return whole;
  const { marks } = whole;
  const texts = marks.filter((mark) => {
    if (mark.kind !== 'text') return false;
    // Texts are clear of the splits, so the part with a text's middle holds the whole text.
    const { x0, y0, x1, y1 } = textBox(mark);
    const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
    return x >= cell.x0 && x < cell.x1 && y >= cell.y0 && y < cell.y1;
  });
  const joins = [
    ...part.tabbed.flatMap((join) => joinMarks(join, 'tabbed', marks)),
    ...part.covering.flatMap((join) => joinMarks(join, 'covering', marks)),
  ];
  const checks: Mark[] = [];
  for (const join of part.tabbed)
    checks.push(...checkMarks(join, freeAreaOf(part), [...marks, ...joins, ...checks], unit));
  return {
    box: room,
    marks: [...clipMarks(window, marks), ...texts, ...edgesOf(part), ...joins, ...checks],
  };
};

/** The inside of a part, clear of its joins' letters and crosses. */
const freeAreaOf = ({ piece, cell: { x0, y0, x1, y1 } }: Tile): Box => ({
  x0: x0 < 0 ? 0 : x0 + CLEAR_OF_SPLITS,
  y0: y0 < 0 ? 0 : y0 + CLEAR_OF_SPLITS,
  x1: x1 > piece.width ? piece.width : x1 - CLEAR_OF_SPLITS,
  y1: y1 > piece.height ? piece.height : y1 - CLEAR_OF_SPLITS,
});

/** The lines to cut along at its joins, and the lines on its tabs that align its neighbours. */
const edgesOf = ({ piece, window, tabbed, covering }: Tile): Mark[] => {
  const outline = {
    x0: Math.max(window.x0, 0),
    y0: Math.max(window.y0, 0),
    x1: Math.min(window.x1, piece.width),
    y1: Math.min(window.y1, piece.height),
  };
  const across = (axis: Join['axis'], at: number): Path =>
    axis === 'y' ? line(outline.x0, at, outline.x1, at) : line(at, outline.y0, at, outline.y1);
  const cuts = [
    ...covering.map(({ axis, at }) => across(axis, at)),
    ...tabbed.map(({ axis, at, tab }) => across(axis, at + tab)),
  ];
  const tabLines = tabbed.map(({ axis, at }) => across(axis, at));
  return [stroke('outline', 'cut', cuts), stroke('outline', 'thin', tabLines)];
};
