import { expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { wrapText } from '../../src/paper/wrapText.ts';

const room = textWidth('from the bottom left', 3.3, 'regular');

test('words fill each line as far as it goes', () => {
  expect(wrapText('from the bottom left corner to the top right', room, 3.3, 'regular')).toEqual([
    'from the bottom left',
    'corner to the top',
    'right',
  ]);
});

test('a word wider than the room stands alone, and a no-break space holds a number to its unit', () => {
  expect(wrapText('a --measured-x-and-then-some 240\u00A0mm', room / 3, 3.3, 'regular')).toEqual([
    'a',
    '--measured-x-and-then-some',
    '240\u00A0mm',
  ]);
});
