import { html, type TemplateResult } from 'lit-html';
import { plankName, reasonWords } from '../../drawer/blanks/blankWords.ts';
import { letteredName } from '../../drawer/blanks/breakoutWords.ts';
import type { StockWork } from '../../drawer/blanks/stockWork.ts';
import type { Reason } from '../../stock/breakout.ts';
import { extentsOf } from '../../stock/polygon.ts';
import type { Pin } from '../../stock/wanted.ts';
import type { Complaint } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { entry } from '../controls/entry.ts';
import { boardsFor, type HeldPart } from '../model/boards/heldPart.ts';

/** What the fields of a part do. */
export interface PartActions {
  readonly pin: (pin: Pin) => void;
  readonly free: () => void;
  /** For typed text that cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
}

/** A part where it lies: why there, its place to be typed, and the board that it is to come out of. */
export const partFields = (
  work: StockWork,
  { wanted, plank, place }: HeldPart,
  why: Reason | undefined,
  units: Notation,
  { pin, free, complain }: PartActions,
): TemplateResult => {
  const { planks, blanks } = work;
  const name = letteredName(blanks, wanted);
  const on = planks[plank];
  if (on === undefined) return html``;
  const own = blanks[wanted]?.pin;
  const { x0, y0 } = extentsOf(on.outline);
  const field = (label: string, value: number, take: (value: number) => void): TemplateResult =>
    html`<label>${label}${entry(`${name}, ${label}`, formatNumber(value, units), (text) => {
      const read = parseLength(text, unitOf(units));
      if (read.ok) take(read.value);
      else complain(read.complaints);
    })}</label>`;
  const put = (more: Partial<typeof place>) => pin({ plank, place: { ...place, ...more } });
  const isPinnedHere = own?.place !== undefined;
  return html`<div class="board-fields" role="group" aria-label=${name}>
    <h4>${name}</h4>
    <p class="quiet">${own === undefined && why !== undefined ? `Lies there: ${reasonWords(why, blanks)}. ` : ''}${pinWords(own)} Drag it, or move it by the arrow keys and by B to another board; Enter pins it, Escape puts it back.</p>
    <div class="measures">
      ${field('from left end', place.x - x0, (value) => put({ x: value + x0 }))}
      ${field('from lower edge', place.y - y0, (value) => put({ y: value + y0 }))}
      <label>out of board<select class="pinned-board" aria-label="${name}, board" @change=${({
        target,
      }: Event) => {
        if (target instanceof HTMLSelectElement && target.value !== '') pin({ plank: Number(target.value) });
      }}>${boardsFor(work, wanted).map((index) => {
        const board = planks[index];
        return html`<option value=${index} ?selected=${index === plank} .selected=${index === plank}>${board && plankName(board, planks)}</option>`;
      })}</select></label>
    </div>
    <div class="row">
      <button type="button" ?disabled=${isPinnedHere} @click=${() => put({})}>Pin it here</button>
      <button type="button" @click=${() => put({ turned: !place.turned })}>Turn it round</button>
      <button type="button" ?disabled=${own === undefined} @click=${free}>Set it free</button>
    </div>
  </div>`;
};

const pinWords = (pin: Pin | undefined): string => {
  if (pin === undefined) return 'It is not pinned.';
  return pin.place === undefined ? 'It is pinned to this board.' : 'It is pinned to this place.';
};
