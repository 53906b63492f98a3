import type { Cabinet } from '../drawer/arrangement/cabinetFront.ts';
import { madeCabinet } from '../drawer/arrangement/cabinetOf.ts';
import type { Hand } from '../drawer/cornerLetters.ts';
import { cuttingList } from '../drawer/cuttingList.ts';
import { type Drawer, type Family, madeOf } from '../drawer/drawer.ts';
import { drawerCut } from '../drawer/drawerCut.ts';
import { familyOf } from '../drawer/familyTarget.ts';
import type { Fittings } from '../drawer/fittings/fittings.ts';
import type { FittedDrawer } from '../drawer/fittings/fittingsOf.ts';
import { setFittings } from '../drawer/fittings/setFittings.ts';
import { drawerCorners, ofHand } from '../drawer/made/drawerCorners.ts';
import { parts } from '../drawer/partsList.ts';
import { gapBlock, spacersToCut } from '../drawer/spacers/spacersToCut.ts';
import { RAIL_BOARDS } from '../joint/topRail.ts';
import { handPaper, type Paper } from '../paper/paperSizes.ts';
import { NO_SPLITS } from '../paper/piece.ts';
import type { Size } from '../paper/printable.ts';
import type { Correction } from '../paper/printerCorrection.ts';
import {
  type Copies,
  type Layout,
  type LeadingPages,
  layPages,
  type PageRun,
  type Sheets,
} from '../paper/sheets.ts';
import type { SettingPlaces } from '../sheets/bench/benchFingers.ts';
import type { HandWork } from '../sheets/bench/benchSettings.ts';
import { benchSheet } from '../sheets/bench/benchSheet.ts';
import { cornersBench } from '../sheets/bench/cornersBench.ts';
import { type ComparedCorner, comparison } from '../sheets/comparisonSheet.ts';
import { contents } from '../sheets/contents.ts';
import { cornerSheets } from '../sheets/corners/cornerSheets.ts';
import { cuttingListSheets } from '../sheets/cuttingListSheet.ts';
import { proportionSheets } from '../sheets/fittings/proportionSheet.ts';
import { guidePiece } from '../sheets/guide/drawGuide.ts';
import { guideNote } from '../sheets/guide/guideNote.ts';
import type { NamedGuide } from '../sheets/guide/guidesToMake.ts';
import { settingRod } from '../sheets/guide/settingRod.ts';
import { settingSheets } from '../sheets/guide/settingSheet.ts';
import type { NamedSetting } from '../sheets/guide/settingsToMake.ts';
import { nameNumbers, numbersByName } from '../sheets/nameNumbers.ts';
import type { PieceChoice } from '../sheets/template/cornerPieces.ts';
import { legend } from '../sheets/template/legend.ts';
import type { TemplatePiece } from '../sheets/template/templatePiece.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { type Notation, unitOf } from '../units/notation.ts';
import { say } from '../units/phrase.ts';
import type { ShortName } from '../units/shortNames.ts';
import { drillingOf } from './drillingOf.ts';
import { guidesOf } from './guidesOf.ts';
import { drawnSingles, onlyWords, wholeDrawers } from './only.ts';
import { frameOfProject, partsOfProject } from './partsOfProject.ts';
import { picturedCorners } from './picturedCorners.ts';
import { chosenCorners, piecesOf } from './piecesOf.ts';
import { frontCorners, type Project, type SingleCorner } from './project.ts';
import { settingsOf } from './settingsOf.ts';
import { alone, asLeading, layoutOf } from './sheetLayout.ts';

/** Paper, margin and printer of sheets, and the choice of templates. */
export interface SheetOptions {
  readonly paper: Paper;
  /**
   * The paper of cutting list, bench sheets, comparison, proportions and corners. Unless given it is `paper`; beside templates or guides on paper larger than
   * Legal it is A4, or Letter for inches and for ANSI papers.
   */
  readonly benchPaper?: Paper;
  /** The margin that the printer cannot print on, at each edge, in mm; 6 unless given. */
  readonly margin?: number;
  /** The correction of a printer whose proof sheet was measured. */
  readonly correction?: Correction;
  /** How often each template is drawn: once unless given, or as often as it is made. */
  readonly copies?: Copies;
  /** Both boards of each corner, each a piece to fold, unless given. */
  readonly choice?: PieceChoice;
  /** All the usual kinds that the project has, unless given; the contents go before the templates. */
  readonly kinds?: readonly SheetKind[];
}

/** Every kind of sheet, in the order of printing. */
export const SHEET_KINDS = [
  'templates',
  'contents',
  'drilling',
  'guides',
  'cutting-list',
  'bench',
  'comparison',
  'proportion',
  'corners',
] as const;

/** A kind of sheet to print; `contents` are the pages before the templates that list them. */
export type SheetKind = (typeof SHEET_KINDS)[number];

