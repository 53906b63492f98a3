import { html, render } from 'lit-html';
import { find } from '../browser/dom.ts';
import type { AppContext } from '../model/viewState.ts';
import { faultWords } from '../text/plainWords.ts';
import { retype } from '../text/retype.ts';

/** The most complaints that are shown: later ones often follow from the first. */
const MOST_LINES = 8;

/**
 * The plan's text, to be edited. While what is typed is not valid it stays here, and the drawings as they are.
 * @returns shows the text, and what is wrong with it
 */
export const textPanel = ({ now, draft, type }: Pick<AppContext, 'now' | 'draft' | 'type'>): (() => void) => {
  const panel = find('text-panel', HTMLDetailsElement);
  const area = find('text', HTMLTextAreaElement);
  const wrong = find('text-wrong', HTMLUListElement);
  const written = (): string => (draft() ?? now()).text;

  const show = (): void => {
    if (!panel.open) return;
    const { faults = [], units = 'mm' } = draft() ?? {};
    render(
      faults.slice(0, MOST_LINES).map((fault) => html`<li>${faultWords(fault, units)}</li>`),
      wrong,
    );
    area.setAttribute('aria-invalid', String(faults.length > 0));
    if (retype(written(), area.value) !== written()) area.value = written();
  };
  area.addEventListener('input', () => type(retype(written(), area.value)));
  panel.addEventListener('toggle', show);
  panel.open = draft() !== undefined;
  return show;
};
