import { element } from './dom.ts';

/** A place to type into; what cannot be taken gives way to what was there. */
export const entry = (label: string, take: (text: string) => void) => {
  const input = element('input', {
    type: 'text',
    inputmode: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    'aria-label': label,
  });
  let shown = '';
  const commit = () => {
    if (input.value.trim() === shown) return;
    const { value } = input;
    input.value = shown;
    take(value);
  };
  input.addEventListener('change', commit);
  input.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') input.value = shown;
  });
  return {
    input,
    show: (text: string) => {
      if (text === shown) return;
      shown = text;
      input.value = text;
    },
  };
};
