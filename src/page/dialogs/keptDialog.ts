import { html, render, type TemplateResult } from 'lit-html';
import { find } from '../browser/dom.ts';
import { keepPending, keptPlans } from '../browser/keptPlans.ts';
import type { KeptPlan } from '../browser/storage.ts';
import type { AppContext } from '../model/viewState.ts';
import { contentWords, leftAt } from './keptWords.ts';

/** The dialog that brings back plans which others took the place of. */
export const keptDialog = ({ openPlan, type }: AppContext): (() => void) => {
  const dialog = find('kept-dialog', HTMLDialogElement);
  const body = find('kept-body', HTMLElement);
  find('kept-close', HTMLButtonElement).addEventListener('click', () => dialog.close());

  keepPending();

  const bringBack = ({ text, name, draft }: KeptPlan): void => {
    dialog.close();
    if (openPlan(text, name) && draft !== undefined) type(draft);
  };
  const row = (plan: KeptPlan, _: number, plans: readonly KeptPlan[]): TemplateResult => html`<li>
    <div class="words">
      <span class="name">${plan.name}</span>
      <span class="quiet">${contentWords(plan)}</span>
    </div>
    <time class="quiet" datetime=${plan.at.toISOString()}>${leftAt(plan, plans)}</time>
    <button type="button" @click=${() => bringBack(plan)}>Bring it back</button>
  </li>`;
  const list = (plans: readonly KeptPlan[] | undefined): TemplateResult => {
    if (plans === undefined)
      return html`<p>This browser keeps no plans: its storage is full or switched off.</p>`;
    return plans.length === 0
      ? html`<p>There are none yet. Where New, Open or a link takes the place of a plan, that plan is kept here.</p>`
      : html`<ol>${plans.map(row)}</ol>`;
  };

  return () =>
    void keptPlans().then((plans) => {
      render(list(plans), body);
      dialog.showModal();
    });
};
