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
import { sideView } from './sideView.ts';
import { SMALL } from './template/lettering.ts';
import { type Block, beside, paragraph, picture, space, stack } from './typeset/block.ts';

/** A corner of one drawer of a set. */
export interface ComparedCorner {
  readonly name: string;
  readonly count: number;
  readonly joint: Joint;
}

export interface ComparisonOptions {
  readonly title: string;
  readonly family: Pick<Family, 'target' | 'spread'>;
  readonly units: Notation;
  /** Usable area of a page, mm. */
  readonly area: Size;
}

const TITLE = 6;
/** Gap between a view and its figures, and between two views at full size, mm. */
const GAP = 6;
/** Gap between drawers, mm of the cabinet. */
const REVEAL = 3;
const LARGEST_SCALE = 0.5;
/** Width of the stack as a share of a page's, and the largest share of the stack for its joints. */
const STACK = 0.32;
const JOINTS = 0.7;
/** Length of the side beyond the joint at full size, mm. */
const BEYOND = 40;

/**
 * The comparison sheets of a set: every corner from the side, stacked in the order of the cabinet, to one scale, with its
 * figures; then the narrowest and the widest side by side at full size, where a page holds both.
 * @param rows from the top of the cabinet down, at least one
 */
export const comparison = (rows: readonly ComparedCorner[], options: ComparisonOptions): Drawing[] => [
  ...stacked(rows, options),
  ...extremes(rows, options),
];

const stacked = (
  rows: readonly ComparedCorner[],
  { title, family, units, area }: ComparisonOptions,
): Drawing[] => {
  const head = heading(title, familyWords(family, units), area.width);
  const room = area.height - head.height - GAP;
  const seen = STACK * area.width;
  const drawn = rows.map(({ joint, ...row }) => ({
    joint,
    label: label({ joint, ...row }, units, area.width - seen - GAP),
  }));
  const most = (of: (row: (typeof drawn)[number]) => number) => Math.max(...drawn.map(of));
  const total = drawn.reduce((sum, { joint }) => sum + joint.width + REVEAL, 0);
  const lines = rows.length * PENS.medium.width;
  const scale = Math.min(
    // A tall set continues on further pages where one scale would be too small for its figures.
    Math.max(
      Math.min(LARGEST_SCALE, (room - lines) / total),
      most((row) => row.label.height / row.joint.width),
    ),
    (JOINTS * seen) / most(({ joint }) => jointReach(joint)),
    (room - PENS.medium.width) / most(({ joint }) => joint.width),
  );
  const pages: Block[][] = [];
  let left = 0;
  for (const { joint, label: figures } of drawn) {
    const view = picture(sideView(joint, seen / scale, scale));
    const block = beside([
      [0, view],
      [seen + GAP, stack([space(Math.max(0, view.height - figures.height) / 2), figures])],
    ]);
    if (pages.length === 0 || block.height > left + EPSILON) {
      pages.push([]);
      left = room;
    }
    pages.at(-1)?.push(block);
    left -= block.height + REVEAL * scale;
  }
  return pages.map((page) => sheet(stack([head, stack(page, REVEAL * scale)], GAP), area));
};

/** Reach of a corner's joint seen from the side, mm. */
const jointReach = (joint: Joint): number => kindOf(joint).sideView(joint).reach;

const sheet = (block: Block, { width, height }: Size): Drawing => ({
  box: { x0: 0, y0: 0, x1: width, y1: height },
  marks: block.marks(0, height),
});

const heading = (title: string, text: string, width: number): Block =>
  stack([
    paragraph([{ text: title, size: TITLE, weight: 'bold' }], width),
    paragraph([{ text, size: SMALL, weight: 'regular' }], width),
  ]);

const familyWords = ({ target, spread }: ComparisonOptions['family'], units: Notation): string =>
  `Target: tails of ${measure(target, units)}. The widest mean tail is ${spread.toFixed(2)} times the narrowest.`;

const measure = (value: number, units: Notation): string =>
  formatLength(value, units).replaceAll(' ', '\u00A0');

/** A drawer's name, and below it `4 tails of 21.4 mm, pins 5 mm, 4.3 : 1, glue 31 cm²`. */
const label = ({ name, count, joint }: ComparedCorner, units: Notation, width: number): Block => {
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
    paragraph([{ text: count > 1 ? `${name} × ${count}` : name, size: SMALL, weight: 'bold' }], width),
    paragraph([{ text, size: SMALL, weight: 'regular' }], width),
  ]);
};

/** The narrowest and the widest corner side by side at full size, where they differ and one page holds both. */
const extremes = (rows: readonly ComparedCorner[], { units, area }: ComparisonOptions): Drawing[] => {
  const ordered = rows.toSorted((a, b) => a.joint.width - b.joint.width);
  const ends = [ordered[0], ordered.at(-1)].filter((row) => row !== undefined);
  const [narrow, wide] = ends;
  if (narrow === undefined || wide === undefined || narrow.joint.width === wide.joint.width) return [];
  const columns = ends.map((row) => {
    const length = jointReach(row.joint) + BEYOND;
    return { length, label: label(row, units, length), view: picture(sideView(row.joint, length, 1)) };
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
