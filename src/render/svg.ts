import { type G, SVG, withWindow } from '@svgdotjs/svg.js';
import { type Affine, apply } from '../drawing/affine.ts';
import type { Drawing, FillMark, Mark, Path, PenName, StrokeMark, TextMark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { shownText } from '../drawing/shownText.ts';
import type { Fonts } from './fonts.ts';
import { outlineText } from './outlines.ts';
import { svgNumber } from './svgNumber.ts';

/** Title and description of an SVG file. */
export interface SvgMeta {
  readonly title: string;
  readonly description?: string;
}

/** Fonts and window that an SVG is made with. */
export interface SvgTools {
  readonly fonts: Fonts;
  /** The browser's window, or the one of `svgWindow.ts`. */
  readonly window: Window;
}

/**
 * Writes one drawing as an SVG file at full size, in mm from its top left corner and y downward, without transforms: a
 * group for each role, in the order in which the drawing first has them, and in it a path for each fill, for each pen
 * and for each weight of text. Letters are outlines, so that they look the same everywhere; their text is the path's
 * `aria-label`. Numbers are rounded to 0.0001, those within a letter to 0.001.
 */
export const renderSvg = (drawing: Drawing, { title, description }: SvgMeta, tools: SvgTools): string =>
  withWindow(tools.window, () => {
    const { x0, y0, x1, y1 } = drawing.box;
    const [width, height] = [svgNumber(x1 - x0), svgNumber(y1 - y0)];
    const map: Affine = [1, 0, 0, -1, -x0, y1];
    const svg = SVG().attr({ width: `${width}mm`, height: `${height}mm`, viewBox: `0 0 ${width} ${height}` });
    svg.element('title').words(shownText(title));
    if (description !== undefined) svg.element('desc').words(shownText(description));
    for (const [role, marks] of groupBy(drawing.marks, (mark) => mark.role)) {
      const group = svg.group().addClass(role);
      for (const mark of marks) if (mark.kind === 'fill') drawFill(group, mark, map);
      for (const [pen, strokes] of groupBy(marks.filter(isStroke), (mark) => mark.pen))
        drawStrokes(group, pen, strokes, map);
      for (const [, texts] of groupBy(marks.filter(isText), (mark) => mark.weight))
        drawTexts(group, texts, map, tools.fonts);
    }
    return `${svg.node.outerHTML}\n`;
  });

const isStroke = (mark: Mark): mark is StrokeMark => mark.kind === 'stroke';
const isText = (mark: Mark): mark is TextMark => mark.kind === 'text';

const groupBy = <T, K>(items: readonly T[], keyOf: (item: T) => K): Map<K, T[]> => {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return groups;
};

const drawFill = (group: G, { tone, paths }: FillMark, map: Affine): void => {
  group.element('path').attr({ fill: greyOf(tone), d: pathData(paths, map) });
};

/** A tone, 0 black to 1 paper, as a colour of SVG and of a canvas. */
export const greyOf = (tone: number): string => {
  const grey = Math.round(tone * 255);
  return `rgb(${grey},${grey},${grey})`;
};

const drawStrokes = (group: G, name: PenName, strokes: readonly StrokeMark[], map: Affine): void => {
  const { width, dash } = PENS[name];
  group.element('path').attr({
    fill: 'none',
    stroke: 'black',
    'stroke-width': String(width),
    ...(dash && { 'stroke-dasharray': dash.join(' ') }),
    d: strokes.map(({ paths }) => pathData(paths, map)).join(''),
  });
};

const drawTexts = (group: G, texts: readonly TextMark[], map: Affine, fonts: Fonts): void => {
  group.element('path').attr({
    role: 'img',
    'aria-label': texts.map(({ text }) => shownText(text)).join('; '),
    d: texts.map((mark) => outlineText(mark, map, fonts)).join(''),
  });
};

/** Lines as SVG path data, mapped by `map`. */
export const pathData = (paths: readonly Path[], map: Affine): string => {
  let data = '';
  for (const { points, closed } of paths) {
    let command = 'M';
    for (const point of points) {
      const to = apply(map, point);
      data += `${command}${svgNumber(to[0])} ${svgNumber(to[1])}`;
      command = 'L';
    }
    if (closed === true) data += 'Z';
  }
  return data;
};
