import type { Drawer, Family } from '../drawer/drawer.ts';
import { drawerCut } from '../drawer/drawerCut.ts';
import { parts } from '../drawer/parts.ts';
import { IDENTITY } from '../drawing/affine.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Placed } from '../drawing/page.ts';
import type { Cuts } from '../guided/cutCorners.ts';
import type { Correction } from '../paper/correction.ts';
import type { Piece } from '../paper/piece.ts';
import type { Size } from '../paper/printable.ts';
import type { Layout, LeadingPages } from '../paper/sheets.ts';
import type { Paper } from '../paper/sizes.ts';
import { benchSheet } from './benchSheet.ts';
import { type Compared, comparison } from './comparison.ts';
import { contents } from './contents.ts';
import { cornerPieces, type PieceChoice } from './corner.ts';
import { cornersOf, type TemplateWork } from './corners.ts';
import { gapSheets } from './gapSheets.ts';
import { legend } from './legend.ts';
import type { TemplatePiece } from './wrap.ts';

/** What a whole set's sheets are made from. */
export interface SheetWork extends TemplateWork {
  /** Absent where there are no drawers. */
  readonly family?: Family;
  /** Guides to cut the corners by, where there are any. */
  readonly guides?: readonly Piece[];
  /** How corners are cut; what is not in it is cut by hand. */
  readonly cuts?: Cuts;
}

/** How sheets are to be printed. */
export interface SheetWish {
  /** A name as `parseName` accepts it: one of 10,000 letters would not find room. */
  readonly title: string;
  readonly paper: Paper;
  /** What the printer leaves blank at each edge. */
  readonly margin: number;
  readonly correction?: Correction;
}

/** Sheets that are printed together. */
export interface SetLayout {
  readonly name: 'templates' | 'guides' | 'bench' | 'comparison';
  readonly layout: Layout;
}

/** With more pieces than this, a contents page leads to them. */
const FEW = 4;

const NONE_CUT: Cuts = new Map();

/** Every template of a set, equal ones once. */
export const setPieces = (work: TemplateWork, choice: PieceChoice): TemplatePiece[] =>
  cornersOf(work).flatMap((corner) => cornerPieces(corner, choice));

/** Everything to print for a set, each kind of sheet by itself. */
export const setLayouts = (
  work: SheetWork,
  pieces: readonly TemplatePiece[],
  wish: SheetWish,
): SetLayout[] => {
  const { drawers, family, units, guides = [], cuts = NONE_CUT } = work;
  const leading: LeadingPages = pieces.length > FEW ? (area) => contents(wish.title, pieces, area) : () => [];
  const signs = new Set(pieces.flatMap((piece) => piece.signs));
  const templates = layoutOf(units, wish, leading, pieces);
  const toCut: SetLayout[] = [
    { name: 'templates', layout: { ...templates, legend: (width) => legend(signs, width) } },
    ...(guides.length > 0
      ? [{ name: 'guides' as const, layout: layoutOf(units, wish, () => [], guides) }]
      : []),
  ];
  if (family === undefined) return toCut;
  const rows = drawers.map(({ spec: { name, count }, front }) => ({ name, count, joint: front }));
  return [
    ...toCut,
    {
      name: 'bench',
      layout: layoutOf(units, wish, (area) =>
        drawers.map((drawer) => {
          const cut = drawerCut(drawer, cuts);
          const wish = { units, area, ...(cut && { cut }) };
          const { count, draw } = benchSheet(drawer, parts({ drawers: [drawer], advice: [] }, units), wish);
          return { count, draw: () => draw().map(alone) };
        }),
      ),
    },
    { name: 'comparison', layout: comparisonLayout(rows, family, units, wish) },
  ];
};

/** The comparison sheet alone. */
export const comparisonLayout = (
  rows: readonly Compared[],
  family: Family,
  units: SheetWork['units'],
  wish: SheetWish,
): Layout =>
  layoutOf(
    units,
    wish,
    asLeading((area) => comparison(rows, { title: wish.title, family, units, area })),
  );

/** The gaps through the year alone. */
export const gapLayout = (drawers: readonly Drawer[], units: SheetWork['units'], wish: SheetWish): Layout =>
  layoutOf(
    units,
    wish,
    asLeading((area) => gapSheets(drawers, { title: wish.title, units, area })),
  );

const layoutOf = (
  unit: SheetWork['units'],
  { title, paper, margin, correction }: SheetWish,
  leading: LeadingPages,
  pieces: readonly Piece[] = [],
): Layout => ({
  planName: title,
  unit,
  paper,
  margin,
  leading,
  pieces,
  ...(correction && { correction }),
});

/** A drawing that is all of a page. */
const alone = (drawing: Drawing): Placed[] => [{ drawing, at: IDENTITY }];

/** Sheets that lead to no pieces. */
const asLeading =
  (draw: (area: Size) => readonly Drawing[]): LeadingPages =>
  (area) => {
    const pages = draw(area);
    return [{ count: pages.length, draw: () => pages.map(alone) }];
  };
