import { element, setAttribute } from './dom.ts';
import { button, type Part, type Wishes } from './part.ts';

/** Front corners or back corners. */
export const cornerSwitch = ({ select }: Wishes): Part => {
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
