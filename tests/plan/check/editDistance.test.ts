import { describe, expect, it } from 'vitest';
import { closestWord } from '../../../src/plan/check/editDistance.ts';

const KEYS = ['slope', 'pin', 'pins', 'halfPin', 'lap', 'tails', 'tailBoard'];

describe('the closestWord known word', () => {
  it('forgives capitals, blanks, hyphens and underscores', () => {
    expect(['halfpin', 'half-pin', 'HALF_PIN', 'half pin'].map((word) => closestWord(word, KEYS))).toEqual(
      new Array(4).fill('halfPin'),
    );
  });

  it.each([
    ['slpoe', 'slope'],
    ['tail', 'tails'],
    ['tailbord', 'tailBoard'],
    ['lab', 'lap'],
    ['pinn', 'pin'],
  ])('takes %s for %s', (word, meant) => expect(closestWord(word, KEYS)).toBe(meant));

  it.each(['socket', 'x', 'xy', '', 'thickness', 's'.repeat(10_000)])('takes %j for none', (word) =>
    expect(closestWord(word, KEYS)).toBeUndefined(),
  );

  it('prefers the word at the smaller distance, then the one that is listed first', () => {
    expect(closestWord('pinss', KEYS)).toBe('pins');
    expect(closestWord('ab', ['ac', 'ad'])).toBe('ac');
  });
});
