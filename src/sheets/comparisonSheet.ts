import type { Cabinet } from '../drawer/arrangement/cabinetFront.ts';
import type { CornerLetter } from '../drawer/cornerLetters.ts';
import type { Family } from '../drawer/drawer.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { glueArea } from '../joint/gauges.ts';
import { type Joint, meanPin, meanTail } from '../joint/joint.ts';
import { kindOf } from '../joint/kinds/kinds.ts';
import type { Size } from '../paper/printable.ts';
import { EPSILON } from '../units/epsilon.ts';
import { areaNumber, areaUnit, formatLength } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { elevation } from './elevation.ts';
import { type LipReach, sideView } from './sideView.ts';
import { SMALL } from './template/lettering.ts';
import { type Block, beside, paragraph, picture, space, stack } from './typeset/block.ts';

/** A corner of one drawer of a set. */
export interface ComparedCorner {
  readonly name: string;
  readonly count: number;
  readonly joint: Joint;
  /** Absent where the front has none. */
  readonly lip?: LipReach;
  /** Which of the front corners it is, where the two differ. */
  readonly corner?: CornerLetter;
}

export interface ComparisonOptions {
  readonly title: string;
  readonly family: Pick<Family, 'target' | 'spread'>;
  /** The fronts of the compared drawers, by their places in the rows; absent for corners without drawers. */
  readonly cabinet?: Cabinet;
  readonly units: Notation;
  /** Usable area of a page, mm. */
  readonly area: Size;
}

/** A row for each drawer, by which it is numbered. */
const comparedDrawers = (rows: readonly ComparedCorner[]): ComparedCorner[] =>
  rows.filter(({ corner }) => corner !== 'B');

/** The place of each row's drawer among them, from 0: a corner B is its drawer's second row. */
const placesOf = (rows: readonly ComparedCorner[]): number[] => {
  let place = -1;
  return rows.map(({ corner }) => {
    if (corner !== 'B') place++;
    return place;
  });
};

const TITLE = 6;
/** Gap between parts of a sheet, and between two views, mm. */
const GAP = 6;
/** Gap between a view and its figures, mm. */
const BESIDE = 3;
/** Scales of corners, as 1 : n: those that show a joint well, and those for boards that are too wide for them. */
const SCALES = { usual: [2, 2.5, 3, 4, 5], small: [6, 8, 10, 15, 20, 30, 50, 100] };
/** Least length of the side beyond the joint, on the sheet and at full size, mm. */
const BEYOND = { small: 5, full: 40 };
/** Least width of a corner's figures, mm. */
const FIGURES = 40;

/**
 * The comparison sheets of a set: its fronts in rows and columns; every front corner from the side, to one scale, with its
 * figures; then the narrowest and the widest corner side by side at full size, where a page holds both.
 * @param rows in the plan's order, at least one
 */
export const comparison = (rows: readonly ComparedCorner[], options: ComparisonOptions): Drawing[] => [
  ...together(rows, options),
  ...extremes(rows, options),
];

const together = (rows: readonly ComparedCorner[], options: ComparisonOptions): Drawing[] => {
  const { title, family, cabinet, units, area } = options;
  const head = heading(title, familyWords(family, units), area.width);
  const first = cabinet === undefined ? [head] : [head, elevation(comparedDrawers(rows), cabinet, area)];
  const room = (blocks: readonly Block[]) => area.height - stack(blocks, GAP).height - GAP;
  const cornersAt = (n: number) => {
    const scale = 1 / n;
    const note = paragraph(
      [
        {
          text: `Front corners from the side, the front at the left, 1\u00A0:\u00A0${n}`,
          size: SMALL,
          weight: 'bold',
        },
      ],
      area.width,
    );
    const lines = cornerLines(rows, scale, options);
    return { note, lines, pages: paged(lines, room([...first, note]), room([head, note])) };
  };
  type Laid = ReturnType<typeof cornersAt>;
  const fits = ({ note, lines }: Laid) => lines.every(({ height }) => height <= room([head, note]) + EPSILON);
  const usual = SCALES.usual.map(cornersAt).filter(fits);
  const least = Math.min(...usual.map(({ pages }) => pages.length));
  const laid =
    usual.find(({ pages }) => pages.length === least) ??
    SCALES.small.map(cornersAt).find(fits) ??
    cornersAt(SCALES.small.at(-1) ?? 1);
  return laid.pages.map((lines, i) =>
    sheet(
      stack(
        [...(i === 0 ? first : [head]), ...(lines.length > 0 ? [laid.note, stack(lines, GAP)] : [])],
        GAP,
      ),
      area,
    ),
  );
};

