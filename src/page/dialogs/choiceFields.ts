import { html, nothing, type TemplateResult } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { ANSI_PAPERS, ISO_PAPERS } from '../../paper/paperSizes.ts';
import { find } from '../browser/dom.ts';
import { storedPrinters } from '../browser/storage.ts';
import type { SheetChoice } from '../sheets/sheetJob.ts';
import type { Chosen } from './keptChoice.ts';

const PAPERS = [...ISO_PAPERS, ...ANSI_PAPERS];

interface ChoiceActions {
  readonly choose: (part: Partial<Chosen>) => void;
  readonly proof: () => void;
  readonly keepMeasures: () => void;
}

const typed = (event: Event): string => (event.target as HTMLInputElement | HTMLSelectElement).value;
const fileIn = (event: Event): File | undefined => (event.target as HTMLInputElement).files?.[0];
const ticked = (event: Event): boolean => (event.target as HTMLInputElement).checked;

/**
 * The choices of paper, templates and printer.
 * @param names of the drawers and single corners
 */
export const choiceFields = (
  { paper, margin, boards, flat, rods, only = '', copies = 'one', font }: SheetChoice,
  printer: string,
  names: readonly string[],
  { choose, proof, keepMeasures }: ChoiceActions,
): TemplateResult =>
  html`<fieldset class="choice">
    <legend>Paper</legend>
    <div class="fields">
      <label>Size <input id="paper" list="papers" autocomplete="off" spellcheck="false" .value=${live(paper)} @change=${(event: Event) => choose({ paper: typed(event) })}></label>
      <datalist id="papers">${PAPERS.map(({ name }) => html`<option value=${name}></option>`)}</datalist>
      <label>Margin <input id="margin" autocomplete="off" spellcheck="false" .value=${live(margin)} @change=${(event: Event) => choose({ margin: typed(event) })}></label>
      <label>Boards
        <select id="boards" .value=${live(boards)} @change=${(event: Event) => choose({ boards: boardsNamed(typed(event)) })}>
          <option value="both">both</option>
          <option value="tail">tail boards</option>
          <option value="pin">pin boards</option>
        </select>
      </label>
    </div>
    <div class="fields">
      <label>Draw only <input id="only" list="only-names" placeholder="all of them" autocomplete="off" spellcheck="false" aria-describedby="only-how" .value=${live(only)} @change=${(event: Event) => choose({ only: typed(event).trim() })}></label>
      <datalist id="only-names">${names.map((name) => html`<option value=${name}></option>`)}</datalist>
      <label>Copies
        <select id="copies" @change=${(event: Event) => choose({ copies: typed(event) === 'made' ? 'made' : 'one' })}>
          <option value="one" .selected=${copies === 'one'}>one of each template</option>
          <option value="made" .selected=${copies === 'made'}>each as often as it is made</option>
        </select>
      </label>
    </div>
    <p id="only-how" class="quiet">Drawers and single corners by their names, with commas between; one part of a drawer as ${names[0] ?? 'Buttons'}/side: its front, side or back.</p>
    <div class="fields">
      <label>Font file for letters that the sheets lack <input id="font" type="file" accept=".ttf,.otf,.ttc" @change=${(event: Event) => choose({ font: fileIn(event) })}></label>
    </div>
    ${
      font instanceof File
        ? html`<div class="row"><span id="font-name">${font.name}</span>
          <button type="button" id="no-font" @click=${() => withoutFont(choose)}>Without it</button></div>`
        : nothing
    }
    <label class="check"><input type="checkbox" id="flat" .checked=${flat} @change=${(event: Event) => choose({ flat: ticked(event) })}> Flat templates: one face each, for boards of uneven thickness</label>
    <label class="check"><input type="checkbox" id="rods" .checked=${rods} @change=${(event: Event) => choose({ rods: ticked(event) })}> Rods too: printed strips with every mark of a board</label>
  </fieldset>
  <fieldset class="choice">
    <legend>Printer</legend>
    <div class="fields">
      <label>Corrected for
        <select id="printer" @change=${(event: Event) => choose({ printer: typed(event) })}>
          <option value="" .selected=${printer === ''}>none</option>
          ${Object.keys(storedPrinters()).map(
            (name) => html`<option value=${name} .selected=${printer === name}>${name}</option>`,
          )}
        </select>
      </label>
    </div>
    <details>
      <summary>Correct a printer error</summary>
      <p>Print the proof sheet at 100 %, measure it with a steel rule, and type in what you read. The diagonals are needed only if the printer skews.</p>
      <button type="button" id="take-proof" @click=${proof}>Proof sheet, PDF</button>
      <div class="fields">
        <label>x, across <input id="measured-x" autocomplete="off"></label>
        <label>y, up <input id="measured-y" autocomplete="off"></label>
        <label>Diagonal d1 <input id="measured-d1" autocomplete="off"></label>
        <label>Diagonal d2 <input id="measured-d2" autocomplete="off"></label>
        <label>Printer’s name <input id="printer-name" autocomplete="off" maxlength="40"></label>
      </div>
      <button type="button" id="keep-printer" @click=${keepMeasures}>Keep the correction</button>
    </details>
  </fieldset>`;

/** A field for a file goes on showing the one that was chosen there. */
const withoutFont = (choose: ChoiceActions['choose']): void => {
  find('font', HTMLInputElement).value = '';
  choose({ font: undefined });
};

const boardsNamed = (value: string): Chosen['boards'] =>
  value === 'tail' || value === 'pin' ? value : 'both';
