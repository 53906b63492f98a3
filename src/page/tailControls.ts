import { element, setText } from './dom.ts';
import { button, type Part, type Wishes } from './part.ts';

/** How many tails, and what can be done to them all. */
export const tailControls = ({ oneMore, oneFewer, even, choose, mirror }: Wishes): Part => {
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
