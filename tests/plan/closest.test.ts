import { describe, expect, it } from 'vitest';
import { closest } from '../../src/plan/closest.ts';

const KEYS = ['slope', 'pin', 'pins', 'halfPin', 'lap', 'tails', 'tailBoard'];

describe('the closest known word', () => {
  it('forgives capitals, blanks, hyphens and underscores', () => {
    expect(['halfpin', 'half-pin', 'HALF_PIN', 'half pin'].map((word) => closest(word, KEYS))).toEqual(
      new Array(4).fill('halfPin'),
    );
  });

  it.each([
    ['slpoe', 'slope'],
    ['tail', 'tails'],
    ['tailbord', 'tailBoard'],
    ['lab', 'lap'],
    ['pinn', 'pin'],
  ])('takes %s for %s', (word, meant) => expect(closest(word, KEYS)).toBe(meant));

  it.each(['socket', 'x', 'xy', '', 'thickness', 's'.repeat(10_000)])('takes %j for none', (word) =>
    expect(closest(word, KEYS)).toBeUndefined(),
  );

  it('prefers the word with fewer slips, then the one that is listed first', () => {
    expect(closest('pinss', KEYS)).toBe('pins');
    expect(closest('ab', ['ac', 'ad'])).toBe('ac');
  });
});
