import { html, nothing, svg, type TemplateResult } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { letteredName } from '../../drawer/blanks/breakoutWords.ts';
import type { PartBlank } from '../../drawer/blanks/partBlanks.ts';
import type { Blank } from '../../stock/breakout.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { px } from '../browser/dom.ts';
import { boxOf, type HeldPart } from '../model/boards/heldPart.ts';
import type { BoardPicture } from './seenBoard.ts';

/** What of a board's parts can be held, and what hands have made of them. */
export interface PartsShown {
  /** Its entry among the plan's boards, and its place among all boards. */
  readonly board: number;
  readonly plank: number;
  /** All blanks of the plan, with their pins. */
  readonly blanks: readonly PartBlank[];
  /** Those that lie on the board; none where what is shown is of other parts. */
  readonly laid: readonly Blank[];
  /** Whether keys reach them. */
  readonly isChosen: boolean;
  readonly chosen: number | undefined;
  /** What is held over this board, and whether it cannot be pinned there. */
  readonly held: (HeldPart & { readonly isRefused: boolean }) | undefined;
  readonly units: Notation;
}

/** A drawing pin, in px from its upper left corner: its cap and neck, its shoulder, and its needle. */
const PIN = 'M1.5 0h7v2l-1 1v2.5l2.5 2.5h-10l2.5-2.5v-2.5l-1-1zM4.2 8h1.6l-0.8 6z';
/** Where it is on its part, clear of the numbers of cuts and of the part's letter: along its upper edge, and px below that. */
const ALONG = 0.3;
const INSIDE = 2;

/** Parts to be held, the signs of pins, and what is held. */
export const partGrips = (picture: BoardPicture, shown: PartsShown): TemplateResult => {
  const { blanks, laid, held, plank } = shown;
  // A pin's place is known before the layout with it.
  const pinned = blanks.flatMap(({ pin }, wanted): HeldPart[] =>
    pin?.plank === plank && pin.place !== undefined ? [{ wanted, plank, place: pin.place }] : [],
  );
  const isLaid = (pin: HeldPart) => laid.some((blank) => liesAt(blank, pin));
  return svg`${repeat(
    laid,
    ({ wanted }) => wanted,
    (blank) => grip(picture, shown, blank),
  )}
    ${pinned.filter((pin) => !isLaid(pin)).map((pin) => pinnedPlace(picture, shown, pin))}
    ${held === undefined ? nothing : heldRect(picture, shown, held)}`;
};

const liesAt = ({ wanted, x, y }: Blank, { place, ...pin }: HeldPart): boolean =>
  wanted === pin.wanted && Math.abs(x - place.x) < 1e-3 && Math.abs(y - place.y) < 1e-3;

const grip = (
  { rect }: BoardPicture,
  { board, plank, blanks, isChosen, chosen, units }: PartsShown,
  blank: Blank,
): TemplateResult => {
  const { wanted, x, y, length, width } = blank;
  const of = rect({ x0: x, y0: y, x1: x + length, y1: y + width });
  const pin = blanks[wanted]?.pin;
  // What was pinned elsewhere a moment ago is still shown where it lay.
  const isPinned =
    pin?.plank === plank && (pin.place === undefined || liesAt(blank, { wanted, plank, place: pin.place }));
  const number = (value: number) => formatNumber(value, units);
  return svg`<g class="part-grip ${chosen === wanted ? 'chosen' : ''}" role="button" tabindex=${isChosen ? 0 : -1}
    data-grip="part ${wanted}" data-board=${board} aria-pressed=${chosen === wanted}
    aria-label="${letteredName(blanks, wanted)}, at ${number(x)} along, ${number(y)} across${isPinned ? ', pinned' : ''}"
    aria-keyshortcuts="ArrowLeft ArrowRight ArrowUp ArrowDown B Enter Escape Delete">
    <rect class="edge" x=${px(of.x)} y=${px(of.y)} width=${px(of.width)} height=${px(of.height)}></rect>
    ${isPinned ? sign(of.x + ALONG * of.width, of.y) : nothing}</g>`;
};

/** A drawing pin under an upper edge. */
const sign = (x: number, y: number): TemplateResult =>
  svg`<path class="pin-sign" aria-hidden="true" transform="translate(${px(x)} ${px(y + INSIDE)})" d=${PIN}></path>`;

/** The same by itself, beside the words that explain it. */
export const pinSign = (): TemplateResult =>
  html`<svg class="stock-sign" width="12" height="18" viewBox="-1 0 12 18" aria-hidden="true">${sign(0, 0)}</svg>`;

const pinnedPlace = ({ rect }: BoardPicture, { blanks }: PartsShown, pin: HeldPart): TemplateResult => {
  const { x, y, width, height } = rect(boxOf({ planks: [], blanks }, pin));
  return svg`<rect class="pinned-place" x=${px(x)} y=${px(y)} width=${px(width)} height=${px(height)}></rect>${sign(x + ALONG * width, y)}`;
};

const heldRect = (
  { rect }: BoardPicture,
  { blanks }: PartsShown,
  held: NonNullable<PartsShown['held']>,
): TemplateResult => {
  const { x, y, width, height } = rect(boxOf({ planks: [], blanks }, held));
  return svg`<rect class="held ${held.isRefused ? 'stopped' : ''}" x=${px(x)} y=${px(y)} width=${px(width)} height=${px(height)}></rect>`;
};
