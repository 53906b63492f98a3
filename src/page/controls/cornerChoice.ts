import { html, nothing, type TemplateResult } from 'lit-html';
import { hasEqualEnds } from '../../drawer/drawerSizes.ts';
import { boxesIn, type CornerRef, cornerOfDrawer } from '../model/editedCorner.ts';
import type { ViewActions, ViewState } from '../model/viewState.ts';

/** Which drawer, box or single corner is shown, and of a drawer which of its corners; of a box where they differ. */
export const cornerChoice = (
  { corner: { ref, drawer }, now: { project } }: ViewState,
  { select }: ViewActions,
): TemplateResult => {
  const { drawers } = project.set;
  const boxes = boxesIn(project.set);
  const refs = [
    ...drawers.map((_, i) => cornerOfDrawer(ref, i)),
    ...boxes.map(({ spec }, i) =>
      cornerOfDrawer(hasEqualEnds(spec) ? { of: 'joint', index: 0 } : ref, i, 'box'),
    ),
    ...project.joints.map((_, index): CornerRef => ({ of: 'joint', index })),
  ];
  const names = [
    ...[...drawers, ...boxes].map(({ spec }) => spec.name),
    ...project.joints.map(({ name }) => name),
  ];
  const chosen = refs.findIndex(({ of, index }) => of === ref.of && index === ref.index);
  const choose = ({ target }: Event): void => {
    if (!(target instanceof HTMLSelectElement)) return;
    const chosen = refs[target.selectedIndex];
    if (chosen !== undefined) select(chosen);
  };
  return html`<select aria-label=${drawers.length > 0 ? 'Which drawer' : boxes.length > 0 ? 'Which box' : 'Which corner'} @change=${choose}>
      ${names.map((name, i) => html`<option .selected=${i === chosen}>${name}</option>`)}
    </select>${drawer && hasEqualEnds(drawer.spec) ? nothing : ends(ref, select)}`;
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
