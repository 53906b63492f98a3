import { type Affine, compose, translation } from '../drawing/affine.ts';
import type { Box, Drawing } from '../drawing/drawing.ts';
import { movePlaced, type Placed, type PrintPage } from '../drawing/printPage.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';
import { atLeast, mm, say } from '../units/phrase.ts';
import { drawFrame, printableHeightFor, usableBox } from './frame.ts';
import { type PackedPlace, pack } from './pack.ts';
import { ANSI_PAPERS, ISO_PAPERS, type Paper } from './paperSizes.ts';
import type { Piece } from './piece.ts';
import { checkMargin, pageHeightFor, printableBox, type Size } from './printable.ts';
import { type Correction, correctPage } from './printerCorrection.ts';
import { splitToFit } from './split.ts';
import { drawPart, joinCount, partsOf, type Tile } from './tile.ts';

/** Page numbers of each piece, by its name; the first page is 1. */
export type PagesOfPieces = ReadonlyMap<string, readonly number[]>;

/** Pages that belong together, the content of each placed from 0, 0 within the area it was typeset for. */
export interface PageRun {
  readonly count: number;
  /** Draws the pages on each call, so that only one run is in memory at once. */
  draw(pagesOf: PagesOfPieces): readonly (readonly Placed[])[];
}

/** Pages before the pieces, drawn when the pieces' pages are known. */
export type LeadingPages = (area: Size) => readonly PageRun[];

/** The content of the pages, and their paper. */
export interface Layout {
  readonly planName: string;
  /** The maker's unit. */
  readonly unit: Notation;
  readonly paper: Paper;
  readonly margin: number;
  readonly leading: LeadingPages;
  /** Each with a name of its own. */
  readonly pieces: readonly Piece[];
  /** The drawing at the foot of every page, up from 0, 0 and `width` mm wide. */
  readonly legend?: (width: number) => Drawing;
  readonly correction?: Correction;
}

/** Sheets to draw page by page. */
export interface Sheets {
  readonly count: number;
  readonly pagesOf: PagesOfPieces;
  /** Draws one page after the other, so that a set of any size needs the memory of one page. */
  pages(): Generator<PrintPage, void>;
}

/** Least gap between two outlines, for scissors, mm. */
const CUT_MARGIN = 4;

/** Least gap between marks beyond two outlines, mm. */
const LEAST_GAP = 1;

/** The area of a paper for drawings, and the legend below it. */
const roomOf = ({
  paper,
  margin,
  correction,
  legend,
}: Pick<Layout, 'paper' | 'margin' | 'correction' | 'legend'>): {
  readonly area: Size;
  readonly foot: Drawing | undefined;
} => {
  const { width, height } = sizeOf(usableBox(printableBox(paper, margin, correction?.error)));
  const foot = legend?.(width);
  return { area: { width, height: height - heightOf(foot) }, foot };
};

const heightOf = (drawing: Drawing | undefined): number => drawing?.box.y1 ?? 0;

const sizeOf = ({ x0, y0, x1, y1 }: Box): Size => ({ width: x1 - x0, height: y1 - y0 });

/** Least height of a roll's sheet, for the upright check bar, mm. */
const ROLL_LEAST = 130;

/** Area of full-page drawings; on a roll, as high as its width over √2, but at least `ROLL_LEAST`. */
const leadingArea = (paper: Paper, { width, height }: Size): Size => ({
  width,
  height: paper.roll ? Math.min(height, Math.max(ROLL_LEAST, width / Math.SQRT2)) : height,
});

/** Every part of every piece, or a complaint for each piece that does not fit the paper in any way. */
const cutApart = (layout: Layout, area: Size): Result<Tile[]> => {
  const parts: Tile[] = [];
  const complaints: Complaint[] = [];
  let letters = 0;
  for (const piece of layout.pieces) {
    const splits = splitToFit(piece, area);
    if (splits === undefined) {
      complaints.push(tooLarge(piece, layout));
      continue;
    }
    parts.push(...partsOf(piece, splits, letters));
    letters += joinCount(splits);
  }
  return complaints.length > 0 ? refuse(...complaints) : accept(parts);
};

/** Least usable width, mm: below that of the least paper with the widest margins. On a long narrow roll, a printer's skew can leave less. */
const LEAST_WIDTH = 40;

const tooNarrow = ({ name }: Paper, { width }: Size): Complaint => ({
  at: ['paper'],
  says: say`${name} leaves ${mm(Math.max(0, width))} across to draw on, once the printer's lean is put right over its whole length; it must be ${atLeast(LEAST_WIDTH)} or more`,
  hint: say`sheets instead of a roll, or a wider roll`,
});

