import { html, nothing, render } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';

export interface Message {
  /** What stops something, or what is merely good to know. */
  readonly kind: 'stop' | 'note';
  readonly title: string;
  readonly lines?: readonly string[];
}

/** More complaints than that help nobody. */
const MOST_LINES = 12;

/** A place for what must be said in words; a new message takes the place of the one before. */
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
    // What is said again is a new element, so that a screen reader says it again.
    render(keyed({}, message), host);
  };
  return { show, clear };
};
