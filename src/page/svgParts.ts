import type { Svg, Path as SvgPath } from '@svgdotjs/svg.js';
import { setAttribute } from './dom.ts';

/** A length in px as it is written in SVG: tenths are finer than any screen. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);

/** Gives a path its data; only where it has changed, for the browser paints anew what is set. */
export const drawPath = (path: SvgPath, data: string): void => setAttribute(path.node, 'd', data);

/** Sizes an SVG in px, with so many px free round it. */
export const sizeSvg = ({ node }: Svg, width: number, height: number, free = 0): void => {
  const [w, h] = [px(width + 2 * free), px(height + 2 * free)];
  setAttribute(node, 'width', w);
  setAttribute(node, 'height', h);
  setAttribute(node, 'viewBox', `${-free} ${-free} ${w} ${h}`);
};
