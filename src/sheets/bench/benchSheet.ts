import { depthLimit } from '../../drawer/arrangement/depthLimit.ts';
import type { Drawer } from '../../drawer/drawer.ts';
import type { Fittings } from '../../drawer/fittings/fittings.ts';
import { builtWords } from '../../drawer/made/builtWords.ts';
import type { Part } from '../../drawer/partsList.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import type { Size } from '../../paper/printable.ts';
import { sentence } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { formatPercent } from '../../wood/moisture.ts';
import { gapPicture } from '../gapPicture.ts';
import { type Block, beside, paragraph, rule, stack, type TextRun } from '../typeset/block.ts';
import { type Flow, flow } from '../typeset/flow.ts';
import { figure, type TypeSizes, typeSizes } from '../typeset/typeSizes.ts';
import { benchFittings } from './benchFittings.ts';
import { benchInstructions, type Section } from './benchInstructions.ts';
import { benchParts } from './benchParts.ts';
import { benchSettings, type HandWork } from './benchSettings.ts';
import { benchSketch } from './benchSketch.ts';

/** With the work at the left corners, or at both hands where these are alike. */
export interface BenchSheetOptions extends HandWork {
  readonly units: Notation;
  /** Usable area of a page, mm. */
  readonly area: Size;
  /** That at the right corners, where these differ. */
  readonly right?: HandWork;
  /** The numbers that stand for the drawer's name on templates; none by default. */
  readonly numbers?: readonly string[];
  /** What is fixed to its front, and its stops; absent where it has none. */
  readonly fittings?: Fittings;
}

/** Type sizes to try for a sheet of one page, as multiples of the usual size: best first, and the least. */
const TIMES = [1.6, 1.45, 1.3, 1.2, 1.1, 1];
const LEAST_TIMES = 0.85;
/** Those to try for a sheet of several pages. */
const SEVERAL_TIMES = [1, 0.95, 0.9, LEAST_TIMES];

/** Least width of a column, ems of text. */
const COLUMN = 21;

/** Least height of a sketch with other blocks beside it, ems of text. */
const SKETCH = 24;

/** Height of pictures, and gap between groups, ems of text; a sketch fills its place by default. */
interface Spacing {
  readonly picture: number;
  readonly sketch?: number;
  readonly gap: number;
}

/** Spacings to try for a sheet of one page, in any type size; the first that fits is used. */
const ON_ONE_PAGE: readonly Spacing[] = [
  { picture: 10, gap: 1.3 },
  { picture: 10, sketch: SKETCH, gap: 1.3 },
  { picture: 12, sketch: 16, gap: 0.9 },
  { picture: 10, sketch: 16, gap: 0.9 },
  { picture: 10, sketch: 15, gap: 0.5 },
];
const ON_SEVERAL: Spacing = { picture: 16, gap: 1.3 };

/**
 * A drawer's bench sheet: a dimensioned sketch, its parts, the settings, the order of work. Its layout is calculated again
 * whenever it is drawn, so that a set of any size needs the memory of one sheet.
 * @param parts the drawer's own
 * @returns one page, its type as large as fits; where one is too small, as few pages as any size needs, in the largest that does
 */
export const benchSheet = (drawer: Drawer, parts: readonly Part[], options: BenchSheetOptions): Flow => {
  const sheetAt = (times: number, spacing: Spacing) =>
    sheet(drawer, parts, options, typeSizes(times), spacing);
  /** The largest multiple that fits on one page. What fits in one size fits in every smaller one, so the least is tried first. */
  const largest = (spacing: Spacing): number | undefined => {
    const fits = (times: number) => sheetAt(times, spacing).count === 1;
    if (!fits(LEAST_TIMES)) return undefined;
    let best = LEAST_TIMES;
    for (let [from, to] = [0, TIMES.length]; from < to; ) {
      const middle = Math.floor((from + to) / 2);
      const times = TIMES[middle] ?? LEAST_TIMES;
      if (fits(times)) [best, to] = [times, middle];
      else from = middle + 1;
    }
    return best;
  };
  for (const spacing of ON_ONE_PAGE) {
    const times = largest(spacing);
    if (times !== undefined) return { count: 1, draw: () => sheetAt(times, spacing).draw() };
  }
  const { times, count } = SEVERAL_TIMES.map((times) => ({
    times,
    count: sheetAt(times, ON_SEVERAL).count,
  })).reduce((best, each) => (each.count < best.count ? each : best));
  return { count, draw: () => sheetAt(times, ON_SEVERAL).draw() };
};

