import { expect, it } from 'vitest';
import { inchesMeant, parseLength } from '../../src/units/parseLength.ts';
import { speak } from '../../src/units/phrase.ts';

it.each([
  ['7/16', 7 / 16],
  [' 3/4 ', 3 / 4],
  ['5-11/16', 5 + 11 / 16],
  ['5 11/16', 5 + 11 / 16],
  ['½', 0.5],
  ['5½', 5.5],
  ['7⁄16', 7 / 16],
])('a bare %j was meant in inches, and reads so with its unit', (typed, inches) => {
  const meant = inchesMeant(typed, 'mm');
  expect(meant && speak(meant, 'mm')).toBe(`${typed.trim()}in`);
  expect(parseLength(`${typed.trim()}in`, 'mm')).toEqual({ ok: true, value: inches * 25.4 });
});

it.each(['7/16in', '7/16 mm', '18', '0.4375', '', 'x/y', '7/', 0.4375, undefined])(
  '%j was not, nor was anything in a plan in inches',
  (typed) => {
    expect(inchesMeant(typed, 'mm')).toBeUndefined();
    expect(inchesMeant('7/16', 'in')).toBeUndefined();
  },
);
