import { html, nothing, render } from 'lit-html';
import { quote } from '../../units/quote.ts';
import { find } from '../browser/dom.ts';
import { otherTabs } from '../browser/otherTabs.ts';
import type { PlanText } from '../browser/storage.ts';
import type { AppContext } from '../model/viewState.ts';
import { readProject } from '../text/planReader.ts';

/** A plan that another tab has stored in the place of this tab's. */
interface Other extends PlanText {
  readonly name: string;
}

/**
 * Says that another tab has stored a newer plan, and lets the user choose. Whatever is done, the other is kept.
 * @param store stores this tab's plan
 * @returns keeps the other tab's plan, if there is one: to be called before this tab's is stored in its place
 */
export const otherTab = (
  { now, draft, openPlan, type, say, keep }: AppContext,
  store: () => void,
): (() => void) => {
  const host = find('other-tab', HTMLElement);
  let other: Other | undefined;

  const settle = (): void => {
    if (other !== undefined) keep(other);
    other = undefined;
    render(nothing, host);
  };
  const take = ({ text, name, draft }: Other): void => {
    other = undefined;
    render(nothing, host);
    if (openPlan(text, name) && draft !== undefined) type(draft);
  };
  const show = (found: Other): void =>
    void render(
      html`<div class="message note">
        <p>Another tab has stored a newer plan, ${quote(found.name)}. The one that you leave is kept among the earlier plans.</p>
        <div class="row">
          <button type="button" @click=${() => take(found)}>Take that one</button>
          <button type="button" @click=${store}>Keep mine</button>
        </div>
      </div>`,
      host,
    );

  otherTabs(
    () =>
      say({
        kind: 'note',
        title: 'Halfpin is open in another tab too. What is changed there will be offered here.',
      }),
    (plan) => {
      const reading = readProject(plan.text);
      if (!reading.ok) return;
      other = undefined;
      render(nothing, host);
      if (plan.text === now().text && plan.draft === draft()?.text) return;
      other = { ...plan, name: reading.value.name };
      show(other);
    },
  );
  return settle;
};
