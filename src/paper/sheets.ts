import { type Affine, compose, translation } from '../drawing/affine.ts';
import type { Box, Drawing } from '../drawing/drawing.ts';
import { movePlaced, type Placed, type PrintPage } from '../drawing/printPage.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import type { Notation } from '../units/notation.ts';
import { atLeast, mm, say } from '../units/phrase.ts';
import { drawFrame, printableHeightFor, usableBox } from './frame.ts';
import { type PackedPlace, pack } from './pack.ts';
import { ANSI_PAPERS, ISO_PAPERS, type Paper } from './paperSizes.ts';
import { copiesOf, type Piece } from './piece.ts';
import { checkMargin, pageHeightFor, printableBox, type Size } from './printable.ts';
import { type Correction, correctPage } from './printerCorrection.ts';
import { splitToFit } from './split.ts';
import { drawPart, joinCount, partsOf, type Tile } from './tile.ts';

/** Page numbers of each piece, by its name; the first page is 1. */
export type PagesOfPieces = ReadonlyMap<string, readonly number[]>;

/** Each piece once, or as often as it is made. */
export type Copies = 'one' | 'made';

/** Pages that belong together, the content of each placed from 0, 0 within the area it was typeset for. */
export interface PageRun {
  readonly count: number;
  /** Draws the pages on each call, so that only one run is in memory at once. */
  draw(pagesOf: PagesOfPieces): readonly (readonly Placed[])[];
}

/**
 * Pages before those of the pieces, drawn when the pieces' pages are known.
 * @param needed how often each page of pieces has to be printed, the first of them first
 */
export type LeadingPages = (area: Size, needed: readonly number[]) => readonly PageRun[];

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
  /** Each piece once, unless given. */
  readonly copies?: Copies;
  /** The drawing at the foot of every page, up from 0, 0 and `width` mm wide. */
  readonly legend?: (width: number) => Drawing;
  readonly correction?: Correction;
}

/** Sheets to draw page by page. */
export interface Sheets {
  /** Number of sheets, every copy of a page counted. */
  readonly count: number;
  readonly pagesOf: PagesOfPieces;
  /** How often each page has to be printed for all pieces that are made, the first page first. */
  readonly copies: readonly number[];
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
  says: say`${name} leaves ${mm(Math.max(0, width))} across to draw on, once the printer's skew is corrected over its whole length; it must be ${atLeast(LEAST_WIDTH)} or more`,
  remedy: say`use sheets, or a wider roll`,
});

