import { html, nothing, render, type TemplateResult } from 'lit-html';
import type { Complaint } from '../../units/complaint.ts';
import { boxesIn, type CornerRef } from '../model/editedCorner.ts';
import type { Stage } from '../model/fields/keyGroups.ts';
import type { Setting } from '../model/fields/setKeys.ts';
import type { Quantity } from '../model/quantities.ts';
import type { Scope } from '../model/scope.ts';
import type { View, ViewState } from '../model/viewState.ts';
import { cornerChoice } from './cornerChoice.ts';
import { entry } from './entry.ts';
import { foldedKeys } from './foldedKeys.ts';
import { measureList } from './measureList.ts';
import { partSizes } from './partSizes.ts';
import { scopeChoice } from './scopeChoice.ts';
import { widthTable } from './widthTable.ts';

/** The actions of the controls. */
export interface ControlActions {
  readonly select: (ref: CornerRef) => void;
  readonly oneMore: () => void;
  readonly oneFewer: (i?: number) => void;
  readonly even: () => void;
  readonly choose: () => void;
  readonly mirror: () => void;
  readonly lock: (i: number) => void;
  readonly width: (i: number, value: number) => void;
  readonly measure: (quantity: Quantity, value: number) => void;
  /** Leaves a measure to its default. */
  readonly unset: (quantity: Quantity) => void;
  /** @param what the keys in words */
  readonly set: (what: string, settings: readonly Setting[]) => void;
  readonly scope: (scope: Scope) => void;
  readonly rename: (name: string) => void;
  readonly setCount: (typed: string) => void;
  readonly add: () => void;
  /** Adds a single corner. */
  readonly addBox: () => void;
  readonly addCorner: () => void;
  readonly move: (by: -1 | 1) => void;
  readonly duplicate: () => void;
  readonly remove: () => void;
  /** For typed text that cannot be read. */
  readonly complain: (complaints: readonly Complaint[]) => void;
}

/**
 * The lists, fields and buttons beside the drawing.
 * @param which for the choice of a corner
 * @param tools what goes beside the drawing
 * @param host what goes apart from it
 */
export const controls = (
  which: HTMLElement,
  tools: HTMLElement,
  host: HTMLElement,
  wishes: ControlActions,
): View => {
  let last: ViewState | undefined;
  const again = (): void => {
    if (last !== undefined) show(last);
  };
  const groups = foldedKeys(wishes, again);
  const show = (shown: ViewState): void => {
    last = shown;
    const stage = (of: Stage, title: string, measures: readonly string[], more: unknown = nothing) =>
      html`<section aria-label=${title}>
        ${measureList(shown, wishes, measures)}${more}${groups(of, shown)}
      </section>`;
    // In the order of the work.
    render(
      html`${itemControls(shown, wishes)}
        ${stage('opening', 'Opening', ['Opening', 'Drawer', 'Box'])}
        ${stage('stock', 'Stock', ['Boards', 'Thickness'], partSizes(shown))}
        ${stage('corner', 'Corner', ['Corner'])}
        ${stage('groove', 'Groove and bottom', ['Groove'])}
        ${widthTable(shown, wishes)}
        ${stage('plan', 'The whole plan', [])}`,
      host,
    );
  };
  return (shown) => {
    render(cornerChoice(shown, wishes), which);
    render(html`${tailControls(shown, wishes)}${scopeChoice(shown, wishes)}`, tools);
    show(shown);
  };
};

/** The number of tails, and the actions on all of them. */
const tailControls = (
  { corner: { joint, ref } }: ViewState,
  { oneMore, oneFewer, even, choose, mirror }: ControlActions,
): TemplateResult => {
  const { length } = joint.tails;
  return html`<div class="row" role="group" aria-label="Tails">
    <div class="stepper">
      <button type="button" class="step" aria-label="One tail fewer" @click=${() => oneFewer()}>−</button>
      <output class="number" aria-live="off">${length} ${length === 1 ? 'tail' : 'tails'}</output>
      <button type="button" class="step" aria-label="One tail more" @click=${oneMore}>+</button>
    </div>
    <button type="button" @click=${even}>Make even</button>
    <button type="button" @click=${mirror}>Mirror</button>
    <button type="button" ?hidden=${ref.of === 'joint'} @click=${choose}>${ref.of === 'box' ? 'Choose the usual' : 'Let the set choose'}</button>
  </div>`;
};

/** The drawer, box or single corner: its name and quantity, to copy and to remove. */
const itemControls = (
  { corner: { drawer, name, ref }, now: { project } }: ViewState,
  { rename, setCount, add, addBox, addCorner, move, duplicate, remove }: ControlActions,
): TemplateResult => {
  const { length } =
    ref.of === 'joint' ? project.joints : ref.of === 'box' ? boxesIn(project.set) : project.set.drawers;
  const what = ref.of === 'joint' ? 'corner' : ref.of;
  const count = entry('How many', String(drawer?.spec.count ?? 1), (text) => setCount(text));
  return html`<section class="item" aria-label="Name and quantity">
    <h3>This ${what}</h3>
    <label>name${entry('Name', name, rename)}</label>
    <label ?hidden=${drawer === undefined}>quantity${count}</label>
    <div class="row">
      <button type="button" @click=${duplicate}>Copy this ${what}</button>
      <button type="button" ?disabled=${ref.index === 0} @click=${() => move(-1)}>Move up</button>
      <button type="button" ?disabled=${ref.index === length - 1} @click=${() => move(1)}>Move down</button>
      <button type="button" @click=${add}>Add a drawer</button>
      <button type="button" @click=${addBox}>Add a box</button>
      <button type="button" @click=${addCorner}>Add a single corner</button>
      <button type="button" @click=${remove}>Remove this ${what}</button>
    </div>
  </section>`;
};
