import fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { fitText } from '../../src/paper/fitText.ts';

const room = (text: string) => textWidth(text, 3.3, 'regular');

test('the first wording that fits is used', () => {
  const wordings = ['measure both bars', 'measure', '100 mm'];
  expect(fitText(wordings, room('measure both bars'), 3.3, 'regular')).toBe('measure both bars');
  expect(fitText(wordings, room('measure both bars') - 0.01, 3.3, 'regular')).toBe('measure');
});

test('where none fits, the last is cut short with an ellipsis, as little as can be', () => {
  expect(fitText(['Haberdashery chest'], room('Haberdash…'), 3.3, 'regular')).toBe('Haberdash…');
  expect(fitText(['Haberdashery chest'], room('Haberdashery …') - 0.01, 3.3, 'regular')).toBe(
    'Haberdashery…',
  );
  expect(fitText(['Haberdashery chest'], 0.5, 3.3, 'regular')).toBe('');
});

test('no text of any length or script is wider than its room', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: 'grapheme', maxLength: 80 }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      (text, mm) => {
        expect(room(fitText([text], mm, 3.3, 'regular'))).toBeLessThanOrEqual(mm);
      },
    ),
  );
});