const tooLarge = (piece: Piece, layout: Layout): Complaint => {
  const known = ANSI_PAPERS.includes(layout.paper) ? [...ANSI_PAPERS, ...ISO_PAPERS] : ISO_PAPERS;
  const larger = known.find((paper) => splitToFit(piece, roomOf({ ...layout, paper }).area) !== undefined);
  const complaint: Complaint = {
    at: ['paper'],
    says: say`${piece.title} does not fit ${layout.paper.name}, not even in parts: it may not be split anywhere that would make them small enough`,
  };
  return larger === undefined ? complaint : { ...complaint, hint: say`${larger.name}` };
};

/** A quarter turn clockwise, so that words along a board's end are upright on a turned piece. */
const TURN: Affine = [0, -1, 1, 0, 0, 0];

/** The map of a part's drawing to its place on a page. */
const placing = ({ room: { x0, y0, x1 } }: Tile, { x, y, turned }: PackedPlace): Affine => {
  const toOrigin = translation(-x0, -y0);
  const lying = turned ? compose(compose(toOrigin, TURN), translation(0, x1 - x0)) : toOrigin;
  return compose(lying, translation(x, y));
};

/**
 * Places pieces on pages, always at full size: packed, turned where that saves paper, and divided where they are larger
 * than a page. Every page has its frame.
 * @returns complaints about the margin, one at `paper` where it is too narrow, or one for each piece that does not fit
 * even in parts
 */
export const layPages = (layout: Layout): Result<Sheets> => {
  const { planName, unit, paper, margin, leading, pieces, correction } = layout;
  const wrong = checkMargin(margin);
  if (wrong.length > 0) return refuse(...wrong);
  const { area, foot } = roomOf(layout);
  if (area.width < LEAST_WIDTH) return refuse(tooNarrow(paper, area));
  const cut = cutApart(layout, area);
  if (!cut.ok) return cut;
  const parts = cut.value;

  const front = leadingArea(paper, area);
  const leaders = leading(front);
  const leadingCount = leaders.reduce((sum, { count }) => sum + count, 0);
  const leastOverhang = Math.min(...pieces.map(({ overhang }) => overhang));
  const gap = Math.max(LEAST_GAP, CUT_MARGIN - 2 * leastOverhang);
  const places = pack(
    parts.map(({ room }) => sizeOf(room)),
    area,
    gap,
    paper.roll,
  );

  const byPage: { part: Tile; place: PackedPlace }[][] = [];
  const pagesOf = new Map<string, number[]>();
  parts.forEach((part, i) => {
    const place = places[i];
    if (place === undefined) return;
    const { page } = place;
    byPage[page] = [...(byPage[page] ?? []), { part, place }];
    const number = leadingCount + page + 1;
    const numbers = pagesOf.get(part.piece.name) ?? [];
    if (!numbers.includes(number))
      pagesOf.set(
        part.piece.name,
        [...numbers, number].sort((a, b) => a - b),
      );
  });
  const count = leadingCount + byPage.length;

  const framed = (number: number, height: number, content: readonly Placed[]): PrintPage => {
    const size = {
      width: paper.width,
      height: paper.roll
        ? pageHeightFor(printableHeightFor(height + heightOf(foot)), margin, correction?.error)
        : paper.height,
    };
    const printable = printableBox(size, margin, correction?.error);
    const usable = usableBox(printable);
    const frame = drawFrame(printable, {
      planName,
      number,
      count,
      paper: paper.name,
      unit,
      ...(correction === undefined ? {} : { correction }),
    });
    const toArea = translation(usable.x0, usable.y0 + heightOf(foot));
    const page: PrintPage = {
      ...size,
      placed: [
        ...content.map((each) => movePlaced(each, toArea)),
        ...(foot === undefined ? [] : [{ drawing: foot, at: translation(usable.x0, usable.y0) }]),
        { drawing: frame, at: translation(0, 0) },
      ],
    };
    return correction === undefined ? page : correctPage(page, correction.error);
  };

  return accept({
    count,
    pagesOf,
    *pages() {
      let number = 0;
      // Parts of a piece follow each other, so one drawing serves them all.
      let last: { readonly piece: Piece; readonly whole: Drawing } | undefined;
      const wholeOf = ({ piece, splits }: Tile): Drawing => {
        if (last?.piece !== piece) last = { piece, whole: piece.draw(splits) };
        return last.whole;
      };
      for (const run of leaders)
        for (const placed of run.draw(pagesOf)) {
          number += 1;
          yield framed(number, front.height, placed);
        }
      for (const content of byPage) {
        number += 1;
        const bottom = paper.roll
          ? Math.min(...content.map(({ place }) => place.y), area.height - ROLL_LEAST)
          : 0;
        yield framed(
          number,
          area.height - bottom,
          content.map(({ part, place }) => ({
            get drawing() {
              return drawPart(part, wholeOf(part), unit);
            },
            at: placing(part, { ...place, y: place.y - bottom }),
          })),
        );
      }
    },
  });
};