/** Those to make a set by; proportions, and corners as pictures, are only drawn where they are chosen. */
export const USUAL_SHEETS: readonly SheetKind[] = SHEET_KINDS.filter(
  (kind) => kind !== 'proportion' && kind !== 'corners',
);

/** Those that are cut out, for which the paper may be larger than a hand holds. */
const CUT_OUT: readonly SheetKind[] = ['templates', 'drilling', 'guides'];

/** Sheets of one kind, to be printed together. */
export interface SheetSet extends Sheets {
  /**
   * Templates to glue on, templates to drill the fronts by, guides for a router with the setting rods of its fingers, the cutting list, bench sheets drawer by drawer and of the single corners, the
   * comparison of the front corners, the fronts' proportions, or every corner as pictures.
   */
  readonly kind: Exclude<SheetKind, 'contents'>;
  /** `Haberdashery chest: templates`. */
  readonly title: string;
  readonly paper: Paper;
  /** The number of pages on another paper; undefined where a piece does not fit it. */
  countOn(paper: Paper): number | undefined;
}

/** The most pieces without a contents page; without one are also those that share a page. */
const FEW = 4;

/**
 * All sheets of a project by kind, or those of the kinds chosen: templates; guides where there are some; bench sheets; cutting
 * list and comparison where there are drawers; proportions and corners as pictures only where those are chosen. Each page is drawn when it is requested.
 * @returns complaints at `margin`, `paper` and `benchPaper`, at `sheets` where the project has none of the kinds chosen, or at the
 * keys of pulls, locks and stops that cannot be made
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
  const { kinds = USUAL_SHEETS } = options;
  const all = layoutsOf(project);
  const chosen = all.filter(({ kind }) => kinds.includes(kind));
  if (chosen.length === 0)
    return refuse({
      at: ['sheets'],
      says: say`there are no sheets of the kinds chosen here; there are ${all.map(({ kind }) => kind).join(', ')}`,
    });
  const laid = chosen.map(({ kind, layout: layoutOfKind }) => {
    const layout = layoutOfKind(options);
    return {
      kind,
      title: `${layout.planName}: ${kind.replace('-', ' ')}`,
      paper: layout.paper,
      countOn: (paper: Paper) => countOf(layPages({ ...layout, paper })),
      sheets: layPages(layout),
    };
  });
  const unfit = kinds.some((kind) => kind === 'drilling' || kind === 'proportion')
    ? faultsOfFittings(project)
    : [];
  if (unfit.length > 0) return refuse(...unfit);
  const complaints = laid.flatMap(({ sheets, paper }) =>
    sheets.ok ? [] : sheets.complaints.map((each) => ofPaper(each, paper === options.benchPaper)),
  );
  if (complaints.length > 0) return refuse(...oncePerSaying(complaints));
  return accept(laid.flatMap(({ sheets, ...set }) => (sheets.ok ? [Object.assign(sheets.value, set)] : [])));
};

/** What is wrong with the paper of several kinds is said once. */
const oncePerSaying = (complaints: readonly Complaint[]): Complaint[] => [
  ...new Map(complaints.map((complaint) => [JSON.stringify(complaint), complaint])).values(),
];

/** What is wrong with pulls, locks and stops, without which there are no templates for them. */
const faultsOfFittings = ({ set: { drawers } }: Project): readonly Complaint[] => {
  if (drawers.every(({ spec }) => spec.fittings === undefined)) return [];
  const fitted = setFittings(drawers);
  return fitted.ok ? [] : fitted.complaints;
};

/** What is fixed to each drawer that has any; nothing where it cannot be made. */
const fittingsIn = ({ set: { drawers } }: Project): ReadonlyMap<FittedDrawer, Fittings> => {
  const fitted = setFittings(drawers);
  return fitted.ok ? fitted.value.of : new Map();
};

/** A complaint about the paper at the key that gave it. */
const ofPaper = (complaint: Complaint, isBench: boolean): Complaint =>
  isBench && complaint.at[0] === 'paper' ? { ...complaint, at: ['benchPaper'] } : complaint;

const countOf = (sheets: Result<Sheets>): number | undefined => (sheets.ok ? sheets.value.count : undefined);

/** The kinds of sheet that a project has, in the order of printing. */
export const kindsOf = (project: Project): SheetSet['kind'][] => layoutsOf(project).map(({ kind }) => kind);

