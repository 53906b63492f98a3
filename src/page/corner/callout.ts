import { html, nothing } from 'lit-html';
import type { Complaint } from '../../units/complaint.ts';
import type { Notation } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';

const WIDEST = 280;
/** Kept free at the drawing's edges, in px. */
const FREE = 8;
/** From the line that is moved, in px. */
const AWAY = 14;

/** The point of a callout in px, and whether it lies above, as a finger hides what is below. */
export interface Pointed {
  readonly at: readonly [x: number, y: number];
  readonly above: boolean;
}

/** A callout beside what is moved: what it is now, and the reason why it goes no further. */
export const callout = (
  words: string,
  [stop]: readonly Complaint[],
  { at, above }: Pointed,
  room: number,
  unit: Notation,
) => {
  const width = Math.min(WIDEST, room - 2 * FREE);
  const left = Math.max(FREE, Math.min(at[0] + 12, room - width - FREE));
  const top = at[1] + (above ? -AWAY : AWAY);
  const reason = stop && html`<p class="reason">${speak(stop.says, unit)}</p>`;
  return html`<div class="callout ${above ? 'above' : ''} ${stop ? 'stopped' : ''}"
    style="max-width: ${width}px; left: ${left}px; top: ${top}px"><p>${words}</p>${reason ?? nothing}</div>`;
};
