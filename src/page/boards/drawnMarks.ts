import { svg, type TemplateResult } from 'lit-html';
import type { Drawing, Mark, Path, Point } from '../../drawing/drawing.ts';
import { PENS } from '../../drawing/pens.ts';
import { px } from '../browser/dom.ts';

/** The thinnest line that a screen shows evenly, in px. */
const THINNEST = 0.75;

/** A drawing's marks on the screen, from its upper left corner. @param scale px to each mm of the drawing */
export const drawnMarks = ({ box, marks }: Drawing, scale: number): TemplateResult[] => {
  const at = ([x, y]: Point): string => `${px((x - box.x0) * scale)} ${px((box.y1 - y) * scale)}`;
  const data = (paths: readonly Path[]): string =>
    paths.map(({ points, closed }) => `M${points.map(at).join('L')}${closed ? 'Z' : ''}`).join('');
  return marks.map((mark: Mark): TemplateResult => {
    if (mark.kind === 'text') {
      const [x = '', y = ''] = at(mark.at).split(' ');
      return svg`<text class="words" x=${x} y=${y} text-anchor=${mark.anchor} style="font-size: ${px(mark.size * scale)}px; font-weight: ${mark.weight === 'bold' ? 700 : 400}">${mark.text}</text>`;
    }
    if (mark.kind === 'fill')
      return svg`<path class="area ${mark.role}" d=${data(mark.paths)} fill-opacity=${1 - mark.tone}></path>`;
    const { width, dash = [] } = PENS[mark.pen];
    return svg`<path class="line ${mark.role}" d=${data(mark.paths)} stroke-width=${px(Math.max(THINNEST, width * scale))} stroke-dasharray=${dash.map((length) => px(length * scale)).join(' ')}></path>`;
  });
};
