import { html, nothing, type TemplateResult } from 'lit-html';
import type { SheetsState } from '../sheets/readySheets.ts';

interface PreviewActions {
  readonly ask: () => void;
  readonly stop: () => void;
}

/** How far something is, and the button that stops it. */
export const progress = (
  what: string,
  { number, of }: { readonly number: number; readonly of: number },
  stop: () => void,
): TemplateResult =>
  html`<div class="row progress">
    <progress aria-label=${what} max=${of || 1} .value=${of === 0 ? 0 : (number - 1) / of}></progress>
    <span>${of === 0 ? what : `${what} ${number} of ${of}`}</span>
    <button type="button" class="cancel" @click=${stop}>Cancel</button>
  </div>`;

/** Small pictures of the templates' sheets, each as it is printed, and their number. */
export const sheetPreview = (
  { is, counts, pages, pictures, says }: SheetsState,
  { ask, stop }: PreviewActions,
): TemplateResult => {
  const count = counts?.templates ?? 0;
  return html`<section id="preview" aria-labelledby="preview-title" data-state=${is}>
    <h3 id="preview-title">Templates${count === 0 ? '' : `, ${count} ${count === 1 ? 'sheet' : 'sheets'}`}</h3>
    ${is === 'making' ? progress(count === 0 ? 'Setting out' : 'Sheet', { number: Math.min(count, pages.length + 1), of: count }, stop) : nothing}
    ${is === 'stopped' ? html`<p>Cancelled. <button type="button" id="preview-again" @click=${ask}>Show the sheets</button></p>` : nothing}
    ${is === 'refused' ? html`<p class="stop">${says.join('. ')}</p>` : nothing}
    <ol>
      ${pictures.map(
        (url, i) =>
          html`<li><img src=${url} alt="Sheet ${i + 1}" loading="lazy" decoding="async" style="aspect-ratio: ${pages[i]?.width} / ${pages[i]?.height}"></li>`,
      )}
    </ol>
  </section>`;
};
