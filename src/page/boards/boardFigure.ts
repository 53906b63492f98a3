import { html, nothing, svg, type TemplateResult } from 'lit-html';
import type { Box, Point } from '../../drawing/drawing.ts';
import { defectLetter } from '../../sheets/boards/boardView.ts';
import type { Plank } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { px } from '../browser/dom.ts';
import { FINGER } from '../corner/touchTargets.ts';
import { boardSizes, resized } from '../model/boards/boardShape.ts';
import type { Grip, Held } from '../model/boards/heldBoard.ts';
import { type PartsShown, partGrips } from './partGrips.ts';
import type { BoardPicture } from './seenBoard.ts';

/** What is shown of one board beside its picture. */
export interface FigureState {
  /** Its place among the plan's entries. */
  readonly board: number;
  readonly plank: Plank;
  readonly name: string;
  readonly isChosen: boolean;
  /** Whether what is drawn in it is of the board before it was changed. */
  readonly isOld: boolean;
  readonly defect: number | undefined;
  readonly isDrawing: boolean;
  readonly held: Held | undefined;
  /** The parts that come out of it; absent where what is shown is of other parts. */
  readonly parts: PartsShown | undefined;
  readonly units: Notation;
  readonly choose: () => void;
}

/** A board as it lies. The chosen one has its right end, its upper edge and its defects to be held. */
export const boardFigure = (picture: BoardPicture, state: FigureState): TemplateResult => {
  const { board, plank, name, isChosen, isOld, isDrawing, held, parts, choose } = state;
  const { width, height, drawn, at, rect } = picture;
  const on = extentsOf(plank.outline);
  const surface = rect(on);
  return html`<svg class="stock-board ${isOld ? 'old' : ''} ${isChosen ? 'chosen' : ''}" role="group" data-plank=${parts?.plank ?? nothing} aria-label="${name} as it lies"
    width=${px(width)} height=${px(height)} viewBox="0 0 ${px(width)} ${px(height)}" @click=${isChosen ? nothing : chooseBeside(choose)}>
    <g aria-hidden="true">${drawn}</g>
    ${parts === undefined ? nothing : partGrips(picture, parts)}
    ${
      isChosen
        ? svg`${plank.defects.map((_, i) => defectGrip(picture, state, i))}
          ${sizeGrip(picture, state, 'length', [on.x1, (on.y0 + on.y1) / 2])}
          ${sizeGrip(picture, state, 'width', [on.x0 + (on.x1 - on.x0) / 3, heightAt(plank, on.x0 + (on.x1 - on.x0) / 3)])}
          ${isDrawing ? svg`<rect class="surface" data-grip="drawing" data-board=${board} x=${px(surface.x)} y=${px(surface.y)} width=${px(surface.width)} height=${px(surface.height)}></rect>` : nothing}`
        : nothing
    }
    ${held === undefined ? nothing : heldShape(held, state, at, rect)}
  </svg>`;
};

/** A click on what can be held is not one on the board. */
const chooseBeside =
  (choose: () => void) =>
  ({ target }: Event): void => {
    if (target instanceof Element && target.closest('[data-grip]') === null) choose();
  };

/** How high a board reaches at one x, of the lines that bound it above. */
const heightAt = ({ outline }: Plank, x: number): number =>
  Math.max(
    ...outline.flatMap(([ax, ay], i) => {
      const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay];
      return ax > x === bx > x ? [] : [ay + ((by - ay) * (x - ax)) / (bx - ax)];
    }),
    extentsOf(outline).y0,
  );

/** Where a finger takes hold, round a point. */
const target = (x: number, y: number): TemplateResult =>
  svg`<rect class="touch" x=${px(x - FINGER / 2)} y=${px(y - FINGER / 2)} width=${FINGER} height=${FINGER}></rect>`;

/** How far above a picture the grip of the upper edge is, clear of what is written there, in px. */
const ABOVE = 4;

