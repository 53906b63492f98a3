import { expect, test } from 'vitest';
import type { TextMark } from '../../src/drawing/drawing.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { ASCENT, DESCENT, textWidth } from '../../src/drawing/textWidth.ts';

const text = (turn: TextMark['turn'], anchor: TextMark['anchor']): TextMark => ({
  kind: 'text',
  role: 'label',
  text: 'Buttons',
  at: [20, 30],
  size: 4,
  turn,
  anchor,
  weight: 'bold',
});
const width = textWidth('Buttons', 4, 'bold');
const [above, below] = [4 * ASCENT, 4 * DESCENT];

const expectBox = (mark: TextMark, x0: number, y0: number, x1: number, y1: number) => {
  const box = textBox(mark);
  expect([box.x0, box.y0, box.x1, box.y1].map((value) => Number(value.toFixed(9)))).toEqual(
    [x0, y0, x1, y1].map((value) => Number(value.toFixed(9))),
  );
};

test('level text runs right from its start and stands on its baseline', () => {
  expectBox(text(0, 'start'), 20, 30 - below, 20 + width, 30 + above);
  expectBox(text(0, 'middle'), 20 - width / 2, 30 - below, 20 + width / 2, 30 + above);
  expectBox(text(0, 'end'), 20 - width, 30 - below, 20, 30 + above);
});

test('turned text runs up with its tops to the left, upside down, or down', () => {
  expectBox(text(90, 'start'), 20 - above, 30, 20 + below, 30 + width);
  expectBox(text(180, 'start'), 20 - width, 30 - above, 20, 30 + below);
  expectBox(text(270, 'start'), 20 - below, 30 - width, 20 + above, 30);
});