/** The corners with their figures, as many beside each other as there is room for. */
const cornerLines = (
  rows: readonly ComparedCorner[],
  scale: number,
  { units, area }: ComparisonOptions,
): Block[] => {
  const seen = Math.max(...rows.map(({ joint }) => jointReach(joint))) * scale + BEYOND.small;
  const columns = Math.max(1, Math.floor((area.width + GAP) / (seen + BESIDE + FIGURES + GAP)));
  const cell = (area.width + GAP) / columns;
  const places = placesOf(rows);
  const shown = rows.map((row, i) =>
    beside([
      [0, picture(sideView(row.joint, seen / scale, scale, row.lip))],
      [seen + BESIDE, label(row, places[i] ?? i, units, cell - seen - BESIDE - GAP)],
    ]),
  );
  return Array.from({ length: Math.ceil(shown.length / columns) }, (_, line) =>
    beside(shown.slice(line * columns, (line + 1) * columns).map((block, i) => [i * cell, block])),
  );
};

/** Lines on pages of which the first has less room, and is left without any where its room is too small for the first line. */
const paged = (lines: readonly Block[], first: number, later: number): Block[][] => {
  const pages: Block[][] = [[]];
  let left = first;
  for (const line of lines) {
    if (line.height > left + EPSILON) {
      pages.push([]);
      left = later;
    }
    pages.at(-1)?.push(line);
    left -= line.height + GAP;
  }
  return pages;
};

/** Reach of a corner's joint seen from the side, mm. */
const jointReach = (joint: Joint): number => kindOf(joint).sideView(joint).reach;

/** A page, whose marks are made when it is drawn: those of a large set fill a hundred pages. */
const sheet = (block: Block, { width, height }: Size): Drawing => ({
  box: { x0: 0, y0: 0, x1: width, y1: height },
  get marks() {
    return block.marks(0, height);
  },
});

const heading = (title: string, text: string, width: number): Block =>
  stack([
    paragraph([{ text: title, size: TITLE, weight: 'bold' }], width),
    paragraph([{ text, size: SMALL, weight: 'regular' }], width),
  ]);

const familyWords = ({ target, spread }: ComparisonOptions['family'], units: Notation): string =>
  `The set’s tail width is ${measure(target, units)}; its widest tail is ${spread.toFixed(2)} times its narrowest.`;

const measure = (value: number, units: Notation): string =>
  formatLength(value, units).replaceAll(' ', '\u00A0');

/** A drawer's number and name, and below it `4 tails of 21.4 mm, pins 5 mm, 4.3 : 1, glue 31 cm²`. */
const label = (
  { name, count, joint, corner }: ComparedCorner,
  index: number,
  units: Notation,
  width: number,
): Block => {
  const tail = meanTail(joint);
  const pin = meanPin(joint);
  const mean = joint.even ? '' : 'on average ';
  const text = [
    `${joint.tails.length} ${joint.tails.length === 1 ? 'tail' : 'tails'} of ${mean}${measure(tail, units)}`,
    `pins ${measure(pin, units)}`,
    `${(tail / pin).toFixed(1)}\u00A0:\u00A01`,
    `glue ${units === 'mm' ? (glueArea(joint) / 100).toFixed(0) : areaNumber(glueArea(joint), units)}\u00A0${areaUnit(units).replaceAll(' ', '\u00A0')}`,
  ].join(', ');
  return stack([
    paragraph(
      [
        {
          text: `${index + 1} ${name}${corner === undefined ? '' : `, corner ${corner}`}${count > 1 ? `, quantity ${count}` : ''}`,
          size: SMALL,
          weight: 'bold',
        },
      ],
      width,
    ),
    paragraph([{ text, size: SMALL, weight: 'regular' }], width),
  ]);
};

/** The narrowest and the widest corner side by side at full size, where they differ and one page holds both. */
const extremes = (rows: readonly ComparedCorner[], { units, area }: ComparisonOptions): Drawing[] => {
  const places = placesOf(rows);
  const ordered = rows
    .map((row, i) => ({ ...row, index: places[i] ?? i }))
    .toSorted((a, b) => a.joint.width - b.joint.width);
  const ends = [ordered[0], ordered.at(-1)].filter((row) => row !== undefined);
  const [narrow, wide] = ends;
  if (narrow === undefined || wide === undefined || narrow.joint.width === wide.joint.width) return [];
  const foot = Math.max(...ends.map(({ lip }) => lip?.bottom ?? 0));
  const columns = ends.map((row) => {
    const length = jointReach(row.joint) + BEYOND.full;
    const { box, marks } = sideView(row.joint, length, 1, row.lip);
    // Both sides stand on one line, whatever lips hang below it.
    const view = picture({ box: { ...box, y0: -foot - PENS.medium.width / 2 }, marks });
    return { length, label: label(row, row.index, units, length), view };
  });
  const head = heading(
    'Narrowest and widest, full size',
    'From the side, the front at the left.',
    area.width,
  );
  const height = Math.max(...columns.map((column) => column.label.height + GAP / 2 + column.view.height));
  const width = columns.reduce((sum, { length }) => sum + length, GAP);
  if (width > area.width || head.height + GAP + height > area.height) return [];
  let left = 0;
  const set = columns.map(({ length, label: figures, view }): readonly [number, Block] => {
    const at = left;
    left += length + GAP;
    const above = height - figures.height - GAP / 2 - view.height;
    return [at, stack([space(above), figures, space(GAP / 2), view])];
  });
  return [sheet(stack([head, beside(set)], GAP), area)];
};
