import { formatNumber } from '../units/formatLength.ts';
import { parseLength } from '../units/parseLength.ts';
import type { Unit } from '../units/unit.ts';
import { element, setAttribute, setText } from './dom.ts';
import { entry } from './entry.ts';
import { button, type Part, type Wishes } from './part.ts';
import { isTail, widthName, widthsOf } from './widths.ts';

/** Every width at the tips, the highest first as in the drawing, to be typed and locked. */
export const widthTable = ({ width, lock, oneFewer, complain }: Wishes): Part => {
  const list = element('ol', { class: 'widths', reversed: true });
  const node = element(
    'section',
    { 'aria-label': 'Widths at the tips' },
    element('h3', {}, 'Widths at the tips'),
    list,
  );
  let unit: Unit = 'mm';
  const rows: Part[] = [];

  const makeRow = (i: number): Part => {
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
      unit = shown.now.project.units;
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