const tooLarge = (piece: Piece, layout: Layout): Complaint => {
  const known = ANSI_PAPERS.includes(layout.paper) ? [...ANSI_PAPERS, ...ISO_PAPERS] : ISO_PAPERS;
  const larger = known.find((paper) => splitToFit(piece, roomOf({ ...layout, paper }).area) !== undefined);
  const complaint: Complaint = {
    at: ['paper'],
    says: say`${piece.title} does not fit ${layout.paper.name} and cannot be divided to fit`,
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

/** A part of a piece, and its place on its page. */
interface PlacedPart {
  readonly part: Tile;
  readonly place: PackedPlace;
}

/** A page of pieces, and how often it is needed for all that are made. */
interface PackedPage {
  readonly content: readonly PlacedPart[];
  readonly needed: number;
}

/** Most copies of parts that are packed one by one. */
const MOST_SINGLE = 1000;

/** Packs each part once, or exactly as often as it is made: on pages to repeat, or copy by copy where that saves paper. */
const packParts = (
  parts: readonly Tile[],
  copies: Copies,
  packed: (parts: readonly Tile[]) => PlacedPart[][],
  cost: (page: readonly PlacedPart[]) => number,
): PackedPage[] => {
  const copiesOfPart = ({ piece }: Tile): number => copiesOf(piece);
  if (copies === 'one')
    return packed(parts).map((content) => ({
      content,
      needed: Math.max(...content.map(({ part }) => copiesOfPart(part))),
    }));
  const total = (pages: readonly PackedPage[]): number =>
    pages.reduce((sum, { content, needed }) => sum + needed * cost(content), 0);
  // A page holds only parts that are made equally often, so that none is printed too often.
  const repeated = [...new Set(parts.map(copiesOfPart))].flatMap((needed) =>
    packed(parts.filter((part) => copiesOfPart(part) === needed)).map((content) => ({ content, needed })),
  );
  if (parts.reduce((sum, part) => sum + copiesOfPart(part), 0) > MOST_SINGLE) return repeated;
  const every = parts.flatMap((part) => new Array<Tile>(copiesOfPart(part)).fill(part));
  const single = packed(every).map((content) => ({ content, needed: 1 }));
  return total(single) < total(repeated) - EPSILON ? single : repeated;
};

/** A value that is computed when it is first asked for. */
const once = <T>(compute: () => T): (() => T) => {
  let known: { readonly value: T } | undefined;
  return () => {
    known ??= { value: compute() };
    return known.value;
  };
};

/** The pages of parts packed together. */
const packTogether = (parts: readonly Tile[], area: Size, gap: number, roll: boolean): PlacedPart[][] => {
  const sizes = parts.map(({ room }) => sizeOf(room));
  const pages: PlacedPart[][] = [];
  pack(sizes, area, gap, roll).forEach((place, i) => {
    const part = parts[i];
    if (part === undefined) return;
    pages[place.page] ??= [];
    pages[place.page]?.push({ part, place });
  });
  return pages;
};

/**
 * Places pieces on pages, always at full size: packed, turned where that saves paper, and divided where they are larger
 * than a page. Every page has its frame.
 * @returns complaints about the margin, one at `paper` where it is too narrow, or one for each piece that does not fit
 * even in parts
 */
export const layPages = (layout: Layout): Result<Sheets> => {
  const { planName, unit, paper, margin, leading, pieces, copies = 'one', correction } = layout;
  const wrong = checkMargin(margin);
  if (wrong.length > 0) return refuse(...wrong);
  const { area, foot } = roomOf(layout);
  if (area.width < LEAST_WIDTH) return refuse(tooNarrow(paper, area));
  const cut = cutApart(layout, area);
  if (!cut.ok) return cut;
  const parts = cut.value;

  const leastOverhang = Math.min(...pieces.map(({ overhang }) => overhang));
  const gap = Math.max(LEAST_GAP, CUT_MARGIN - 2 * leastOverhang);
  // Of a roll, lengths are cut off; `bottom` is what is left of the longest.
  const bottomOf = (content: readonly PlacedPart[]): number =>
    paper.roll ? Math.min(...content.map(({ place }) => place.y), area.height - ROLL_LEAST) : 0;
  const packedPages = packParts(
    parts,
    copies,
    (group) => packTogether(group, area, gap, paper.roll),
    (content) => area.height - bottomOf(content),
  );

  const front = leadingArea(paper, area);
  /** The pages before, and the numbers that follow from them; laid out when the first is asked for, as that may take long. */
  const numbers = once(() => {
    const leaders = leading(
      front,
      packedPages.map((page) => page.needed),
    );
    const leadingCount = leaders.reduce((sum, { count }) => sum + count, 0);
    const pagesOf = new Map<string, number[]>();
    packedPages.forEach(({ content }, i) => {
      for (const name of new Set(content.map(({ part }) => part.piece.name)))
        pagesOf.set(name, [...(pagesOf.get(name) ?? []), leadingCount + i + 1]);
    });
    const needed = [...new Array<number>(leadingCount).fill(1), ...packedPages.map((page) => page.needed)];
    return { leaders, pagesOf, needed };
  });
  const printed = (number: number): number => (copies === 'made' ? (numbers().needed[number - 1] ?? 1) : 1);

  const framed = (number: number, height: number, content: readonly Placed[], copy = 1): PrintPage => {
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
      count: numbers().needed.length,
      copy: [copy, printed(number)],
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
    get count() {
      return numbers().needed.reduce((sum, _, i) => sum + printed(i + 1), 0);
    },
    get pagesOf() {
      return numbers().pagesOf;
    },
    get copies() {
      return numbers().needed;
    },
    *pages() {
      const { leaders, pagesOf } = numbers();
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
      for (const { content } of packedPages) {
        number += 1;
        const bottom = bottomOf(content);
        const placed = content.map(({ part, place }) => ({
          get drawing() {
            return drawPart(part, wholeOf(part), unit);
          },
          at: placing(part, { ...place, y: place.y - bottom }),
        }));
        for (let copy = 1; copy <= printed(number); copy++)
          yield framed(number, area.height - bottom, placed, copy);
      }
    },
  });
};
