import type { Drawer, Family } from '../drawer/drawer.ts';
import { drawerCut } from '../drawer/drawerCut.ts';
import { parts } from '../drawer/partsList.ts';
import { IDENTITY } from '../drawing/affine.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Placed } from '../drawing/printPage.ts';
import type { Paper } from '../paper/paperSizes.ts';
import type { Piece } from '../paper/piece.ts';
import { DEFAULT_MARGIN, type Size } from '../paper/printable.ts';
import type { Correction } from '../paper/printerCorrection.ts';
import { type Layout, type LeadingPages, layPages, type PageRun, type Sheets } from '../paper/sheets.ts';
import { benchSheet } from '../sheets/bench/benchSheet.ts';
import { type Compared, comparison } from '../sheets/comparisonSheet.ts';
import { contents } from '../sheets/contents.ts';
import { gapSheets } from '../sheets/gapSheets.ts';
import { BOTH_BOARDS, type PieceChoice } from '../sheets/template/cornerPieces.ts';
import { legend } from '../sheets/template/legend.ts';
import { accept, type Result, refuse } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';
import { guidePieces } from './guidesOf.ts';
import { piecesOf } from './piecesOf.ts';
import { frontCorners, type Project } from './project.ts';

/** What sheets are printed on, and which templates they bear. */
export interface SheetOptions {
  readonly paper: Paper;
  /** What the printer leaves blank at each edge, in mm; 6 unless given. */
  readonly margin?: number;
  /** Of a printer whose proof sheet was measured. */
  readonly correction?: Correction;
  /** Both boards of each corner, each a piece to fold, unless given. */
  readonly choice?: PieceChoice;
}

/** Sheets of one kind, to be printed together. */
export interface SheetSet extends Sheets {
  /** Templates to glue on, guides for a router, bench sheets drawer by drawer, or the set as it will be seen. */
  readonly kind: 'templates' | 'guides' | 'bench' | 'comparison';
  /** `Haberdashery chest: templates`. */
  readonly title: string;
  /** How many pages of another paper they would take; undefined where a piece does not fit it. */
  countOn(paper: Paper): number | undefined;
}

/** With more pieces than this, a contents page leads to them. */
const FEW = 4;

/**
 * Everything to print for a project, each kind of sheet by itself: templates always; guides where there are some; bench
 * sheets and comparison where there are drawers. Pages are drawn one at a time, when they are asked for.
 * @returns complaints at `margin` and `paper`
 * @example
 * ```ts
 * const sheets = sheetsOf(project, { paper });
 * if (sheets.ok)
 *   for (const { title, count, pages } of sheets.value) {
 *     console.log(`${title}: ${count} pages`);
 *     await renderPdf(pages(), { title, fonts }, sink);
 *   }
 * ```
 */
export const sheetsOf = (project: Project, options: SheetOptions): Result<SheetSet[]> => {
  const laid = layoutsOf(project, options).map(({ kind, layout }) => ({
    kind,
    title: `${project.name}: ${kind}`,
    countOn: (paper: Paper) => countOf(layPages({ ...layout, paper })),
    sheets: layPages(layout),
  }));
  const complaints = laid.flatMap(({ sheets }) => (sheets.ok ? [] : sheets.complaints));
  if (complaints.length > 0) return refuse(...complaints);
  return accept(laid.flatMap(({ sheets, ...set }) => (sheets.ok ? [{ ...set, ...sheets.value }] : [])));
};

const countOf = (sheets: Result<Sheets>): number | undefined => (sheets.ok ? sheets.value.count : undefined);

const layoutsOf = (
  project: Project,
  options: SheetOptions,
): { readonly kind: SheetSet['kind']; readonly layout: Layout }[] => {
  const { name, units, set, cuts } = project;
  const pieces = piecesOf(project, options.choice ?? BOTH_BOARDS);
  const signs = new Set(pieces.flatMap((piece) => piece.signs));
  const guides = guidePieces(project);
  const layout = (leading: LeadingPages, laid: readonly Piece[] = []): Layout =>
    layoutOf(project, options, leading, laid);
  const toCut = [
    {
      kind: 'templates' as const,
      layout: {
        ...layout(pieces.length > FEW ? (area) => contents(name, pieces, area) : () => [], pieces),
        legend: (width: number) => legend(signs, width),
      },
    },
    ...(guides.length > 0 ? [{ kind: 'guides' as const, layout: layout(() => [], guides) }] : []),
  ];
  if (set.family === undefined) return toCut;
  const bench = (drawer: Drawer, area: Size): PageRun => {
    const cut = drawerCut(drawer, cuts);
    const listed = parts({ drawers: [drawer], advice: [] }, units);
    const { count, draw } = benchSheet(drawer, listed, { units, area, ...(cut && { cut }) });
    return { count, draw: () => draw().map(alone) };
  };
  return [
    ...toCut,
    { kind: 'bench', layout: layout((area) => set.drawers.map((drawer) => bench(drawer, area))) },
    {
      kind: 'comparison',
      layout: comparisonLayout({ name, units, family: set.family, rows: frontCorners(set) }, options),
    },
  ];
};

/** Corners that are seen together, in the order of the cabinet. */
export interface ComparedSet {
  readonly name: string;
  readonly units: Notation;
  readonly family: Family;
  readonly rows: readonly Compared[];
}

/** The comparison sheet alone, which bare widths can have too. */
export const comparisonSheets = (compared: ComparedSet, options: SheetOptions): Result<Sheets> =>
  layPages(comparisonLayout(compared, options));

const comparisonLayout = (compared: ComparedSet, options: SheetOptions): Layout => {
  const { name: title, units, family, rows } = compared;
  return layoutOf(
    compared,
    options,
    asLeading((area) => comparison(rows, { title, family, units, area })),
  );
};

/** The gaps through the year alone. */
export const seasonSheets = (project: Project, options: SheetOptions): Result<Sheets> => {
  const { name: title, units, set } = project;
  return layPages(
    layoutOf(
      project,
      options,
      asLeading((area) => gapSheets(set.drawers, { title, units, area })),
    ),
  );
};

const layoutOf = (
  { name, units }: Pick<Project, 'name' | 'units'>,
  { paper, margin = DEFAULT_MARGIN, correction }: SheetOptions,
  leading: LeadingPages,
  pieces: readonly Piece[] = [],
): Layout => ({
  planName: name,
  unit: units,
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