/** The right end or the upper edge. */
const sizeGrip = (
  { at, rect }: BoardPicture,
  { board, plank, units }: FigureState,
  grip: 'length' | 'width',
  place: Point,
): TemplateResult => {
  const [x, y] = at(place);
  const { length, left, right } = boardSizes(plank.outline);
  const on = rect(extentsOf(plank.outline));
  const value = grip === 'length' ? length : Math.max(left, right);
  const isLength = grip === 'length';
  const [d, hit] = isLength
    ? [`M${px(x + 3)} ${px(y - 7)}l9 7l-9 7z`, `M${px(x)} ${px(on.y)}v${px(on.height)}`]
    : [`M${px(x - 7)} -${ABOVE}l7 -9l7 9z`, `M${px(on.x)} ${px(y)}h${px(on.width)}`];
  return svg`<g class="handle ${isLength ? 'along-x' : ''}" role="slider" tabindex="0" data-grip=${grip} data-board=${board}
    aria-label="${plank.name}, ${grip}" aria-valuenow=${px(value)} aria-valuemin="10" aria-valuemax="20000" aria-valuetext=${formatLength(value, units)}
    aria-orientation=${isLength ? 'horizontal' : 'vertical'}>
    <path class="edge-hit" d=${hit + d}></path>${target(x, isLength ? y : FINGER / 2 - ABOVE - 14)}<path class="grip" d=${d}></path></g>`;
};

const defectGrip = (
  { rect }: BoardPicture,
  { board, plank, defect, units }: FigureState,
  i: number,
): TemplateResult => {
  const of = plank.defects[i];
  if (of === undefined) return svg``;
  const own = extentsOf(of.outline);
  const { x, y, width, height } = rect(own);
  const grip: Grip = `defect ${i}`;
  const number = (value: number) => formatNumber(value, units);
  const place = `${number((own.x0 + own.x1) / 2)} along, ${number((own.y0 + own.y1) / 2)} across`;
  return svg`<g class="defect-grip ${defect === i ? 'chosen' : ''}" role="button" tabindex="0" data-grip=${grip} data-board=${board}
    aria-pressed=${defect === i} aria-label="${defectLetter(i)} ${of.kind}, at ${place}" aria-keyshortcuts="ArrowLeft ArrowRight ArrowUp ArrowDown Delete">
    ${target(x + width / 2, y + height / 2)}
    <rect class="edge" x=${px(x)} y=${px(y)} width=${px(width)} height=${px(height)}></rect></g>`;
};

/** What a hand makes of a board or a defect, with its sizes. */
const heldShape = (
  held: Held,
  { plank, units }: FigureState,
  at: BoardPicture['at'],
  rect: BoardPicture['rect'],
): TemplateResult => {
  const number = (value: number) => formatNumber(value, units);
  if (held.is === 'sizes') {
    const outline = resized(plank.outline, held.sizes);
    const { length, left, right } = held.sizes;
    const widths = left === right ? number(left) : `${number(left)} to ${number(right)}`;
    return svg`<path class="held" d="M${outline.map((point) => at(point).map(px).join(' ')).join('L')}Z"></path>
      ${heldWords(`${number(length)} × ${widths}`, extentsOf(outline), at)}`;
  }
  const { x, y, width, height } = rect(held.box);
  const { x0, y0, x1, y1 } = held.box;
  const words =
    held.is === 'drawn'
      ? `${number(x1 - x0)} × ${number(y1 - y0)}`
      : `${number((x0 + x1) / 2)}, ${number((y0 + y1) / 2)}`;
  return svg`<rect class="held" x=${px(x)} y=${px(y)} width=${px(width)} height=${px(height)}></rect>${heldWords(words, held.box, at)}`;
};

const heldWords = (words: string, { x0, x1, y1 }: Box, at: BoardPicture['at']): TemplateResult => {
  const [x, y] = at([(x0 + x1) / 2, y1]);
  return svg`<text class="middle held-words" x=${px(x)} y=${px(y - 8)}>${words}</text>`;
};
