import { html, type TemplateResult } from 'lit-html';

/**
 * A text field. What is being typed stays until the value shown changes; what cannot be read is replaced by that value.
 */
export const entry = (label: string, shown: string, take: (text: string) => void): TemplateResult => {
  const commit = ({ target }: Event): void => {
    if (!(target instanceof HTMLInputElement) || target.value.trim() === shown) return;
    const { value } = target;
    target.value = shown;
    take(value);
  };
  const restore = (event: KeyboardEvent): void => {
    const { key, target } = event;
    if (key !== 'Escape' || !(target instanceof HTMLInputElement) || target.value === shown) return;
    target.value = shown;
    event.preventDefault();
  };
  return html`<input type="text" inputmode="text" autocomplete="off" spellcheck="false" aria-label=${label}
    .value=${shown} @change=${commit} @keydown=${restore}>`;
};
