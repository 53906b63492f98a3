import { type Affine, apply, compose, IDENTITY, translation } from '../../src/drawing/affine.ts';
import { touches } from '../../src/drawing/clip.ts';
import type { Box, Mark, Path, Point } from '../../src/drawing/drawing.ts';
import type { Page } from '../../src/drawing/page.ts';
import { PENS } from '../../src/drawing/pens.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import type { PrinterError } from '../../src/paper/correction.ts';
import { mapBox } from '../drawing/mapBox.ts';
import { isInside, overlaps, segmentsOf } from '../paper/ink.ts';

/** By how much a corner of a line's end stands out where a correction makes the line lean, in mm at the most. */
const LEANING = 0.005;

/** What is wrong with a page: ink in the margins before it is printed; labels over one another or over lines after that. */
export const pageFaults = (page: Page, margin: number, error?: PrinterError): string[] => {
  const { width, height, placed } = page;
  const printable = grown({ x0: margin, y0: margin, x1: width - margin, y1: height - margin }, LEANING);
  const printed = error === undefined ? IDENTITY : aboutMiddle(page, error);
  const inMargins = placed.flatMap(({ drawing, at }) =>
    drawing.marks
      .filter((mark) => !isInside(inkBox(mark, at), printable))
      .map(
        (mark) =>
          `${mark.kind === 'text' ? `"${mark.text}"` : `a ${mark.kind} of ${mark.role}`} leaves the margins`,
      ),
  );
  return [
    ...inMargins,
    ...labelFaults(placed.flatMap(({ drawing, at }) => onSheet(drawing.marks, compose(at, printed)))),
  ];
};

/** What the printer does to a page: so much across, so much up, and upright lines lean by a sine. */
const aboutMiddle = ({ width, height }: Page, { x, y, skew }: PrinterError): Affine =>
  compose(
    compose(translation(-width / 2, -height / 2), [x, 0, y * skew, y * Math.sqrt(1 - skew ** 2), 0, 0]),
    translation(width / 2, height / 2),
  );

/** A mark as it lies on the sheet. */
type Found =
  | { readonly kind: 'label'; readonly text: string; readonly box: Box }
  | {
      readonly kind: 'line';
      readonly role: string;
      readonly ends: readonly [Point, Point];
      readonly half: number;
    }
  | { readonly kind: 'ground'; readonly box: Box };

const onSheet = (marks: readonly Mark[], map: Affine): Found[] =>
  marks.flatMap((mark): Found[] => {
    if (mark.kind === 'text') return [{ kind: 'label', text: mark.text, box: mapBox(map, textBox(mark)) }];
    if (mark.kind === 'fill')
      return mark.tone === 1
        ? mark.paths.map(({ points }) => ({
            kind: 'ground',
            box: boxOf(points.map((point) => apply(map, point))),
          }))
        : [];
    const half = PENS[mark.pen].width / 2;
    return mark.paths
      .flatMap((path) => mappedSegments(path, map))
      .map((ends) => ({ kind: 'line', role: mark.role, ends, half }));
  });

/** Half the width of the widest line, or more. */
const WIDEST = 0.3;

/** Lines are looked up by level bands of a page this high, or each label would have to look at every line. */
const BAND = 5;

const bandsOf = (y0: number, y1: number): number[] => {
  const first = Math.floor(y0 / BAND);
  return Array.from({ length: Math.floor(y1 / BAND) - first + 1 }, (_, i) => first + i);
};

/** Labels over labels, and over lines but those that a white ground under the label hides. */
const labelFaults = (found: readonly Found[]): string[] => {
  const ordered = found.map((each, order) => ({ ...each, order }));
  const labels = ordered.filter((each) => each.kind === 'label');
  const lines = ordered.filter((each) => each.kind === 'line');
  const grounds = ordered.filter((each) => each.kind === 'ground');
  const linesIn = new Map<number, typeof lines>();
  for (const line of lines) {
    const [[, a], [, b]] = line.ends;
    for (const band of bandsOf(Math.min(a, b), Math.max(a, b))) {
      const there = linesIn.get(band);
      if (there === undefined) linesIn.set(band, [line]);
      else there.push(line);
    }
  }
  return labels.flatMap(({ text, box, order }) => {
    const ground = grounds.findLast((each) => each.order < order && isInside(box, each.box))?.order ?? -1;
    const over = labels.filter((other) => other.order > order && overlaps(box, other.box));
    const near = grown(box, WIDEST);
    const crossed = new Set(
      bandsOf(near.y0, near.y1)
        .flatMap((band) => linesIn.get(band) ?? [])
        .filter(
          ({ order: drawn, half, ends: [a, b] }) => drawn > ground && touches(grown(box, half - 1e-6), a, b),
        ),
    );
    return [
      ...over.map((other) => `"${text}" lies over "${other.text}"`),
      ...[...crossed].map(({ role }) => `"${text}" lies over a line of ${role}`),
    ];
  });
};

/** The box round what a mark paints. A line ends where its points do, and is half its width wide on both sides. */
const inkBox = (mark: Mark, map: Affine): Box => {
  if (mark.kind === 'text') return mapBox(map, textBox(mark));
  if (mark.kind === 'fill')
    return boxOf(mark.paths.flatMap(({ points }) => points.map((point) => apply(map, point))));
  const half = PENS[mark.pen].width / 2;
  return boxOf(
    mark.paths.flatMap((path) =>
      mappedSegments(path, map).flatMap(([[ax, ay], [bx, by]]): Point[] => {
        const length = Math.hypot(bx - ax, by - ay) || 1;
        const [dx, dy] = [(half * (ay - by)) / length, (half * (bx - ax)) / length];
        return [
          [ax + dx, ay + dy],
          [ax - dx, ay - dy],
          [bx + dx, by + dy],
          [bx - dx, by - dy],
        ];
      }),
    ),
  );
};

const mappedSegments = (path: Path, map: Affine): (readonly [Point, Point])[] =>
  segmentsOf(path).map(([a, b]) => [apply(map, a), apply(map, b)]);

const boxOf = (points: readonly Point[]): Box => ({
  x0: Math.min(...points.map(([x]) => x)),
  y0: Math.min(...points.map(([, y]) => y)),
  x1: Math.max(...points.map(([x]) => x)),
  y1: Math.max(...points.map(([, y]) => y)),
});

const grown = ({ x0, y0, x1, y1 }: Box, by: number): Box => ({
  x0: x0 - by,
  y0: y0 - by,
  x1: x1 + by,
  y1: y1 + by,
});
