import { html, type TemplateResult } from 'lit-html';

/**
 * A place to type into. What is being typed stays until the value shown changes; what cannot be taken gives way to what
 * was there.
 */
export const entry = (label: string, shown: string, take: (text: string) => void): TemplateResult => {
  const commit = ({ target }: Event): void => {
    if (!(target instanceof HTMLInputElement) || target.value.trim() === shown) return;
    const { value } = target;
    target.value = shown;
    take(value);
  };
  const restore = ({ key, target }: KeyboardEvent): void => {
    if (key === 'Escape' && target instanceof HTMLInputElement) target.value = shown;
  };
  return html`<input type="text" inputmode="text" autocomplete="off" spellcheck="false" aria-label=${label}
    .value=${shown} @change=${commit} @keydown=${restore}>`;
};
