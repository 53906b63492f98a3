import type { Drawer, Family } from '../drawer/drawer.ts';
import { drawerCut } from '../drawer/drawerCut.ts';
import { parts } from '../drawer/partsList.ts';
import { IDENTITY } from '../drawing/affine.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Placed } from '../drawing/printPage.ts';
import type { Paper } from '../paper/paperSizes.ts';
import { NO_SPLITS, type Piece } from '../paper/piece.ts';
import { DEFAULT_MARGIN, type Size } from '../paper/printable.ts';
import type { Correction } from '../paper/printerCorrection.ts';
import { type Layout, type LeadingPages, layPages, type PageRun, type Sheets } from '../paper/sheets.ts';
import { benchSheet } from '../sheets/bench/benchSheet.ts';
import { type ComparedCorner, comparison } from '../sheets/comparisonSheet.ts';
import { contents } from '../sheets/contents.ts';
import { gapSheets } from '../sheets/gapSheets.ts';
import { guidePiece } from '../sheets/guide/drawGuide.ts';
import type { NamedGuide } from '../sheets/guide/guidesToMake.ts';
import { nameNumbers, numbersByName } from '../sheets/nameNumbers.ts';
import { BOTH_BOARDS, type PieceChoice } from '../sheets/template/cornerPieces.ts';
import { legend } from '../sheets/template/legend.ts';
import { accept, type Result, refuse } from '../units/complaint.ts';
import type { Notation } from '../units/notation.ts';
import { say } from '../units/phrase.ts';
import type { ShortName } from '../units/shortNames.ts';
import { guidesOf } from './guidesOf.ts';
import { piecesOf } from './piecesOf.ts';
import { frontCorners, type Project } from './project.ts';

/** Paper, margin and printer of sheets, and the choice of templates. */
export interface SheetOptions {
  readonly paper: Paper;
  /** The margin that the printer cannot print on, at each edge, in mm; 6 unless given. */
  readonly margin?: number;
  /** The correction of a printer whose proof sheet was measured. */
  readonly correction?: Correction;
  /** Both boards of each corner, each a piece to fold, unless given. */
  readonly choice?: PieceChoice;
  /** All kinds that the project has, unless given; the contents go before the templates. */
  readonly kinds?: readonly SheetKind[];
}

/** Every kind of sheet, in the order of printing. */
export const SHEET_KINDS = ['templates', 'contents', 'guides', 'bench', 'comparison'] as const;

/** A kind of sheet to print; `contents` are the pages before the templates that list them. */
export type SheetKind = (typeof SHEET_KINDS)[number];

/** Sheets of one kind, to be printed together. */
export interface SheetSet extends Sheets {
  /** Templates to glue on, guides for a router, bench sheets drawer by drawer, or the comparison of the front corners. */
  readonly kind: Exclude<SheetKind, 'contents'>;
  /** `Haberdashery chest: templates`. */
  readonly title: string;
  /** The number of pages on another paper; undefined where a piece does not fit it. */
  countOn(paper: Paper): number | undefined;
}

/** The most pieces without a contents page. */
const FEW = 4;

/**
 * All sheets of a project by kind, or those of the kinds chosen: templates; guides where there are some; bench sheets and
 * comparison where there are drawers. Each page is drawn when it is requested.
 * @returns complaints at `margin` and `paper`, or at `sheets` where the project has none of the kinds chosen
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
  const { kinds = SHEET_KINDS } = options;
  const all = layoutsOf(project, options);
  const chosen = all.filter(({ kind }) => kinds.includes(kind));
  if (chosen.length === 0)
    return refuse({
      at: ['sheets'],
      says: say`there are no sheets of the kinds chosen here; there are ${all.map(({ kind }) => kind).join(', ')}`,
    });
  const laid = chosen.map(({ kind, layout }) => ({
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
  const names = pieces.map(({ itemName }) => itemName);
  const numbers = numbersByName(names);
  const explained = (named: readonly ShortName[]) => asLeading((area) => nameNumbers(name, named, area));
  const signs = new Set(pieces.flatMap((piece) => piece.signs));
  const guides = guidesOf(project);
  const layout = (leading: LeadingPages, laid: readonly Piece[] = []): Layout =>
    layoutOf(project, options, leading, laid);
  const toCut = [
    {
      kind: 'templates' as const,
      layout: {
        ...layout(
          (area) =>
            (options.kinds ?? SHEET_KINDS).includes('contents')
              ? [...(pieces.length > FEW ? contents(name, pieces, area) : []), ...explained(names)(area)]
              : [],
          pieces,
        ),
        legend: (width: number) => legend(signs, width),
      },
    },
    ...(guides.length > 0
      ? [
          {
            kind: 'guides' as const,
            layout: layout(
              explained(guides.filter(bearsNumber).map(({ titles }) => titles)),
              guides.map(({ guide, titles }) => guidePiece(guide, titles)),
            ),
          },
        ]
      : []),
  ];
  if (set.family === undefined) return toCut;
  const bench = (drawer: Drawer, area: Size): PageRun => {
    const cut = drawerCut(drawer, cuts);
    const listed = parts({ drawers: [drawer], advice: [] }, units);
    const { count, draw } = benchSheet(drawer, listed, {
      units,
      area,
      ...(cut && { cut }),
      numbers: numbers.get(drawer.spec.name) ?? [],
    });
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

/** Whether a guide's name is in a wording with its number; most guides have room for one without. */
const bearsNumber = ({ guide, titles }: NamedGuide): boolean => {
  const { number } = titles;
  return (
    number !== undefined &&
    guidePiece(guide, titles)
      .draw(NO_SPLITS)
      .marks.some((mark) => mark.kind === 'text' && mark.text.includes(`${number} ·`))
  );
};

/** Corners to compare, in the order of the cabinet. */
export interface ComparedSet {
  readonly name: string;
  readonly units: Notation;
  readonly family: Family;
  readonly rows: readonly ComparedCorner[];
}

/** The comparison sheet alone; bare widths without a plan can be compared too. */
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

/** The sheets of gaps through the year alone. */
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

/** A page that holds one drawing. */
const alone = (drawing: Drawing): Placed[] => [{ drawing, at: IDENTITY }];

/** Leading pages from drawings that each fill a page. */
const asLeading =
  (draw: (area: Size) => readonly Drawing[]): LeadingPages =>
  (area) => {
    const pages = draw(area);
    return [{ count: pages.length, draw: () => pages.map(alone) }];
  };
