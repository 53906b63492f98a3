import { html, nothing, render } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';

export interface Message {
  /** An error, or a note. */
  readonly kind: 'stop' | 'note';
  readonly title: string;
  readonly lines?: readonly string[];
}

/** The most complaints that are shown. */
const MOST_LINES = 12;

/** The messages of the page; a new one replaces the one before. */
export const messages = (host: HTMLElement) => {
  const clear = (): void => void render(nothing, host);
  const show = ({ kind, title, lines = [] }: Message): void => {
    const more = lines.length - MOST_LINES;
    const shown = [...lines.slice(0, MOST_LINES), ...(more > 0 ? [`and ${more} more`] : [])];
    const list = shown.length > 0 ? html`<ul>${shown.map((line) => html`<li>${line}</li>`)}</ul>` : nothing;
    const message = html`<div class="message ${kind}">
      <div><p>${title}</p>${list}</div>
      <button type="button" class="close" aria-label="Close this message" @click=${clear}>×</button>
    </div>`;
    // A repeated message is a new element, so that a screen reader repeats it too.
    render(keyed({}, message), host);
  };
  return { show, clear };
};
