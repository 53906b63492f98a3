import { element, setText } from './dom.ts';
import { entry } from './entry.ts';
import { button, type Part, type Wishes } from './part.ts';

/** The drawer itself: its name, how many are made, one more, one fewer. */
export const itemControls = ({ rename, howMany, another, takeOut }: Wishes): Part => {
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
