import type { Cabinet, CabinetFront } from '../../drawer/arrangement/cabinetFront.ts';
import { type Progression, progressionOf, rowHeightsOf } from '../../drawer/arrangement/progression.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import type { Fittings } from '../../drawer/fittings/fittings.ts';
import type { FittedDrawer } from '../../drawer/fittings/fittingsOf.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Size } from '../../paper/printable.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { formatLength } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import { SCALES } from '../elevation.ts';
import { SMALL } from '../template/lettering.ts';
import { type Block, beside, paragraph, picture, rule, stack } from '../typeset/block.ts';
import { flow } from '../typeset/flow.ts';
import { columnsOf, tableRow } from '../typeset/tableRow.ts';
import { frontsPicture } from './frontsPicture.ts';

export interface ProportionOptions {
  readonly title: string;
  readonly drawers: readonly Drawer[];
  readonly cabinet: Cabinet;
  /** What is fixed to each drawer that has any. */
  readonly fittings: ReadonlyMap<FittedDrawer, Fittings>;
  readonly units: Notation;
  /** Usable area of a page, mm. */
  readonly area: Size;
}

const TITLE = 6;
/** Gap between parts of a sheet, between two pictures, and from words to what they are about, mm. */
const GAP = { parts: 6, pictures: 8, words: 1.5 };
/** Most height of the elevations, and of the two fronts, as shares of the page's. */
const SHARE = { elevation: 0.45, fronts: 0.22 };
/** What heights of rows are rounded to, mm. */
const MARK: Readonly<Record<Unit, number>> = { mm: 0.5, in: MM_PER_INCH / 16 };
/** Shares of the table's width: row, height, to the row above, and its fronts. */
const SHARES = [8, 15, 22, 70];

/**
 * The fronts to judge by eye: without and with their pulls, side by side to one scale; what their heights are to each other; and the
 * narrowest beside the widest.
 */
export const proportionSheets = (options: ProportionOptions): Drawing[] => {
  const { title, area } = options;
  const head = words(`${title}: proportions`, area.width, TITLE, 'bold');
  return flow(
    {
      head: [stack([head, words(aboutRows(options), area.width)], GAP.words), head],
      wide: [[elevations(options)], ...narrowBesideWide(options), table(options)],
      narrow: [],
      columns: 1,
      gap: GAP.parts,
    },
    area,
  ).draw();
};

const words = (text: string, width: number, size = SMALL, weight: 'regular' | 'bold' = 'regular'): Block =>
  paragraph([{ text, size, weight }], width);

/** The largest scale, as 1 : n, at which a size fits a room; undefined where none does. */
const scaleFor = (size: Size, room: Size): number | undefined =>
  [1, 1.5, ...SCALES].find((n) => size.width <= n * room.width && size.height <= n * room.height);

const elevations = ({ cabinet, drawers, fittings, area }: ProportionOptions): Block => {
  const { rows, width, height, planned, leftOut } = cabinet;
  const fronts = rows.flat();
  const half = (area.width - GAP.pictures) / 2;
  const n = scaleFor({ width, height }, { width: half - 1, height: SHARE.elevation * area.height });
  if (n === undefined)
    return words('There are too many fronts to show them together on this paper.', area.width);
  const of = ({ index }: CabinetFront): Fittings | undefined => {
    const drawer = drawers[index];
    return drawer && fittings.get(drawer);
  };
  const hasPulls = fronts.some((front) => (of(front)?.pulls.length ?? 0) > 0);
  const bare = picture(frontsPicture(fronts, 1 / n, () => undefined));
  const note = [
    `Fronts, 1\u00A0:\u00A0${n}${hasPulls ? ', without and with their pulls' : ''}.`,
    ...(hasPulls ? [] : ['This plan gives no pulls.']),
    ...(planned
      ? []
      : ['The plan gives no arrangement: the rows are assumed from its order and the heights.']),
    ...(leftOut > 0 ? [`${leftOut} more ${leftOut === 1 ? 'drawer is' : 'drawers are'} not drawn.`] : []),
  ];
  return stack(
    [
      words(note.join(' '), area.width),
      beside([
        [0, bare],
        ...(hasPulls ? ([[half + GAP.pictures, picture(frontsPicture(fronts, 1 / n, of))]] as const) : []),
      ]),
    ],
    GAP.words,
  );
};

