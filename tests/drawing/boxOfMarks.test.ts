import { describe, expect, it } from 'vitest';
import { boxOfMarks } from '../../src/drawing/boxOfMarks.ts';
import type { Mark } from '../../src/drawing/drawing.ts';
import { textMark } from '../../src/drawing/shapes.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { translateMarks } from '../../src/drawing/transform.ts';

const stroke: Mark = {
  kind: 'stroke',
  role: 'outline',
  pen: 'edge',
  paths: [
    {
      points: [
        [1, 2],
        [11, 5],
      ],
    },
  ],
};
const fill: Mark = {
  kind: 'fill',
  role: 'waste',
  tone: 0.8,
  paths: [
    {
      points: [
        [0, 0],
        [4, 0],
        [4, 9],
      ],
      closed: true,
    },
  ],
};

describe('the box of marks', () => {
  it('includes the width of lines and the height of letters', () => {
    expect(boxOfMarks([stroke])).toEqual({ x0: 0.75, y0: 1.75, x1: 11.25, y1: 5.25 });
    expect(boxOfMarks([fill])).toEqual({ x0: 0, y0: 0, x1: 4, y1: 9 });
    const text = textMark('Notions', [3, 4], 5);
    expect(boxOfMarks([text])).toEqual(textBox(text));
    expect(boxOfMarks([stroke, fill])).toEqual({ x0: 0, y0: 0, x1: 11.25, y1: 9 });
  });

  it('moves with them', () => {
    const marks = [stroke, fill, textMark('Cloth', [1, 1], 4)];
    const { x0, y0, x1, y1 } = boxOfMarks(marks);
    expect(boxOfMarks(translateMarks(marks, 10, -20))).toEqual({
      x0: x0 + 10,
      y0: y0 - 20,
      x1: x1 + 10,
      y1: y1 - 20,
    });
  });
});
