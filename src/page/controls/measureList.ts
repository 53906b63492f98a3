import { html, nothing, type TemplateResult } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import type { Result } from '../../units/complaint.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { unitOf } from '../../units/notation.ts';
import { parseLength } from '../../units/parseLength.ts';
import { formatSlope, parseSlope } from '../../units/slope.ts';
import { type Quantity, quantitiesShown } from '../model/quantities.ts';
import { scopeWords } from '../model/scopeWords.ts';
import type { ViewState } from '../model/viewState.ts';
import type { ControlActions } from './controls.ts';
import { entry } from './entry.ts';

/** Measures of the corner and its drawer, in groups that say what is changed. */
export const measureList = (
  { corner, now, scope }: ViewState,
  { measure, unset, complain }: ControlActions,
  groups: readonly string[],
): TemplateResult => {
  const unit = now.project.units;
  const quantities = quantitiesShown(corner).filter(({ group }) => groups.includes(group));

  const row = (quantity: Quantity, i: number): TemplateResult => {
    const { group, label, kind } = quantity;
    const value = quantity.get(corner);
    if (value === undefined)
      return html`<label>${label}<input type="text" disabled aria-label="${group}, ${label}: in the list of widths"
        title="Each is in the list, widths at the tips." .value=${'listed'}></label>`;
    const shown = kind === 'slope' ? formatSlope({ run: value }) : formatNumber(value, unit);
    const typed = entry(`${group}, ${label}`, shown, (text) => {
      if (text.trim() === '') {
        unset(quantity);
        return;
      }
      const read: Result<number> = kind === 'slope' ? runOf(text) : parseLength(text, unitOf(unit));
      if (read.ok) measure(quantity, read.value);
      else complain(read.complaints);
    });
    const ofGroup = quantities.filter((each) => each.group === group);
    const said = ofGroup.find(({ ends }) => ends !== 'both') ?? quantity;
    const heading =
      quantities[i - 1]?.group === group
        ? nothing
        : html`<h3>${group} <span class="quiet">${scopeWords(now.project, corner, said, scope)}</span></h3>`;
    return html`${heading}<label>${label}${typed}</label>`;
  };

  return html`<div class="measures">${repeat(quantities, ({ key }) => `${corner.ref.of} ${key}`, row)}</div>`;
};

const runOf = (text: string): Result<number> => {
  const read = parseSlope(text);
  return read.ok ? { ok: true, value: read.value.run } : read;
};
