import { IDENTITY } from '../drawing/affine.ts';
import type { Mark, TextMark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import type { Placed } from '../drawing/printPage.ts';
import { textMark } from '../drawing/shapes.ts';
import { transformMarks } from '../drawing/transform.ts';
import { fitText } from '../paper/fitText.ts';
import type { Size } from '../paper/printable.ts';
import type { PageRun, PagesOfPieces } from '../paper/sheets.ts';
import { SMALL } from './template/lettering.ts';
import type { TemplatePiece } from './template/templatePiece.ts';

const CELL = { width: 62, height: 40 };
const PICTURE = { width: 24, height: 34 };
const HEAD = 16;
const TITLE = 6;
const LINE = 4.6;

/** The contents pages: every piece as a small picture, with its name, quantity and pages. */
export const contents = (title: string, pieces: readonly TemplatePiece[], area: Size): PageRun[] => {
  const { width, height } = area;
  const columns = Math.max(1, Math.floor(width / CELL.width));
  const held = columns * Math.max(1, Math.floor((height - HEAD) / CELL.height));
  const scale = scaleOf(pieces);
  // Pieces may be split where they are folded.
  const how = pieces.some(({ splittable }) => splittable.x.length > 0) ? FOLDED : ['Cut out on the outline.'];
  const count = Math.ceil(pieces.length / held);
  const page = (sheet: number, pagesOf: PagesOfPieces): Placed[] => {
    const cells = pieces
      .slice(sheet * held, (sheet + 1) * held)
      .map((piece, i): readonly [TemplatePiece, Cell] => [
        piece,
        {
          scale: scale(piece),
          left: ((i % columns) * width) / columns,
          top: height - HEAD - Math.floor(i / columns) * CELL.height,
          width: width / columns,
        },
      ]);
    const marks = [
      textMark(fitText([title], width, TITLE, 'bold'), [0, height - TITLE], TITLE, { weight: 'bold' }),
      textMark(fitText(how, width, SMALL, 'regular'), [0, height - 11.5], SMALL),
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
  'Cut on the outline, fold on the dashes.',
  'Cut out, then fold.',
];

/** Least size of the larger side of a picture, mm. All pictures share one scale; where that makes one smaller, only pieces of equal height share one. */
const LEAST_PICTURE = 8;

const scaleOf = (pieces: readonly TemplatePiece[]): ((piece: TemplatePiece) => number) => {
  const widest = new Map<number, number>();
  for (const { width, height } of pieces) widest.set(height, Math.max(width, widest.get(height) ?? 0));
  const fitting = ({ width, height }: Size) => Math.min(PICTURE.width / width, PICTURE.height / height);
  const byHeight = ({ width, height }: Size) => fitting({ width: widest.get(height) ?? width, height });
  const every = Math.min(...pieces.map(fitting));
  const least = Math.min(...pieces.map(({ width, height }) => Math.max(width, height)));
  return every * least < LEAST_PICTURE ? byHeight : () => every;
};

interface Cell {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

/** A piece as a small picture. */
const picture = (piece: TemplatePiece, { scale, left, top }: Cell): Placed => ({
  get drawing() {
    const corner = left + PENS.thin.width / 2;
    return {
      box: { x0: left, y0: top - CELL.height, x1: left + PICTURE.width + PENS.thin.width, y1: top },
      marks: transformMarks(
        piece.lines(),
        [scale, 0, 0, scale, corner, top - 2 - scale * piece.height],
        'thin',
      ),
    };
  },
  at: IDENTITY,
});

/** A piece's name, quantity and pages. */
const about = (piece: TemplatePiece, pages: readonly number[], { left, top, width }: Cell): Mark[] => {
  const room = width - PICTURE.width - 5;
  const line = (i: number, wordings: readonly string[], weight: TextMark['weight'] = 'regular'): Mark =>
    textMark(fitText(wordings, room, SMALL, weight), [left + PICTURE.width + 2, top - 5 - i * LINE], SMALL, {
      weight,
    });
  const [item, ...rest] = piece.caption;
  const lines = [...rest, `make ${piece.count}`].map((text) => [text]);
  return [
    line(0, [item, ...piece.itemName.shorter], 'bold'),
    ...[...lines, pageWords(pages)].map((wordings, i) => line(i + 1, wordings)),
  ];
};

/** A piece's pages, in wordings from the fullest to the shortest. */
const pageWords = (pages: readonly number[]): string[] =>
  pages.length === 1
    ? [`page ${pages[0]}`]
    : [`pages ${pages.join(', ')}`, `pages ${pages[0]} to ${pages.at(-1)}`, `p. ${pages[0]}–${pages.at(-1)}`];
