import { type Affine, compose } from '../drawing/affine.ts';
import type { Mark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import type { PrintPage } from '../drawing/printPage.ts';
import type { Fonts } from './fonts.ts';
import { outlineText } from './outlines.ts';
import { greyOf, pathData } from './svg.ts';

/** How a path is painted, by attributes of SVG; lengths in mm. */
export type PathLook = Readonly<
  Partial<Record<'fill' | 'stroke' | 'stroke-width' | 'stroke-dasharray', string>>
>;

/** Marks in a row that look the same, as SVG path data in mm from the page's top left corner. */
export interface PagePath {
  readonly look: PathLook;
  readonly data: string;
}

/** Path data that is longer is divided, so that no path takes a browser long. */
const LONGEST = 1 << 16;

/** All that is drawn on a page, in the order of painting: what SVG or a canvas shows of it. Letters are outlines. */
export const pagePaths = ({ height, placed }: PrintPage, fonts: Fonts): PagePath[] => {
  const toPage: Affine = [1, 0, 0, -1, 0, height];
  const paths: { readonly look: PathLook; data: string }[] = [];
  for (const { drawing, at } of placed) {
    const map = compose(at, toPage);
    for (const mark of drawing.marks) {
      const look = lookOf(mark);
      const data = mark.kind === 'text' ? outlineText(mark, map, fonts) : pathData(mark.paths, map);
      const last = paths.at(-1);
      if (last?.look === look && last.data.length < LONGEST) last.data += data;
      else paths.push({ look, data });
    }
  }
  return paths;
};

const TEXT: PathLook = { fill: 'black' };

const STROKES = Object.fromEntries(
  Object.entries(PENS).map(([name, { width, dash }]): [string, PathLook] => [
    name,
    {
      fill: 'none',
      stroke: 'black',
      'stroke-width': String(width),
      ...(dash && { 'stroke-dasharray': dash.join(' ') }),
    },
  ]),
) as Record<keyof typeof PENS, PathLook>;

const lookOf = (mark: Mark): PathLook => {
  switch (mark.kind) {
    case 'fill':
      return { fill: greyOf(mark.tone) };
    case 'stroke':
      return STROKES[mark.pen];
    case 'text':
      return TEXT;
  }
};
