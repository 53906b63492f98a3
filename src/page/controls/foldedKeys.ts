import { html, nothing, type TemplateResult } from 'lit-html';
import type { Place } from '../../units/complaint.ts';
import { boxesIn } from '../model/editedCorner.ts';
import { readText, shownText } from '../model/fields/fieldText.ts';
import {
  groupsFor,
  isElsewhere,
  isOfEntry,
  type KeyGroup,
  keysOfGroup,
  type Stage,
} from '../model/fields/keyGroups.ts';
import { aboutOf, labelOf, usualWords } from '../model/fields/keyWords.ts';
import { ANY, keyAt, type PlanKey, type ValueForm, valuesIn } from '../model/fields/planKeys.ts';
import { isTogether, type KeyRef, type Setting, writtenFor } from '../model/fields/setKeys.ts';
import { reachesBoxes, reachesSingleCorners } from '../model/keepInherited.ts';
import { allDrawers, selectedDrawers } from '../model/scopeWords.ts';
import type { ViewState } from '../model/viewState.ts';
import { writtenPlan } from '../model/writtenPlan.ts';
import type { ControlActions } from './controls.ts';
import { entry, reason, reasonId } from './entry.ts';
import { refusalOf, takeTyped } from './refusals.ts';

/**
 * The keys of a plan in groups that are folded until they are wanted.
 * @param again shows them again, after one was unfolded
 * @returns the groups of a stage of the work
 */
export const foldedKeys = ({ set }: Pick<ControlActions, 'set'>, again: () => void) => {
  const open = new Set<string>();
  return (stage: Stage, shown: ViewState): TemplateResult[] =>
    groupsFor(shown.corner.ref, stage).map((group) => {
      const { title } = group;
      const toggle = ({ target }: Event): void => {
        if (!(target instanceof HTMLDetailsElement) || target.open === open.has(title)) return;
        if (target.open) open.add(title);
        else open.delete(title);
        again();
      };
      return html`<details class="keys" @toggle=${toggle}>
        <summary>${title} <span class="quiet">${whose(group, shown)}</span></summary>
        ${open.has(title) ? body(group, shown, set) : nothing}
      </details>`;
    });
};

/** What a group's fields change, in words. */
const whose = ({ of }: KeyGroup, { corner, scope, now: { project } }: ViewState): string => {
  if (of === 'plan') return '';
  if (of === 'joint') return 'this corner';
  if (of === 'box') return selectedDrawers(corner);
  return of === 'drawers' && scope.drawers === 'all' ? allDrawers(project) : selectedDrawers(corner);
};

