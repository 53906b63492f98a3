import { html, nothing, type TemplateResult } from 'lit-html';
import type { SheetCounts, SheetTask } from '../sheets/sheetJob.ts';

interface FileChoice {
  readonly counts: SheetCounts;
  readonly hasDrawers: boolean;
  readonly hasGuides: boolean;
  readonly take: (what: string, task: SheetTask) => () => void;
  readonly takeParts: () => void;
}

const PIECES: SheetTask = { make: 'pieces' };

/** Every file that can be saved, and what it holds. */
export const fileRows = ({ counts, hasDrawers, hasGuides, take, takeParts }: FileChoice): TemplateResult => {
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
  return html`<fieldset class="choice">
    <legend>Files</legend>
    <ul class="files">
      ${pdf('templates', 'Templates')}
      ${hasGuides ? pdf('guides', 'Guides') : nothing}
      ${hasDrawers ? [pdf('cutting-list', 'Cutting list'), pdf('bench', 'Bench sheets'), pdf('comparison', 'Comparison sheets')] : nothing}
      ${row('take-pieces', 'Templates, SVG', 'one file each, in a zip', take('Templates', PIECES))}
      ${hasDrawers ? row('take-parts', 'Parts, CSV', 'a table for spreadsheets', takeParts) : nothing}
    </ul>
  </fieldset>`;
};