/** The layouts of all kinds of sheet that a project has, each made when it is needed. */
const layoutsOf = (
  whole: Project,
): { readonly kind: SheetSet['kind']; layout(options: SheetOptions): Layout }[] => {
  const project = titled(whole);
  const {
    units,
    set: { family },
  } = project;
  const guides = guidesOf(project);
  const settings = settingsOf(project);
  const planned = wholeDrawers(project);
  const drawers = madeOf({ drawers: planned });
  // Boxes are not looked at beside each other.
  const compared = planned.filter(({ spec }) => spec.box === undefined);
  const singles = drawnSingles(project);
  const drilling = drillingOf(project);
  return [
    {
      kind: 'templates',
      layout: (options) => templatesLayout(project, options, piecesOf(project, options.choice)),
    },
    ...(drilling.length > 0
      ? [
          {
            kind: 'drilling' as const,
            layout: (options: SheetOptions) => templatesLayout(project, options, drilling),
          },
        ]
      : []),
    ...(guides.length + settings.length > 0
      ? [
          {
            kind: 'guides' as const,
            layout: (options: SheetOptions) => guidesLayout(project, options, guides, settings),
          },
        ]
      : []),
    ...(drawers.length === 0
      ? []
      : [
          {
            kind: 'cutting-list' as const,
            layout: (options: SheetOptions) => cuttingListLayout(project, drawers, inHand(options, units)),
          },
        ]),
    ...(drawers.length + singles.length === 0
      ? []
      : [
          {
            kind: 'bench' as const,
            layout: (options: SheetOptions) =>
              benchLayout(project, { drawers, singles }, settings, inHand(options, units)),
          },
        ]),
    // One drawer of several has nothing to be compared with.
    ...(family === undefined ||
    compared.length === 0 ||
    (compared.length === 1 && project.set.drawers.length > 1)
      ? []
      : [
          {
            kind: 'comparison' as const,
            layout: (options: SheetOptions) =>
              comparisonLayout(comparedSet(project, family, compared), inHand(options, units)),
          },
        ]),
    ...(compared.length === 0
      ? []
      : [
          {
            kind: 'proportion' as const,
            layout: (options: SheetOptions) => proportionLayout(project, compared, inHand(options, units)),
          },
        ]),
    { kind: 'corners', layout: (options) => cornersLayout(project, inHand(options, units)) },
  ];
};

/** The project, its name followed by what is drawn of it where that is not all. */
const titled = (project: Project): Project => {
  const { name, only } = project;
  return only === undefined ? project : { ...project, name: `${name}, only ${onlyWords(only)}` };
};

/** The options with the paper of sheets that are held in a hand; that of all sheets where none of them is cut out. */
const inHand = (options: SheetOptions, units: Notation): SheetOptions => {
  const { kinds = USUAL_SHEETS, paper, benchPaper } = options;
  const isBeside = kinds.some((kind) => CUT_OUT.includes(kind));
  return { ...options, paper: benchPaper ?? (isBeside ? handPaper(paper, unitOf(units)) : paper) };
};

const templatesLayout = (
  project: Project,
  options: SheetOptions,
  pieces: readonly TemplatePiece[],
): Layout => {
  const names = pieces.map(({ itemName }) => itemName);
  const signs = new Set(pieces.flatMap((piece) => piece.signs));
  const { kinds = USUAL_SHEETS, copies = 'one' } = options;
  const hasContents = kinds.includes('contents');
  const isListed = pieces.length > FEW && hasContents;
  return {
    ...layoutOf(
      project,
      options,
      (area, needed) => [
        ...(isListed && needed.length > 1
          ? contents(project.name, pieces, area, copies === 'made' ? copies : needed)
          : []),
        ...(hasContents ? explained(project.name, names)(area, needed) : []),
      ],
      pieces,
    ),
    copies,
    legend: (width: number) => legend(signs, width),
  };
};

const guidesLayout = (
  project: Project,
  options: SheetOptions,
  guides: readonly NamedGuide[],
  settings: readonly NamedSetting[],
): Layout => {
  const { name, units, set } = project;
  const numbered = [...guides.filter(bearsNumber), ...settings].map(({ titles }) => titles);
  const block = gapBlock(set);
  const work = { settings, spacers: spacersToCut(set), ...(block !== undefined && { block }) };
  return {
    ...layoutOf(
      project,
      options,
      asLeading((area) => [
        ...nameNumbers(name, numbered, area),
        ...(settings.length > 0 ? settingSheets(name, work, units, area) : []),
      ]),
      [
        ...guides.map(({ guide, titles }) => guidePiece(guide, titles)),
        ...settings.map((each, i) => settingRod(each, i + 1)),
      ],
    ),
    ...(guides.length > 0 && { legend: (width: number) => guideNote(units, width) }),
  };
};

/** What the numbers in shortened names stand for; no page where there are none. */
const explained = (title: string, named: readonly ShortName[]): LeadingPages =>
  asLeading((area) => nameNumbers(title, named, area));

