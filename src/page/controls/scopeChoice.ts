import { html, nothing, type TemplateResult } from 'lit-html';
import type { Scope } from '../model/scope.ts';
import { allDrawers, selectedDrawers } from '../model/scopeWords.ts';
import type { ViewState } from '../model/viewState.ts';
import type { ControlActions } from './controls.ts';

/** What is changed when a measure is dragged or typed that the drawers may share. */
export const scopeChoice = (
  { corner, now: { project }, scope: chosen }: ViewState,
  { scope }: ControlActions,
): TemplateResult | typeof nothing => {
  const { ref } = corner;
  if (ref.of !== 'drawer') return nothing;
  const choice = <Key extends keyof Scope>(key: Key, value: Scope[Key], label: string): TemplateResult =>
    html`<button type="button" aria-pressed=${chosen[key] === value}
      @click=${() => scope({ ...chosen, [key]: value })}>${label}</button>`;
  return html`<div class="row scope" role="group" aria-labelledby="scope-title">
    <span id="scope-title" class="quiet">Shared measures:</span>
    <div class="switch" role="group" aria-label="Which drawers" ?hidden=${project.set.drawers.length === 1}>
      ${choice('drawers', 'all', allDrawers(project))}${choice('drawers', 'this', selectedDrawers(corner))}
    </div>
    <div class="switch" role="group" aria-label="Slope and pin at which corners">
      ${choice('ends', 'shown', `${ref.end} only`)}${choice('ends', 'both', 'front and back')}
    </div>
  </div>`;
};
