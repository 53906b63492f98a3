import { html, nothing, render } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { find } from '../browser/dom.ts';

export interface Message {
  /** An error, or a note. */
  readonly kind: 'stop' | 'note';
  readonly title: string;
  readonly lines?: readonly string[];
}

/** The most complaints that are shown. */
const MOST_LINES = 12;

/** Space below the last control that a message would hide, in px. */
const CLEAR = 32;

/** The messages of the page; a new one replaces the one before. */
export const messages = (host: HTMLElement) => {
  let cameFrom: EventTarget | null = null;
  host.addEventListener('focusin', ({ relatedTarget }) => {
    if (!(relatedTarget instanceof Node && host.contains(relatedTarget))) cameFrom = relatedTarget;
  });
  /** What the user has just done something with: what is said at once is said of it. */
  let about: EventTarget | null = null;
  for (const type of ['change', 'click'])
    addEventListener(
      type,
      ({ target }) => {
        about = target;
        setTimeout(() => {
          about = null;
        });
      },
      { capture: true },
    );
  /** Lets the page scroll what has the focus out from under the message. */
  const put = (message: unknown): void => {
    render(message, host);
    const height = host.offsetHeight;
    document.documentElement.style.setProperty('--message', height > 0 ? `${height + CLEAR}px` : '0px');
  };
  const clear = (): void => put(nothing);
  /** Closes the message, and puts the focus back to where it came from; false where there is none. */
  const close = (): boolean => {
    if (host.querySelector('.message') === null) return false;
    const hadFocus = host.contains(document.activeElement);
    clear();
    const back = cameFrom instanceof Element && cameFrom.isConnected ? cameFrom : find('corner', HTMLElement);
    if (hadFocus && (back instanceof HTMLElement || back instanceof SVGElement)) back.focus();
    return true;
  };
  const show = ({ kind, title, lines = [] }: Message): void => {
    const more = lines.length - MOST_LINES;
    const shown = [...lines.slice(0, MOST_LINES), ...(more > 0 ? [`and ${more} more`] : [])];
    const list = shown.length > 0 ? html`<ul>${shown.map((line) => html`<li>${line}</li>`)}</ul>` : nothing;
    const message = html`<div class="message ${kind}">
      <div><p>${title}</p>${list}</div>
      <button type="button" class="close" aria-label="Close this message" @click=${close}>×</button>
    </div>`;
    // A repeated message is a new element, so that a screen reader repeats it too.
    put(keyed({}, message));
    if (about instanceof Element && about.isConnected) about.scrollIntoView({ block: 'nearest' });
  };
  return { show, clear, close };
};
