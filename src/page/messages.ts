import { element } from './dom.ts';

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
  const clear = (): void => {
    host.replaceChildren();
  };
  const show = ({ kind, title, lines = [] }: Message): void => {
    const more = lines.length - MOST_LINES;
    const shown = [...lines.slice(0, MOST_LINES), ...(more > 0 ? [`and ${more} more`] : [])];
    const list = element('ul', {}, ...shown.map((line) => element('li', {}, line)));
    const close = element(
      'button',
      { type: 'button', class: 'close', 'aria-label': 'Close this message', onclick: clear },
      '×',
    );
    const text = element('div', {}, element('p', {}, title), ...(shown.length > 0 ? [list] : []));
    host.replaceChildren(element('div', { class: `message ${kind}` }, text, close));
  };
  return { show, clear };
};

export type Messages = ReturnType<typeof messages>;
