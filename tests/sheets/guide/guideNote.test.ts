import { expect, it } from 'vitest';
import { textBox } from '../../../src/drawing/textBox.ts';
import { CAP_HEIGHT } from '../../../src/drawing/textWidth.ts';
import { guideNote } from '../../../src/sheets/guide/guideNote.ts';
import { textsOf } from '../pieces.ts';

const said = (units: 'mm' | 'in'): string =>
  textsOf(guideNote(units, 180))
    .map(({ text }) => text.replaceAll('\u00A0', ' '))
    .join(' ');

it('names the thickness of the sheet material in either unit, and how the fence is fixed', () => {
  // Common practice: 6 to 12 mm, or a quarter to half an inch.
  expect(said('mm')).toContain('thickness 6 to 12 mm');
  expect(said('in')).toContain('thickness 1/4 to 1/2"');
  expect(said('mm')).toMatch(/batten\. Glue and screw it under the guide, its face on the fence line/u);
});

it.each([60, 90, 180, 400])('fits %f mm, its lines at least 2.4 mm high and clear of each other', (width) => {
  const { box, marks } = guideNote('mm', width);
  const texts = textsOf({ box, marks });
  const boxes = texts.map(textBox);
  expect(texts.length).toBeGreaterThan(1);
  for (const { size } of texts) expect(size * CAP_HEIGHT).toBeGreaterThanOrEqual(2.4 - 1e-9);
  for (const [i, { x0, x1, y0, y1 }] of boxes.entries()) {
    expect([x0 >= 0, x1 <= width, y0 >= 0, y1 <= box.y1]).toEqual([true, true, true, true]);
    for (const other of boxes.slice(i + 1))
      expect(x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1).toBe(false);
  }
});
