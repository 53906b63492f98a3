import { html, nothing, type TemplateResult } from 'lit-html';
import { refusalOf, takeBack, takeTyped } from './refusals.ts';

/** What the field of each label shows while nothing is typed into it. */
const latest = new Map<string, string>();

/**
 * A text field. What is being typed stays until the value shown changes; what cannot be taken stays too, beside the reason,
 * until Escape puts the value back.
 * @param rows of a field for several lines
 */
export const entry = (
  label: string,
  shown: string,
  take: (text: string) => void,
  rows?: number,
): TemplateResult => {
  latest.set(label, shown);
  const refusal = refusalOf(label);
  const value = refusal?.typed ?? shown;
  const id = reasonId(label);
  const commit = ({ target }: Event): void => {
    if (!isField(target)) return;
    const typed = target.value;
    if (typed.trim() === (latest.get(label) ?? '')) {
      putBack(target, label);
      return;
    }
    if (takeTyped(label, typed, () => take(typed))) target.value = latest.get(label) ?? '';
  };
  const restore = (event: KeyboardEvent): void => {
    const { key, target } = event;
    if (key !== 'Escape' || !isField(target) || target.value === latest.get(label)) return;
    // The message about what was refused goes with it.
    if (refusalOf(label) === undefined) event.preventDefault();
    putBack(target, label);
  };
  const field =
    rows === undefined
      ? html`<input type="text" inputmode="text" autocomplete="off" spellcheck="false" aria-label=${label}
          aria-invalid=${refusal ? 'true' : nothing} aria-describedby=${refusal ? id : nothing}
          .value=${value} @change=${commit} @keydown=${restore}>`
      : html`<textarea rows=${rows} autocapitalize="off" spellcheck="false" aria-label=${label}
          aria-invalid=${refusal ? 'true' : nothing} aria-describedby=${refusal ? id : nothing}
          .value=${value} @change=${commit} @keydown=${restore}></textarea>`;
  return html`${field}${reason(label)}`;
};

/** The most reasons that are shown beside a field; the message has the others. */
const MOST_REASONS = 3;

/** Why a field's text could not be taken, to stand beside it. */
export const reason = (label: string): TemplateResult | typeof nothing => {
  const refusal = refusalOf(label);
  return refusal === undefined
    ? nothing
    : html`<span class="refused" id=${reasonId(label)}>${refusal.reasons.slice(0, MOST_REASONS).map((why) => html`<span class="why">${why}</span>`)}</span>`;
};

export const reasonId = (label: string): string => `why-${label.replaceAll(/[^a-z0-9]+/giu, '-')}`;

const isField = (target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;

const putBack = (field: HTMLInputElement | HTMLTextAreaElement, label: string): void => {
  field.value = latest.get(label) ?? '';
  takeBack(label);
};