const body = (
  group: KeyGroup,
  { corner, now, scope }: ViewState,
  set: ControlActions['set'],
): TemplateResult => {
  const plan = writtenPlan(now.text);
  const written = (key: PlanKey): unknown => writtenFor(plan, corner.ref, refOf(group, key));

  const field = (key: PlanKey, form: ValueForm): TemplateResult => {
    const label = labelOf(group, key);
    const name = `${group.title}, ${label}`;
    const shown = shownText(written(key), form);
    const take = (text: string): void => set(label, [[refOf(group, key), readText(text, form)]]);
    const isShared = group.of === 'drawers' && scope.drawers === 'all';
    const { joints, set: made } = now.project;
    const others = [
      ...(reachesSingleCorners(key.at) && joints.length > 0 ? ['single corners'] : []),
      ...(reachesBoxes(key.at) && boxesIn(made).length > 0 ? ['boxes'] : []),
    ];
    const follow =
      isShared && others.length > 0 ? ` It holds for ${others.join(' and ')} without their own too.` : '';
    return html`<div class="key">
      <label>${label}${isChoice(form) ? choice(name, key, form, shown, take) : entry(name, shown, take, form.isNested ? 6 : undefined)}</label>
      <p class="quiet">${aboutOf(key)}${follow}</p>
    </div>`;
  };

  const block = (key: PlanKey): TemplateResult | typeof nothing => {
    const value = written(key);
    const one =
      key.value === undefined || isElsewhere(group, refOf(group, key).at) ? nothing : field(key, key.value);
    if (key.named !== undefined) return named(key, key.named, value);
    if (key.keys.length === 0) return one;
    const isOuter = group.places.includes(refOf(group, key).at.join('.'));
    const inner =
      isTogether(key) && !isGiven(key, value)
        ? together(key)
        : html`${key.keys.map(block)}${isRemovable(key, value) ? removal(key) : nothing}`;
    return isOuter
      ? html`${one}${inner}`
      : html`${one}<fieldset><legend>${labelOf(group, key)}</legend>${inner}</fieldset>`;
  };

  /** Fields that are set together, as one without the others is nothing. */
  const together = (key: PlanKey, own?: PlanKey): TemplateResult => {
    const label = labelOf(group, own ?? key);
    const name = `${group.title}, ${label}, all together`;
    const values = valuesIn(key).filter((each) => each !== key);
    const begin = (event: SubmitEvent): void => {
      event.preventDefault();
      const { target } = event;
      if (!(target instanceof HTMLFormElement)) return;
      const typed = new FormData(target);
      const text = (part: string): string => String(typed.get(part) ?? '');
      const settings = values.flatMap((each): Setting[] => {
        const value = each.value && readText(text(each.at.join('.')), each.value);
        return value === undefined ? [] : [[refOf(group, each, text(ANY).trim()), value]];
      });
      if (takeTyped(name, '', () => set(label, settings))) target.reset();
    };
    const [invalid, why] = refusalOf(name) ? ['true', reasonId(name)] : [nothing, nothing];
    const part = (each: PlanKey): TemplateResult => {
      const isNeeded = key.required.includes(String(each.at.at(-1))) && each.at.length === key.at.length + 1;
      const at = each.at.join('.');
      const said = `${group.title}, ${labelOf(group, each)}`;
      return html`<div class="key">
        <label>${labelOf(group, each)}${
          each.value && isChoice(each.value)
            ? html`<select name=${at} aria-label=${said} aria-invalid=${invalid} aria-describedby=${why}><option value="">choose</option>${each.value.words.map((word) => html`<option>${word}</option>`)}</select>`
            : each.value?.isNested
              ? html`<textarea name=${at} rows="6" ?required=${isNeeded} aria-label=${said} aria-invalid=${invalid} aria-describedby=${why} spellcheck="false"></textarea>`
              : html`<input name=${at} ?required=${isNeeded} aria-label=${said} aria-invalid=${invalid} aria-describedby=${why} autocomplete="off" spellcheck="false">`
        }</label>
        <p class="quiet">${aboutOf(each)}</p>
      </div>`;
    };
    return html`<form @submit=${begin}>
      ${own === undefined ? nothing : html`<div class="key"><label>name<input name=${ANY} required aria-label="${group.title}, name" autocomplete="off"></label></div>`}
      ${values.map(part)}
      <button type="submit" class="whole">Set ${label}</button>
      ${reason(name)}
    </form>`;
  };

  const removal = (key: PlanKey): TemplateResult => {
    const label = labelOf(group, key);
    return html`<button type="button" class="whole" @click=${() => set(label, [[refOf(group, key), undefined]])}>Without ${label}</button>`;
  };

  /** What is under names of the user's own, and a form for one more. */
  const named = (key: PlanKey, each: PlanKey, value: unknown): TemplateResult =>
    html`${Object.keys(Object(value)).map((name) => {
      const own = withName(each, key.at.length, name);
      return html`<fieldset><legend>${name}</legend>${own.keys.map(block)}
        <button type="button" class="whole" @click=${() => set(name, [[refOf(group, own), undefined]])}>Without ${name}</button>
      </fieldset>`;
    })}
    ${each.keys.map((way) => html`<fieldset><legend>One more, by its ${labelOf(group, way)}</legend>${together(way, each)}</fieldset>`)}`;

  return html`<div class="keys-body">${keysOfGroup(group).map(block)}</div>`;
};

const withName = (key: PlanKey, depth: number, name: string): PlanKey => ({
  ...key,
  at: key.at.with(depth, name),
  keys: key.keys.map((inner) => withName(inner, depth, name)),
});

/** @param name stands for a name of the user's own */
const refOf = ({ of }: KeyGroup, { at }: PlanKey, name: string = ANY): KeyRef => ({
  of,
  at: (isOfEntry(of) ? at.slice(2) : at).map((step): Place[number] => (step === ANY ? name : step)),
});

const isGiven = ({ value }: PlanKey, written: unknown): boolean =>
  (typeof written === 'object' && written !== null && !Array.isArray(written)) ||
  // One length stands for each of a group.
  (value?.isNumber === true && written !== undefined);

/** Whether a group of keys can go as a whole: one that was set together, and that is not needed. */
const isRemovable = (key: PlanKey, written: unknown): boolean =>
  isTogether(key) &&
  typeof written === 'object' &&
  !/^drawers\.\*\.(?:opening|size)(?:\.(?:width|height))?$/u.test(key.at.join('.'));

/** Whether there is nothing where a key stands without it. */
const isNeeded = ({ at }: PlanKey): boolean =>
  keyAt(at.slice(0, -1))?.required.includes(String(at.at(-1))) === true;

/** Whether a value is one of a few words. */
const isChoice = ({ words, isNumber, isText, isList }: ValueForm): boolean =>
  words.length > 0 && !isNumber && !isText && !isList;

/** What must be given is one of the words; all else may be left as it is usual. */
const choice = (
  label: string,
  key: PlanKey,
  { words }: ValueForm,
  shown: string,
  take: (text: string) => void,
): TemplateResult => {
  const refusal = refusalOf(label);
  const chosen = refusal?.typed ?? shown;
  const choose = ({ target }: Event): void => {
    if (!(target instanceof HTMLSelectElement)) return;
    const typed = target.value;
    takeTyped(label, typed, () => take(typed));
  };
  return html`<select aria-label=${label} aria-invalid=${refusal ? 'true' : nothing}
      aria-describedby=${refusal ? reasonId(label) : nothing} @change=${choose}>
      ${isNeeded(key) ? nothing : html`<option value="" .selected=${chosen === ''}>${usualWords(key)}</option>`}
      ${words.map((word) => html`<option .selected=${String(word) === chosen}>${word}</option>`)}
    </select>${reason(label)}`;
};
