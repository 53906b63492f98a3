import type { Result } from '../complaint.ts';
import { formatNumber } from '../units/formatLength.ts';
import { parseLength } from '../units/parseLength.ts';
import { formatSlope, parseSlope } from '../units/slope.ts';
import type { Unit } from '../units/unit.ts';
import type { Scope } from './adjust.ts';
import { element } from './dom.ts';
import { entry } from './entry.ts';
import type { Part, Wishes } from './part.ts';
import { type Quantity, quantitiesOf } from './quantities.ts';

/** Every measure of the corner and its drawer, and for whom a change of it is. */
export const measureList = ({ measure, scope, complain }: Wishes): Part => {
  const list = element('div', { class: 'measures' });
  const choice = (value: Scope, label: string) => {
    const input = element('input', { type: 'radio', name: 'scope', value });
    input.addEventListener('change', () => scope(value));
    return { input, node: element('label', {}, input, label) };
  };
  const all = choice('set', 'every drawer');
  const one = choice('drawer', 'this drawer only');
  const scopes = element(
    'fieldset',
    { class: 'scope' },
    element('legend', {}, 'Corner, groove and thickness are changed for'),
    all.node,
    one.node,
  );
  const node = element('section', { 'aria-label': 'Measures' }, scopes, list);
  let keys = '';
  let group = '';
  let unit: Unit = 'mm';
  let rows: { readonly quantity: Quantity; readonly show: (text: string) => void }[] = [];

  const makeRow = (quantity: Quantity) => {
    const typed = entry(`${quantity.group}, ${quantity.label}`, (text) => {
      const read: Result<number> = quantity.kind === 'slope' ? runOf(text) : parseLength(text, unit);
      if (read.ok) measure(quantity, read.value);
      else complain(read.complaints);
    });
    if (quantity.group !== group) list.append(element('h3', {}, quantity.group));
    ({ group } = quantity);
    list.append(element('label', {}, quantity.label, typed.input));
    return { quantity, show: typed.show };
  };

  return {
    node,
    show: (shown) => {
      const { corner, now } = shown;
      unit = now.project.units;
      const quantities = quantitiesOf(corner);
      const wanted = `${corner.ref.of} ${quantities.map(({ key }) => key).join(' ')}`;
      if (wanted !== keys) {
        keys = wanted;
        list.replaceChildren();
        group = '';
        rows = quantities.map(makeRow);
      }
      for (const { quantity, show } of rows) {
        const value = quantity.get(corner) ?? 0;
        show(quantity.kind === 'slope' ? formatSlope({ run: value }) : formatNumber(value, unit));
      }
      scopes.hidden = corner.ref.of === 'joint';
      all.input.checked = shown.scope === 'set';
      one.input.checked = shown.scope === 'drawer';
    },
  };
};

const runOf = (text: string): Result<number> => {
  const read = parseSlope(text);
  return read.ok ? { ok: true, value: read.value.run } : read;
};