/** The narrowest front and the widest, to one scale; nothing where all are equally wide. */
const narrowBesideWide = ({ cabinet, drawers, fittings, units, area }: ProportionOptions): Block[][] => {
  const fronts = cabinet.rows.flat();
  const [first] = fronts;
  if (first === undefined) return [];
  const narrow = fronts.reduce(
    (least, front) => (front.width < least.width - EPSILON ? front : least),
    first,
  );
  const wide = fronts.reduce((most, front) => (front.width > most.width + EPSILON ? front : most), first);
  if (wide.width - narrow.width < EPSILON) return [];
  const total = { width: narrow.width + wide.width, height: Math.max(narrow.height, wide.height) };
  const n = scaleFor(total, { width: area.width - GAP.pictures - 2, height: SHARE.fronts * area.height });
  if (n === undefined) return [];
  const shown = [narrow, wide].map((front) => {
    const drawer = drawers[front.index];
    return { front, drawer, drawing: frontsPicture([front], 1 / n, () => drawer && fittings.get(drawer)) };
  });
  const tallest = Math.max(...shown.map(({ drawing: { box } }) => box.y1 - box.y0));
  let left = 0;
  const pictures = shown.map(({ drawing }) => {
    const at = left;
    left += drawing.box.x1 - drawing.box.x0 + GAP.pictures;
    // On one line.
    return [at, picture({ ...drawing, box: { ...drawing.box, y1: drawing.box.y0 + tallest } })] as const;
  });
  const told = shown.map(({ front, drawer }) => `${drawer?.spec.name ?? ''}, ${sizeWords(front, units)}`);
  return [
    [
      stack(
        [
          words(
            `The narrowest front beside the widest, 1\u00A0:\u00A0${n}: ${told.join('; ')}. The widest is ${times(wide.width / narrow.width)} as wide.`,
            area.width,
          ),
          beside(pictures),
        ],
        GAP.words,
      ),
    ],
  ];
};

/** `280 mm x 76 mm, 3.68 : 1`. */
const sizeWords = ({ width, height }: Size, units: Notation): string => {
  const length = (value: number): string => formatLength(value, units).replaceAll(' ', '\u00A0');
  return `${length(width)} x ${length(height)}, ${ratio(width / height)}\u00A0:\u00A01`;
};

/** To two places, or to three where that would be 1. */
const ratio = (value: number): string => String(Number(value.toFixed(Math.abs(value - 1) < 0.005 ? 3 : 2)));
const times = (value: number): string => `${ratio(value)} times`;

/** What the heights of the rows are to each other, in words. */
const aboutRows = ({ cabinet, drawers, units }: ProportionOptions): string => {
  const heights = rowHeightsOf(cabinet, drawers);
  const length = (value: number): string => formatLength(Math.abs(value), units).replaceAll(' ', '\u00A0');
  const mark = MARK[unitOf(units)];
  const [top = 0] = heights;
  const bottom = heights.at(-1) ?? top;
  if (heights.length === 1) return `One row, ${length(top)} high.`;
  const overall = `The bottom row is ${times(bottom / top)} as high as the top row.`;
  const told = progressionWords(progressionOf(heights, mark), length, mark);
  if (told !== undefined) return [told, ...(Math.abs(bottom - top) < EPSILON ? [] : [overall])].join(' ');
  if (heights.length === 2)
    return `${overall} It is ${length(bottom - top)} ${bottom > top ? 'higher' : 'lower'}.`;
  return `The heights of the rows follow neither an arithmetic nor a geometric progression. ${overall}`;
};

const progressionWords = (
  progression: Progression,
  length: (value: number) => string,
  mark: number,
): string | undefined => {
  switch (progression.kind) {
    case 'equal':
      return 'All rows are equally high.';
    case 'arithmetic':
      return `Each row is ${length(progression.step)} ${progression.step > 0 ? 'higher' : 'lower'} than the one above it: an arithmetic progression${rounded(progression, length, mark)}.`;
    case 'geometric':
      return `Each row is ${times(progression.ratio)} as high as the one above it: a geometric progression${rounded(progression, length, mark)}.`;
    case 'free':
      return undefined;
  }
};

/** `, rounded to 0.5 mm`, where heights are. */
const rounded = (
  { isRounded }: Extract<Progression, { readonly isRounded: boolean }>,
  length: (value: number) => string,
  mark: number,
): string => (isRounded ? `, rounded to ${length(mark)}` : '');

/** Row by row: its height, what that is to the row above, and its fronts. */
const table = ({ cabinet, drawers, units, area }: ProportionOptions): Block[] => {
  const columns = columnsOf(SHARES, area.width).map((column, i) => ({
    ...column,
    anchor: i === 3 ? ('start' as const) : column.anchor,
  }));
  const cells = (texts: readonly string[]): Block =>
    tableRow(
      columns,
      texts.map((text) => [{ text, size: SMALL, weight: 'regular' as const }]),
      SMALL,
    );
  const heights = rowHeightsOf(cabinet, drawers);
  const length = (value: number): string => formatLength(value, units).replaceAll(' ', '\u00A0');
  const heading = cells(['row', 'height', 'to the row above', 'fronts: width x height, width to height']);
  return [
    heading,
    ...cabinet.rows.map((row, i) => {
      const [height = 0, above] = [heights[i], heights[i - 1]];
      const kinds = [...new Map(row.map((front) => [front.index, front])).values()];
      const fronts = kinds.map(
        (front) => `${drawers[front.index]?.spec.name ?? ''} ${sizeWords(front, units)}`,
      );
      return stack([
        rule(area.width, 0.8),
        cells([
          String(i + 1),
          length(height),
          above === undefined ? '' : Math.abs(height - above) < EPSILON ? 'equal' : times(height / above),
          fronts.join('; '),
        ]),
      ]);
    }),
  ];
};
