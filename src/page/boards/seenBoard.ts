import { svg, type TemplateResult } from 'lit-html';
import type { Box, Point } from '../../drawing/drawing.ts';
import type { BoardView } from '../../sheets/boards/boardView.ts';
import { drawBoard } from '../../sheets/boards/drawBoard.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { px } from '../browser/dom.ts';
import { drawnMarks } from './drawnMarks.ts';

/** A board on the screen: its picture, and where on it a point of the board is, in px. */
export interface BoardPicture {
  readonly width: number;
  readonly height: number;
  readonly drawn: TemplateResult;
  readonly at: (point: Point) => Point;
  /** A box of the board as an SVG rectangle. */
  readonly rect: (box: Box) => {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

/** px to each mm of a drawing for paper, which makes its smallest letters legible (CSS: 96 px to the inch). */
const PX = 96 / 25.4;

/** @param scale px to each mm of the board @param letters how large letters are, to the usual size */
export const boardPicture = (view: BoardView, scale: number, letters: number): BoardPicture => {
  const paper = PX * letters;
  const { drawing } = drawBoard(view, { scale: scale / paper });
  const { box } = drawing;
  const { x0, y0 } = extentsOf(view.plank.outline);
  const at = ([x, y]: Point): Point => [(x - x0) * scale - box.x0 * paper, box.y1 * paper - (y - y0) * scale];
  const rect = (of: Box) => {
    const [x, y] = at([of.x0, of.y1]);
    return { x, y, width: (of.x1 - of.x0) * scale, height: (of.y1 - of.y0) * scale };
  };
  const path = (points: readonly Point[]): string =>
    `M${points.map((point) => at(point).map(px).join(' ')).join('L')}Z`;
  const parts = view.layout.blanks.map(({ x, y, length, width }) => {
    const part = rect({ x0: x, y0: y, x1: x + length, y1: y + width });
    return svg`<rect class="part" x=${px(part.x)} y=${px(part.y)} width=${px(part.width)} height=${px(part.height)}></rect>`;
  });
  const drawn = svg`<path class="wood" d=${path(view.plank.outline)}></path>
    ${parts}
    ${drawnMarks(drawing, paper)}`;
  return {
    width: (box.x1 - box.x0) * paper,
    height: (box.y1 - box.y0) * paper,
    drawn,
    at,
    rect,
  };
};
