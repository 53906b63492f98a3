import { type Affine, apply, compose, IDENTITY, translation } from '../../src/drawing/affine.ts';
import { touches } from '../../src/drawing/clip.ts';
import type { Box, Point } from '../../src/drawing/drawing.ts';
import { PENS } from '../../src/drawing/pens.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import type { PrinterError } from '../../src/paper/printerCorrection.ts';
import { mapBox } from '../drawing/mapBox.ts';
import { isInside, overlaps, segmentsOf } from '../paper/ink.ts';

/** By how much a corner of a line's end stands out where a correction makes the line lean, in mm at the most. */
const LEANING = 0.005;

/** What is wrong with a page: ink in the margins before it is printed; labels over one another or over lines after that. */
export const pageFaults = (page: PrintPage, margin: number, error?: PrinterError): string[] => {
  const { width, height } = page;
  const printable = grown({ x0: margin, y0: margin, x1: width - margin, y1: height - margin }, LEANING);
  const sent = onSheet(page, IDENTITY);
  const printed = error === undefined ? sent : onSheet(page, aboutMiddle(page, error));
  const inMargins = sent
    .filter((found) => !isInside(inkBox(found), printable))
    .map((found) => `${found.kind === 'label' ? `"${found.text}"` : `a ${found.kind}`} leaves the margins`);
  return [...inMargins, ...labelFaults(printed)];
};

/** What the printer does to a page: so much across, so much up, and upright lines lean by a sine. */
const aboutMiddle = ({ width, height }: PrintPage, { x, y, skew }: PrinterError): Affine =>
  compose(
    compose(translation(-width / 2, -height / 2), [x, 0, y * skew, y * Math.sqrt(1 - skew ** 2), 0, 0]),
    translation(width / 2, height / 2),
  );

/** Part of a mark as it lies on the sheet. */
type Found =
  | { readonly kind: 'label'; readonly text: string; readonly box: Box }
  | Line
  | { readonly kind: 'ground' | 'area'; readonly box: Box };
interface Line {
  readonly kind: 'line';
  readonly role: string;
  readonly ends: readonly [Point, Point];
  readonly half: number;
}

// Loops, as a page has tens of thousands of lines.
const onSheet = ({ placed }: PrintPage, printed: Affine): Found[] => {
  const found: Found[] = [];
  for (const { drawing, at } of placed) {
    const map = compose(at, printed);
    for (const mark of drawing.marks) {
      if (mark.kind === 'text')
        found.push({ kind: 'label', text: mark.text, box: mapBox(map, textBox(mark)) });
      else if (mark.kind === 'fill')
        for (const { points } of mark.paths)
          found.push({
            kind: mark.tone === 1 ? 'ground' : 'area',
            box: boxOf(points.map((point) => apply(map, point))),
          });
      else
        for (const path of mark.paths)
          for (const [a, b] of segmentsOf(path))
            found.push({
              kind: 'line',
              role: mark.role,
              ends: [apply(map, a), apply(map, b)],
              half: PENS[mark.pen].width / 2,
            });
    }
  }
  return found;
};

/** Half the width of the widest line, or more. */
const WIDEST = 0.3;

/** Labels are looked up by level bands of a page this high, or each line would have to look at every label. */
const BAND = 5;

const bandOf = (y: number): number => Math.floor(y / BAND);

/** Labels over labels, and over lines but those that a white ground under the label hides. */
const labelFaults = (found: readonly Found[]): string[] => {
  const grounds = found.flatMap((each, order) => (each.kind === 'ground' ? { ...each, order } : []));
  const labels = found.flatMap((each, order) => {
    if (each.kind !== 'label') return [];
    const ground = grounds.findLast((under) => under.order < order && isInside(each.box, under.box));
    return { ...each, order, ground: ground?.order ?? -1, crossed: new Set<Line>() };
  });
  const labelsIn = new Map<number, typeof labels>();
  for (const label of labels)
    for (let band = bandOf(label.box.y0 - WIDEST); band <= bandOf(label.box.y1 + WIDEST); band++) {
      const there = labelsIn.get(band);
      if (there === undefined) labelsIn.set(band, [label]);
      else there.push(label);
    }
  found.forEach((line, order) => {
    if (line.kind !== 'line') return;
    const [a, b] = line.ends;
    for (let band = bandOf(Math.min(a[1], b[1])); band <= bandOf(Math.max(a[1], b[1])); band++)
      for (const { box, ground, crossed } of labelsIn.get(band) ?? [])
        if (order > ground && touches(grown(box, line.half - 1e-6), a, b)) crossed.add(line);
  });
  return labels.flatMap(({ text, box, order, crossed }) => [
    ...labels
      .filter((other) => other.order > order && overlaps(box, other.box))
      .map((other) => `"${text}" lies over "${other.text}"`),
    ...[...crossed].map(({ role }) => `"${text}" lies over a line of ${role}`),
  ]);
};

/** The box round what is painted. A line ends where its points do, and is half its width wide on both sides. */
const inkBox = (found: Found): Box => {
  if (found.kind !== 'line') return found.box;
  const [[ax, ay], [bx, by]] = found.ends;
  const length = Math.hypot(bx - ax, by - ay) || 1;
  const dx = (found.half * Math.abs(by - ay)) / length;
  const dy = (found.half * Math.abs(bx - ax)) / length;
  return {
    x0: Math.min(ax, bx) - dx,
    y0: Math.min(ay, by) - dy,
    x1: Math.max(ax, bx) + dx,
    y1: Math.max(ay, by) + dy,
  };
};

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