const sheet = (
  drawer: Drawer,
  parts: readonly Part[],
  { units: unit, area, right, numbers = [], fittings, ...left }: BenchSheetOptions,
  type: TypeSizes,
  spacing: Spacing,
): Flow => {
  const { width, height } = area;
  const gap = spacing.gap * type.text;
  const columns = Math.max(1, Math.floor((width + gap) / (COLUMN * type.text + gap)));
  const column = (width - (columns - 1) * gap) / columns;
  const head = stack([headline(drawer, type, width), paragraph(outline(drawer, unit, numbers, type), width)]);
  const later = paragraph([{ text: drawer.spec.name, size: type.heading, weight: 'bold' }], width);
  const list = [...benchParts(parts, unit, type, width), ...adviceRows(drawer, unit, type, width)];
  const settings = benchSettings(drawer, { left, right: right ?? left }, unit, type, column);
  const gapAbove = benchGap(drawer, unit, type, { width: column, height: spacing.picture * type.text });
  const listHeight = stack(list).height;
  const settingsHeight = stack([stack(settings), ...gapAbove], gap).height;
  // The sketch is above the settings and the gap picture where the first page has room for all; or else alone there, or on the second page.
  const rest = height - head.height - listHeight - 2 * gap;
  const over = rest - settingsHeight - gap;
  const next = height - later.height - settingsHeight - 2 * gap;
  const usual = columns === 1 ? Math.max(rest, next) : over < SKETCH * type.text ? rest : over;
  const room = Math.min(usual, (spacing.sketch ?? Number.POSITIVE_INFINITY) * type.text);
  const instructions = benchInstructions(drawer, parts, left.cut, unit);
  const [order, others] = [instructions.slice(0, 1), instructions.slice(1)];
  return flow(
    {
      head: [head, later],
      wide: [list],
      narrow: [
        benchSketch(drawer, unit, type, { width: column, height: room }),
        settings,
        ...gapAbove.map((block) => [block]),
        ...[...order, ...benchFittings(fittings, drawer.boards.front.length, unit), ...others].map(
          (section) => sectionRows(section, type, column),
        ),
      ],
      columns,
      gap,
    },
    area,
  );
};

/** The drawer's name, and the quantity to make. */
const headline = ({ spec: { name, count } }: Drawer, type: TypeSizes, width: number): Block => {
  const make: TextRun = { text: `quantity\u00A0${count}`, size: type.title, weight: 'bold' };
  const taken = textWidth(make.text, make.size, make.weight);
  const share = width - taken - type.title;
  const fits = (size: number) => textWidth(name, size, 'bold') <= share;
  const size = [type.title, 0.75 * type.title].find(fits) ?? 0.6 * type.title;
  return beside([
    [0, paragraph([{ text: name, size, weight: 'bold' }], share, { strut: type.title })],
    [width - taken, paragraph([make], taken)],
  ]);
};

/** The drawer's opening and clearance, or its outside size; the moisture content of the wood at these sizes; its numbers. */
const outline = (
  { spec }: Drawer,
  unit: Notation,
  numbers: readonly string[],
  { text: size }: TypeSizes,
): TextRun[] => {
  const { space, lip, movement } = spec;
  const number = (value: number) => formatNumber(value, unit).replaceAll(' ', '\u00A0');
  const of = ({ width, height, depth }: { width: number; height: number; depth: number }) =>
    [width, height, depth].map(number).join(' × ');
  const text =
    space.kind === 'size'
      ? `outside size${lip === undefined ? '' : ', lip included'}: ${of(space.size)} ${unitWords(unit)}`
      : `${space.shape === undefined ? 'opening' : 'upright box in the opening as measured:'} ${of(space.opening)} ${unitWords(unit)}; clearance ${number(space.fit.side)} at each side, ${number(space.fit.top)} above, ${number(depthLimit(space).left)} behind`;
  const wood =
    movement === undefined
      ? ''
      : `; made of wood at ${formatPercent(movement.climate.making).replaceAll(' ', '\u00A0')} moisture content`;
  const numbered =
    numbers.length === 0
      ? ''
      : `; on templates also ${numbers.map((number) => number.replace(' ', '\u00A0')).join(', ')}`;
  const built = builtWords(spec).map((phrase) => `; ${speak(phrase, unit).replaceAll(' mm', '\u00A0mm')}`);
  return [
    { text: `${text + wood + numbered}${built.length > 0 ? ';' : ''}`, size, weight: 'regular' },
    ...(built.length > 0 ? [{ text: built.join('').slice(2), size, weight: 'bold' as const }] : []),
  ];
};

/** Advice on the drawer, each piece under a rule. */
const adviceRows = ({ advice }: Drawer, unit: Notation, { note: size }: TypeSizes, width: number): Block[] =>
  advice.map((each) =>
    stack([
      rule(width, 0.8),
      paragraph(
        [
          { text: 'Advice: ', size, weight: 'bold' },
          { text: sentence(each, unit), size, weight: 'regular' },
        ],
        width,
      ),
    ]),
  );

const sectionRows = ({ heading, numbered, lines }: Section, type: TypeSizes, width: number): Block[] => {
  const indent = 1.5 * type.text;
  const title = paragraph([{ text: heading, size: type.heading, weight: 'bold' }], width);
  return lines.map(({ text, figure: number }, i) => {
    const row = beside([
      [
        0,
        paragraph([{ text: numbered ? String(i + 1) : '–', size: type.text, weight: 'bold' }], indent, {
          strut: number === undefined ? 0 : type.figure,
        }),
      ],
      [
        indent,
        paragraph(
          [
            { text, size: type.text, weight: 'regular' },
            ...(number === undefined ? [] : figure(number, type)),
          ],
          width - indent,
          { strut: number === undefined ? 0 : type.figure },
        ),
      ],
    ]);
    return i === 0 ? stack([title, row]) : row;
  });
};

/** The picture of the gap above through the year; none without a climate. */
const benchGap = (drawer: Drawer, unit: Notation, type: TypeSizes, size: Size): Block[] => {
  const shown = gapPicture(drawer, unit, type, size);
  const heading = { text: 'Gap above, through the year', size: type.heading, weight: 'bold' } as const;
  return shown === undefined ? [] : [stack([paragraph([heading], size.width), shown])];
};
