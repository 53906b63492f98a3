import { html, nothing, type TemplateResult } from 'lit-html';
import { type CornerRef, cornerOfDrawer } from '../model/editedCorner.ts';
import type { ViewActions, ViewState } from '../model/viewState.ts';

/** Which drawer or single corner is shown, and of a drawer which of its corners. */
export const cornerChoice = (
  { corner: { ref }, now: { project } }: ViewState,
  { select }: ViewActions,
): TemplateResult => {
  const { drawers } = project.set;
  const names = [...drawers.map(({ spec }) => spec.name), ...project.joints.map(({ name }) => name)];
  const chosen = ref.of === 'drawer' ? ref.index : drawers.length + ref.index;
  const choose = ({ target }: Event): void => {
    if (!(target instanceof HTMLSelectElement)) return;
    const i = target.selectedIndex;
    select(i < drawers.length ? cornerOfDrawer(ref, i) : { of: 'joint', index: i - drawers.length });
  };
  return html`<select aria-label=${drawers.length === 0 ? 'Which corner' : 'Which drawer'} @change=${choose}>
      ${names.map((name, i) => html`<option .selected=${i === chosen}>${name}</option>`)}
    </select>${ends(ref, select)}`;
};

/** Front corners or back corners. */
const ends = (ref: CornerRef, select: ViewActions['select']): TemplateResult | typeof nothing => {
  if (ref.of === 'joint') return nothing;
  const choice = (end: 'front' | 'back', label: string): TemplateResult =>
    html`<button type="button" aria-pressed=${ref.end === end} @click=${() => select({ ...ref, end })}>${label}</button>`;
  return html`<div class="switch" role="group" aria-label="Which corners">
    ${choice('front', 'Front')}${choice('back', 'Back')}
  </div>`;
};
