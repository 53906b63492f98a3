import { IDENTITY } from '../drawing/affine.ts';
import type { Mark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import type { Placed } from '../drawing/printPage.ts';
import { textMark } from '../drawing/shapes.ts';
import { ASCENT, textWidth } from '../drawing/textWidth.ts';
import { transformMarks } from '../drawing/transform.ts';
import { copiesNeeded } from '../paper/copiesNeeded.ts';
import { fitText } from '../paper/fitText.ts';
import type { Size } from '../paper/printable.ts';
import type { PageRun, PagesOfPieces } from '../paper/sheets.ts';
import { wrapText } from '../units/wrapText.ts';
import { SMALL } from './template/lettering.ts';
import type { TemplatePiece } from './template/templatePiece.ts';
import { type Block, paragraph, space } from './typeset/block.ts';

/** Width of a column, and height of a row: as high as there is room for, mm. */
const CELL = { width: 62, least: 12, most: 40 };
const TITLE = 6;
const HEAD = 16;
/** Height of a line of text, mm. */
const LINE = 3.9;
/** Gaps between two cells, and between a picture and its words, mm. */
const GAP = { cells: 2, words: 2 };

/** Size of the pictures, mm. */
const pictureIn = (row: number): Size => {
  const height = row - GAP.cells;
  return { width: Math.min(24, Math.max(14, 0.65 * height)), height };
};

/**
 * The contents pages: every piece as a small picture, with its name, quantity and pages, and how often to print each page.
 * Where they need several pages, those are equally full.
 * @param needed how often each page of pieces has to be printed, or that it is there as often as its pieces are made
 */
export const contents = (
  title: string,
  pieces: readonly TemplatePiece[],
  area: Size,
  needed: readonly number[] | 'made' = [],
): PageRun[] => {
  const { width, height } = area;
  const columns = Math.max(1, Math.floor(width / CELL.width));
  const roomBelow = (note: Block): number => height - HEAD - note.height;
  const mostBelow = (note: Block): number => columns * Math.max(1, Math.floor(roomBelow(note) / CELL.least));
  // The numbers in the note depend on how many pages there are before the pieces.
  let count = Math.ceil(pieces.length / mostBelow(copiesNote(needed, 1, width)));
  while (mostBelow(copiesNote(needed, count, width)) * count < pieces.length) count += 1;
  const note = copiesNote(needed, count, width);
  const held = Math.ceil(pieces.length / count);
  const row = Math.min(CELL.most, roomBelow(note) / Math.ceil(held / columns));
  const room = pictureIn(row);
  const scale = scaleOf(pieces, room);
  // Pieces may be split where they are folded.
  const how = pieces.some(({ splittable }) => splittable.x.length > 0) ? FOLDED : ['Cut out on the outline.'];
  const page = (sheet: number, pagesOf: PagesOfPieces): Placed[] => {
    const cells = pieces
      .slice(sheet * held, (sheet + 1) * held)
      .map((piece, i): readonly [TemplatePiece, Cell] => [
        piece,
        {
          scale: scale(piece),
          picture: room,
          left: ((i % columns) * width) / columns,
          top: roomBelow(note) - Math.floor(i / columns) * row,
          width: width / columns,
          height: row,
        },
      ]);
    const marks = [
      textMark(fitText([title], width, TITLE, 'bold'), [0, height - TITLE], TITLE, { weight: 'bold' }),
      textMark(fitText(how, width, SMALL, 'regular'), [0, height - 11.5], SMALL),
      ...note.marks(0, height - 12.4),
      ...cells.flatMap(([piece, cell]) => about(piece, pagesOf.get(piece.name) ?? [], cell)),
    ];
    return [
      { drawing: { box: { x0: 0, y0: 0, x1: width, y1: height }, marks }, at: IDENTITY },
      ...cells.map(([piece, cell]) => picture(piece, cell)),
    ];
  };
  // One run a page, so that only one page is in memory at once.
  return Array.from({ length: count }, (_, sheet) => ({
    count: 1,
    draw: (pagesOf) => [page(sheet, pagesOf)],
  }));
};

const FOLDED = [
  'Cut out on the outline, fold on the long-dash-dot lines.',
  'Cut out. Fold on the long-dash-dot lines.',
  'Cut out, then fold.',
];

/** Most lines of text on how often to print the pages. */
const MOST_LINES = 3;

/** How often to print the pages; empty where each is needed once. */
const copiesNote = (needed: readonly number[] | 'made', before: number, width: number): Block => {
  const note = (text: string): Block => paragraph([{ text, size: SMALL, weight: 'regular' }], width);
  if (needed === 'made') return note('Every template is here as often as it is needed.');
  const pages = copiesNeeded([...new Array<number>(before).fill(1), ...needed]);
  if (pages === '') return space(0);
  const full = note(`For a template of every part, print ${pages}.`);
  return full.height <= MOST_LINES * note('1').height
    ? full
    : note('Print each page as often as the largest quantity on it.');
};

/** Least size of the larger side of a picture, mm. All pictures share one scale; where that makes one smaller, only pieces of equal height share one. */
const LEAST_PICTURE = 8;

const scaleOf = (pieces: readonly TemplatePiece[], room: Size): ((piece: TemplatePiece) => number) => {
  const widest = new Map<number, number>();
  for (const { width, height } of pieces) widest.set(height, Math.max(width, widest.get(height) ?? 0));
  const fitting = ({ width, height }: Size) => Math.min(room.width / width, room.height / height);
  const byHeight = ({ width, height }: Size) => fitting({ width: widest.get(height) ?? width, height });
  const every = Math.min(...pieces.map(fitting));
  const least = Math.min(...pieces.map(({ width, height }) => Math.max(width, height)));
  return every * least < LEAST_PICTURE ? byHeight : () => every;
};

interface Cell extends Size {
  readonly scale: number;
  /** Room for its picture. */
  readonly picture: Size;
  readonly left: number;
  readonly top: number;
}

/** A piece as a small picture, in the upper left of its cell. */
const picture = (piece: TemplatePiece, { scale, picture: room, left, top, height }: Cell): Placed => ({
  get drawing() {
    const corner = left + PENS.thin.width / 2;
    return {
      box: { x0: left, y0: top - height, x1: left + room.width + PENS.thin.width, y1: top },
      marks: transformMarks(
        piece.lines(),
        [scale, 0, 0, scale, corner, top - GAP.cells / 2 - scale * piece.height],
        'thin',
      ),
    };
  },
  at: IDENTITY,
});

/** A piece's name, whole where its cell is high enough, and its facts: one a line, or where that is too high on two. */
const about = (piece: TemplatePiece, pages: readonly number[], cell: Cell): Mark[] => {
  const { picture: room, left, top, width, height } = cell;
  const start = left + room.width + GAP.words;
  const wide = left + width - GAP.words - start;
  const [item, ...rest] = piece.caption;
  const quantity = `quantity ${piece.count}`;
  const where = pageWords(pages);
  const [part = '', ...more] = rest;
  const listed = [...rest.map((text) => [text]), [quantity], where];
  const joined = [
    [rest.join(', '), [part, ...more.slice(1)].join(', ')],
    where.map((text) => `${quantity}, ${text}`),
  ];
  const held = Math.floor(height / LINE);
  const whole = wrapText(item, (line) => textWidth(line, SMALL, 'bold') <= wide);
  const facts =
    [listed, joined].find((each) => whole.length + each.length <= held) ??
    (listed.length < held ? listed : joined);
  const name =
    whole.length + facts.length <= held ? whole.map((text) => [text]) : [[item, ...piece.itemName.shorter]];
  const lines = [...name, ...facts];
  const air = Math.min(GAP.cells, height - lines.length * LINE) / 2;
  const highest = top - air - ASCENT * SMALL;
  return lines.map((wordings, i) => {
    const weight = i < name.length ? 'bold' : 'regular';
    return textMark(fitText(wordings, wide, SMALL, weight), [start, highest - i * LINE], SMALL, { weight });
  });
};

/** A piece's pages, in wordings from the fullest to the shortest. */
const pageWords = (pages: readonly number[]): string[] =>
  pages.length === 1
    ? [`page ${pages[0]}`]
    : [
        `pages ${pages.join(', ')}`,
        `pages ${pages[0]} to ${pages.at(-1)}`,
        `pages ${pages[0]}–${pages.at(-1)}`,
      ];
