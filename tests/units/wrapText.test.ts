import { expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { wrapText } from '../../src/units/wrapText.ts';

const width = (line: string) => textWidth(line, 3.3, 'regular');
const room = width('from the bottom left');

test('words fill each line as far as it goes', () => {
  expect(wrapText('from the bottom left corner to the top right', (line) => width(line) <= room)).toEqual([
    'from the bottom left',
    'corner to the top',
    'right',
  ]);
});

test('a word wider than the room stands alone, and a no-break space holds a number to its unit', () => {
  expect(wrapText('a --measured-x-and-then-some 240\u00A0mm', (line) => width(line) <= room / 3)).toEqual([
    'a',
    '--measured-x-and-then-some',
    '240\u00A0mm',
  ]);
});

test('every line but the first is indented, and the indent counts', () => {
  expect(wrapText('one two three four', (line) => line.length <= 8, '  ')).toEqual([
    'one two',
    '  three',
    '  four',
  ]);
});
