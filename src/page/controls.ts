import type { Result } from '../complaint.ts';
import { formatNumber, parseLength, type Unit } from '../units/length.ts';
import { formatSlope, parseSlope } from '../units/slope.ts';
import type { Scope } from './adjust.ts';
import type { CornerRef } from './corner.ts';
import { element, setAttribute, setText } from './dom.ts';
import { type Quantity, quantitiesOf } from './quantities.ts';
import type { View } from './shown.ts';
import { isTail, widthName, widthsOf } from './widths.ts';

/** What the controls can ask for. */
export interface Wishes {
  readonly select: (ref: CornerRef) => void;
  readonly oneMore: () => void;
  readonly oneFewer: (i?: number) => void;
  readonly even: () => void;
  readonly choose: () => void;
  readonly mirror: () => void;
  readonly lock: (i: number) => void;
  readonly width: (i: number, value: number) => void;
  readonly measure: (quantity: Quantity, value: number) => void;
  readonly scope: (scope: Scope) => void;
  readonly rename: (name: string) => void;
  readonly howMany: (count: number) => void;
  readonly another: () => void;
  readonly takeOut: () => void;
  /** What was typed cannot be read. */
  readonly complain: (complaints: readonly import('../complaint.ts').Complaint[]) => void;
}

/**
 * Everything that is set by words and numbers.
 * @param which for the choice between a drawer's corners
 * @param tools what goes beside the drawing
 * @param host what goes apart from it
 */
export const controls = (which: HTMLElement, tools: HTMLElement, host: HTMLElement, wishes: Wishes): View => {
  const corners = cornerSwitch(wishes);
  const tails = tailControls(wishes);
  const widths = widthTable(wishes);
  const measures = measureList(wishes);
  const item = itemControls(wishes);
  which.append(corners.node);
  tools.append(tails.node);
  host.append(widths.node, item.node, measures.node);
  return (shown) => {
    corners.show(shown);
    tails.show(shown);
    widths.show(shown);
    measures.show(shown);
    item.show(shown);
  };
};

interface Part {
  readonly node: HTMLElement;
  readonly show: View;
}

const button = (label: string, onclick: () => void, attributes: Readonly<Record<string, string>> = {}) =>
  element('button', { type: 'button', ...attributes, onclick }, label);

/** Front corners or back corners. */
const cornerSwitch = ({ select }: Wishes): Part => {
  let index = 0;
  const front = button('Front', () => select({ of: 'drawer', index, end: 'front' }));
  const back = button('Back', () => select({ of: 'drawer', index, end: 'back' }));
  const node = element('div', { class: 'switch', role: 'group', 'aria-label': 'Which corners' }, front, back);
  return {
    node,
    show: ({ corner: { ref } }) => {
      node.hidden = ref.of === 'joint';
      if (ref.of === 'joint') return;
      ({ index } = ref);
      setAttribute(front, 'aria-pressed', String(ref.end === 'front'));
      setAttribute(back, 'aria-pressed', String(ref.end === 'back'));
    },
  };
};

const tailControls = ({ oneMore, oneFewer, even, choose, mirror }: Wishes): Part => {
  const number = element('output', { class: 'number', 'aria-live': 'off' });
  const fewer = button('−', () => oneFewer(), { class: 'step', 'aria-label': 'One tail fewer' });
  const more = button('+', () => oneMore(), { class: 'step', 'aria-label': 'One tail more' });
  const chosen = button('Let the set choose', choose);
  const node = element(
    'div',
    { class: 'row', role: 'group', 'aria-label': 'Tails' },
    element('div', { class: 'stepper' }, fewer, number, more),
    button('Make even', even),
    button('Mirror', mirror),
    chosen,
  );
  return {
    node,
    show: ({ corner: { joint, ref } }) => {
      const { length } = joint.tails;
      setText(number, `${length} ${length === 1 ? 'tail' : 'tails'}`);
      chosen.hidden = ref.of === 'joint';
    },
  };
};

/** A place to type a length or a slope into, which shows the present one again when it is left. */
const entry = (label: string, take: (text: string) => void) => {
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

/** The drawer itself: its name, how many are made, one more, one fewer. */
const itemControls = ({ rename, howMany, another, takeOut }: Wishes): Part => {
  const name = entry('Name', rename);
  const count = entry('How many', (text) => howMany(Number(text)));
  const heading = element('h3');
  const counted = element('label', {}, 'how many', count.input);
  const node = element(
    'section',
    { class: 'item', 'aria-label': 'Name and number' },
    heading,
    element('label', {}, 'name', name.input),
    counted,
    element('div', { class: 'row' }, button('Another like it', another), button('Take it out', takeOut)),
  );
  return {
    node,
    show: ({ corner: { drawer, name: called } }) => {
      setText(heading, drawer === undefined ? 'This corner' : 'This drawer');
      name.show(called);
      counted.hidden = drawer === undefined;
      count.show(String(drawer?.spec.count ?? 1));
    },
  };
};

interface Row {
  readonly node: HTMLElement;
  readonly show: View;
}

const widthTable = ({ width, lock, oneFewer, complain }: Wishes): Part => {
  const list = element('ol', { class: 'widths', reversed: true });
  const node = element(
    'section',
    { 'aria-label': 'Widths at the tips' },
    element('h3', {}, 'Widths at the tips'),
    list,
  );
  let unit: Unit = 'mm';
  const rows: Row[] = [];

  const makeRow = (i: number): Row => {
    const name = element('span', { class: 'name' });
    const typed = entry('', (text) => {
      const read = parseLength(text, unit);
      if (read.ok) width(i, read.value);
      else complain(read.complaints);
    });
    const key = button('lock', () => lock(i), { class: 'mini' });
    const out = button('×', () => oneFewer(i), { class: 'mini' });
    const item = element('li', {}, name, typed.input, key, out);
    return {
      node: item,
      show: ({ corner: { joint }, locked }) => {
        const widths = widthsOf(joint);
        const called = widthName(i, widths.length);
        setText(name, called);
        setAttribute(typed.input, 'aria-label', `${called}, width`);
        typed.show(formatNumber(widths[i] ?? 0, unit));
        setAttribute(key, 'aria-label', `Lock ${called}`);
        setAttribute(key, 'aria-pressed', String(locked.has(i)));
        setAttribute(out, 'aria-label', `Take out ${called}`);
        out.hidden = !isTail(i) || widths.length <= 3;
        item.className = isTail(i) ? 'tail' : 'pin';
      },
    };
  };

  return {
    node,
    show: (shown) => {
      unit = shown.now.laid.plan.units;
      const { length } = widthsOf(shown.corner.joint);
      while (rows.length < length) {
        const row = makeRow(rows.length);
        rows.push(row);
        // The reference edge is at the foot, as in the drawing.
        list.prepend(row.node);
      }
      for (const { node: gone } of rows.splice(length)) gone.remove();
      for (const row of rows) row.show(shown);
    },
  };
};

const measureList = ({ measure, scope, complain }: Wishes): Part => {
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
      unit = now.laid.plan.units;
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
