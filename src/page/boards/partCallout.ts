import { html, nothing, type TemplateResult } from 'lit-html';
import { plankName } from '../../drawer/blanks/blankWords.ts';
import { letteredName } from '../../drawer/blanks/breakoutWords.ts';
import type { StockWork } from '../../drawer/blanks/stockWork.ts';
import { extentsOf } from '../../stock/polygon.ts';
import { formatNumber } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { boxOf } from '../model/boards/heldPart.ts';
import type { Carried, PartsAtHand } from './partHands.ts';

const WIDEST = 280;
/** From the pointer, and free at the borders, in px. */
const AWAY = 16;
const FREE = 8;

/** `E Buttons front 1: 300, 5 on Cherry 2`, from the board's left end and lower edge. */
const placeOfCarried = ({ planks, blanks }: StockWork, { held }: Carried, units: Notation): string => {
  const board = planks[held.plank];
  if (board === undefined) return '';
  const { x0, y0 } = extentsOf(board.outline);
  const number = (value: number) => formatNumber(value, units);
  const { x, y } = held.place;
  return `${letteredName(blanks, held.wanted)}: ${number(x - x0)}, ${number(y - y0)} on ${plankName(board, planks)}`;
};

const refusalOfCarried = ({ refusal }: Carried, units: Notation): string | undefined =>
  refusal && `It ${speak(refusal, units)}.`;

/** For screen readers: where a part is held, and why it cannot be pinned there. */
export const carriedWords = (work: StockWork, carried: Carried, units: Notation): string =>
  [placeOfCarried(work, carried, units), refusalOfCarried(carried, units)].filter(Boolean).join('. ');

/** Beside the pointer, or the part where keys move it: where that is, and why it cannot be pinned there. */
export const partCallout = (
  host: HTMLElement,
  there: PartsAtHand,
  carried: Carried,
  units: Notation,
): TemplateResult => {
  const { left, top, width } = host.getBoundingClientRect();
  const [x, y] = carried.pointer ?? aboveHeld(host, there, carried) ?? [left, top];
  const most = Math.min(WIDEST, width - 2 * FREE);
  const at = Math.max(FREE, Math.min(x - left + AWAY, width - most - FREE));
  const reason = refusalOfCarried(carried, units);
  return html`<div class="callout above ${reason === undefined ? '' : 'stopped'}"
    style="max-width: ${most}px; left: ${at}px; top: ${y - top - AWAY}px"><p>${placeOfCarried(there.work, carried, units)}</p>${
      reason === undefined ? nothing : html`<p class="reason">${reason}</p>`
    }</div>`;
};

/** The upper left corner of what is held, in the window. */
const aboveHeld = (
  host: HTMLElement,
  { work, pictures }: PartsAtHand,
  { held }: Carried,
): readonly [number, number] | undefined => {
  const surface = host.querySelector(`.stock-board[data-plank="${held.plank}"]`)?.getBoundingClientRect();
  const of = pictures.get(held.plank)?.rect(boxOf(work, held));
  return surface && of && [surface.left + of.x, surface.top + of.y];
};