/** Bench sheets drawer by drawer, then that of the single corners. */
const benchLayout = (
  project: Project,
  { drawers, singles }: { readonly drawers: readonly Drawer[]; readonly singles: readonly SingleCorner[] },
  settings: readonly NamedSetting[],
  options: SheetOptions,
): Layout => {
  const { units, cuts } = project;
  const fitted = fittingsIn(project);
  const numbers = numbersByName(chosenCorners(project, options.choice));
  const bench = (drawer: Drawer, area: Size): PageRun => {
    const workOf = (hand: Hand): HandWork => {
      const cut = drawerCut(ofHand(drawer, hand), cuts);
      const places = placesOf(settings, drawer, hand);
      return { ...(cut && { cut }), ...(places && { places }) };
    };
    const fittings = fitted.get(drawer);
    const listed = partsOfProject(project, [drawer]);
    const { count, draw } = benchSheet(drawer, listed, {
      units,
      area,
      ...workOf('left'),
      ...(drawer.right && { right: workOf('right') }),
      ...(fittings && { fittings }),
      numbers: numbers.get(drawer.spec.name) ?? [],
    });
    return { count, draw: () => draw().map(alone) };
  };
  const corners = singles.map(({ name, joint, rail }) => ({
    name,
    joint,
    boards: rail === undefined ? { tail: 'tail board', pin: 'pin board' } : RAIL_BOARDS,
    routed: cuts.has(joint),
    ...(rail && { rail }),
  }));
  const benchOfCorners = (area: Size): PageRun => {
    const { count, draw } = cornersBench(corners, { title: project.name, units, area });
    return { count, draw: () => draw().map(alone) };
  };
  return layoutOf(project, options, (area) => [
    ...drawers.map((drawer) => bench(drawer, area)),
    ...(corners.length > 0 ? [benchOfCorners(area)] : []),
  ]);
};

const cuttingListLayout = (project: Project, drawers: readonly Drawer[], options: SheetOptions): Layout => {
  const { name: title, units, sawing: saw } = project;
  const groups = cuttingList(parts({ drawers, advice: [] }, units), saw, frameOfProject(project));
  return layoutOf(
    project,
    options,
    asLeading((area) => cuttingListSheets(groups, { title, saw, units, area })),
  );
};

/** The places of the settings of a drawer's corners at one hand among those of its set; undefined without fingers. */
const placesOf = (
  settings: readonly NamedSetting[],
  drawer: Drawer,
  hand: Hand,
): SettingPlaces | undefined => {
  if (settings.length === 0) return undefined;
  const placeOf = (item: string): number =>
    settings.findIndex(({ titles }) => titles.names.includes(item)) + 1;
  const corners = drawerCorners(drawer).filter(({ hands }) => hands.includes(hand));
  const [front = 0, back = 0] = corners.map(({ name }) => placeOf(name));
  return { ...(front > 0 && { front }), ...(back > 0 && { back }), of: settings.length };
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

/** Corners to compare, in the plan's order. */
export interface ComparedSet {
  readonly name: string;
  readonly units: Notation;
  readonly family: Family;
  readonly rows: readonly ComparedCorner[];
  /** The fronts of the compared drawers; absent for corners without drawers. */
  readonly cabinet?: Cabinet;
}

/** Some of a set's drawers to compare: the tail width is that of the whole set, the spread that of these. */
const comparedSet = (
  { name, units }: Project,
  { target, pin }: Family,
  drawers: readonly Drawer[],
): ComparedSet => {
  const rows = frontCorners({ drawers });
  return {
    name,
    units,
    family: familyOf(
      rows.map(({ joint }) => joint),
      target,
      pin,
    ),
    rows,
    cabinet: madeCabinet(drawers),
  };
};

/** The comparison sheet alone; bare widths without a plan can be compared too. */
export const comparisonSheets = (compared: ComparedSet, options: SheetOptions): Result<Sheets> =>
  layPages(comparisonLayout(compared, options));

const comparisonLayout = (compared: ComparedSet, options: SheetOptions): Layout => {
  const { name: title, units, family, rows, cabinet } = compared;
  return layoutOf(
    compared,
    options,
    asLeading((area) => comparison(rows, { title, family, units, area, ...(cabinet && { cabinet }) })),
  );
};

const proportionLayout = (project: Project, planned: readonly Drawer[], options: SheetOptions): Layout => {
  const { name: title, units } = project;
  const fittings = fittingsIn(project);
  const drawers = madeOf({ drawers: planned });
  const cabinet = madeCabinet(planned);
  return layoutOf(
    project,
    options,
    asLeading((area) => proportionSheets({ title, drawers, cabinet, fittings, units, area })),
  );
};

const cornersLayout = (project: Project, options: SheetOptions): Layout => {
  const { name: title, units } = project;
  return layoutOf(
    project,
    options,
    asLeading((area) => cornerSheets(picturedCorners(project), { title, units, area })),
  );
};
