import { html, nothing, type TemplateResult } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import type { SheetCounts, SheetTask } from '../sheets/sheetJob.ts';

interface FileChoice {
  readonly counts: SheetCounts;
  /** The kinds of sheet that there are. */
  readonly kinds: readonly (keyof SheetCounts)[];
  readonly hasParts: boolean;
  readonly benchPaper: string;
  /** What is chosen where no paper is typed for sheets that are held in a hand. */
  readonly usualPaper: string;
  readonly choosePaper: (benchPaper: string) => void;
  readonly take: (what: string, task: SheetTask) => () => void;
}

const NAMES: Readonly<Record<keyof SheetCounts, string>> = {
  templates: 'Templates',
  drilling: 'Drilling templates',
  guides: 'Guides',
  'cutting-list': 'Cutting list',
  bench: 'Bench sheets',
  comparison: 'Comparison sheets',
  proportion: 'Proportions',
  corners: 'Corners as pictures',
};

const PIECES: SheetTask = { make: 'pieces' };
const PARTS: SheetTask = { make: 'parts' };

/** Every file that can be saved, and what it holds. */
export const fileRows = ({
  counts,
  kinds,
  hasParts,
  benchPaper,
  usualPaper,
  choosePaper,
  take,
}: FileChoice): TemplateResult => {
  const row = (id: string, name: string, holds: string, save: () => void): TemplateResult =>
    html`<li>
      <button type="button" id=${id} aria-describedby="${id}-holds" @click=${save}>${name}</button>
      <span id="${id}-holds" class="quiet">${holds}</span>
    </li>`;
  const pdf = (kind: keyof SheetCounts, name: string) => {
    const count = counts[kind];
    const holds = count === undefined ? '' : `${count} ${count === 1 ? 'sheet' : 'sheets'}`;
    return row(`take-${kind}`, `${name}, PDF`, holds, take(name, { make: 'pdf', kind }));
  };
  const choose = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement) choosePaper(target.value.trim());
  };
  return html`<fieldset class="choice">
    <legend>Files</legend>
    <ul class="files">
      ${kinds.map((kind) => pdf(kind, NAMES[kind]))}
      ${row('take-pieces', 'Templates, SVG', 'one file each, in a zip', take('Templates', PIECES))}
      ${hasParts ? row('take-parts', 'Parts, CSV', 'a table for spreadsheets', take('Parts', PARTS)) : nothing}
    </ul>
    ${
      kinds.includes('bench')
        ? html`<div class="fields">
          <label>Paper of cutting list, bench sheets and comparison <input id="bench-paper" list="papers" placeholder=${usualPaper} autocomplete="off" spellcheck="false" .value=${live(benchPaper)} @change=${choose}></label>
        </div>`
        : nothing
    }
  </fieldset>`;
};
