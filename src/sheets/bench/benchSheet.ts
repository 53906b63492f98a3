import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerCut } from '../../drawer/drawerCut.ts';
import type { Part } from '../../drawer/partsList.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import type { Size } from '../../paper/printable.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { formatPercent } from '../../wood/moisture.ts';
import { gapPicture } from '../gapPicture.ts';
import { type Block, beside, paragraph, stack, type TextRun } from '../typeset/block.ts';
import { type Flow, flow } from '../typeset/flow.ts';
import { figure, type TypeSizes, typeSizes } from '../typeset/typeSizes.ts';
import { benchParts } from './benchParts.ts';
import { benchSettings } from './benchSettings.ts';
import { benchSketch } from './benchSketch.ts';
import { benchWords, type Section } from './benchWords.ts';

export interface BenchSheetWish {
  readonly units: Notation;
  /** What a page holds. */
  readonly area: Size;
  /** How the drawer's corners are cut, where that is not by hand. */
  readonly cut?: DrawerCut;
}

/** How many times its usual size the type is set where one page then holds everything, best first, and the last resort. */
const TIMES = [1.6, 1.45, 1.3, 1.2, 1.1, 1];
const LEAST_TIMES = 0.85;

/** The least width of a column, in ems of text. */
const COLUMN = 21;

/** The least height of a sketch that has others beside it, in ems of text. */
const SKETCH = 24;

/** How high pictures are, and how far groups lie apart, in ems of text; a sketch is as high as its place allows unless given. */
interface Spread {
  readonly picture: number;
  readonly sketch?: number;
  readonly gap: number;
}

/** Where all is to stand on one page: the first of these that it fits, in any size of type. */
const ON_ONE_PAGE: readonly Spread[] = [
  { picture: 10, gap: 1.3 },
  { picture: 10, sketch: SKETCH, gap: 1.3 },
  { picture: 12, sketch: 16, gap: 0.9 },
  { picture: 10, sketch: 16, gap: 0.9 },
];
const ON_SEVERAL: Spread = { picture: 16, gap: 1.3 };

/**
 * What to work a drawer from, at the bench: a dimensioned sketch, its parts, the settings, the order of work. The sheet is
 * set out but not held: set out again whenever it is drawn, so that a set of any size takes the memory of one.
 * @param parts the drawer's own
 * @returns one page, its type as large as that allows; several in the usual size where one is too small
 */
export const benchSheet = (drawer: Drawer, parts: readonly Part[], wish: BenchSheetWish): Flow => {
  const sheetAt = (times: number, spread: Spread) => sheet(drawer, parts, wish, typeSizes(times), spread);
  /** The largest type that sets all on one page. What fits in one size fits in every smaller one, so the least tells whether any does. */
  const largest = (spread: Spread): number | undefined => {
    const fits = (times: number) => sheetAt(times, spread).count === 1;
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
  for (const spread of ON_ONE_PAGE) {
    const times = largest(spread);
    if (times !== undefined) return { count: 1, draw: () => sheetAt(times, spread).draw() };
  }
  const { count } = sheetAt(1, ON_SEVERAL);
  return { count, draw: () => sheetAt(1, ON_SEVERAL).draw() };
};

const sheet = (
  drawer: Drawer,
  parts: readonly Part[],
  { units: unit, area, cut }: BenchSheetWish,
  type: TypeSizes,
  spread: Spread,
): Flow => {
  const { width, height } = area;
  const gap = spread.gap * type.text;
  const columns = Math.max(1, Math.floor((width + gap) / (COLUMN * type.text + gap)));
  const column = (width - (columns - 1) * gap) / columns;
  const head = stack([headline(drawer, type, width), paragraph(outline(drawer, unit, type), width)]);
  const later = paragraph([{ text: drawer.spec.name, size: type.heading, weight: 'bold' }], width);
  const list = benchParts(parts, unit, type, width);
  const settings = benchSettings(drawer, cut, unit, type, column);
  const gapAbove = benchGap(drawer, unit, type, { width: column, height: spread.picture * type.text });
  const listHeight = stack(list).height;
  const settingsHeight = stack([stack(settings), ...gapAbove], gap).height;
  // The sketch stands over the settings and the gap where the first page has room for both, or else alone, or on the second page.
  const rest = height - head.height - listHeight - 2 * gap;
  const over = rest - settingsHeight - gap;
  const next = height - later.height - settingsHeight - 2 * gap;
  const usual = columns === 1 ? Math.max(rest, next) : over < SKETCH * type.text ? rest : over;
  const room = Math.min(usual, (spread.sketch ?? Number.POSITIVE_INFINITY) * type.text);
  return flow(
    {
      head: [head, later],
      wide: [list],
      narrow: [
        benchSketch(drawer, unit, type, { width: column, height: room }),
        settings,
        ...gapAbove.map((block) => [block]),
        ...benchWords(drawer, cut, unit).map((section) => sectionRows(section, type, column)),
      ],
      columns,
      gap,
    },
    area,
  );
};

/** The drawer's name, and how many are made of it. */
const headline = ({ spec: { name, count } }: Drawer, type: TypeSizes, width: number): Block => {
  const make: TextRun = { text: `make\u00A0${count}`, size: type.title, weight: 'bold' };
  const taken = textWidth(make.text, make.size, make.weight);
  const share = width - taken - type.title;
  const fits = (size: number) => textWidth(name, size, 'bold') <= share;
  const size = [type.title, 0.75 * type.title].find(fits) ?? 0.6 * type.title;
  return beside([
    [0, paragraph([{ text: name, size, weight: 'bold' }], share, { strut: type.title })],
    [width - taken, paragraph([make], taken)],
  ]);
};

/** The hole that it goes into, or that it has its own size; and how damp the wood is that these sizes are meant for. */
const outline = (
  { spec: { space, movement } }: Drawer,
  unit: Notation,
  { text: size }: TypeSizes,
): TextRun[] => {
  const number = (value: number) => formatNumber(value, unit).replaceAll(' ', '\u00A0');
  const of = ({ width, height, depth }: { width: number; height: number; depth: number }) =>
    [width, height, depth].map(number).join(' × ');
  const text =
    space.kind === 'size'
      ? `of its own size, ${of(space.size)} ${unitWords(unit)}`
      : `opening ${of(space.opening)} ${unitWords(unit)}; free ${number(space.fit.side)} at each side, ${number(space.fit.top)} at the top, ${number(space.fit.behind)} behind`;
  const wood =
    movement === undefined
      ? ''
      : `; made of wood at ${formatPercent(movement.climate.making).replaceAll(' ', '\u00A0')} moisture content`;
  return [{ text: text + wood, size, weight: 'regular' }];
};

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

/** The gap above through the year, its picture of the given size; nothing where no climate is given. */
const benchGap = (drawer: Drawer, unit: Notation, type: TypeSizes, size: Size): Block[] => {
  const shown = gapPicture(drawer, unit, type, size);
  const heading = { text: 'Gap above, through the year', size: type.heading, weight: 'bold' } as const;
  return shown === undefined ? [] : [stack([paragraph([heading], size.width), shown])];
};
