import { assert, constantFrom, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diceSimilarity } from '../../src/wood/diceSimilarity.ts';

describe('diceSimilarity', () => {
  it('is 1 for the same word and 0 for words without a pair of letters in common', () => {
    expect(diceSimilarity('oak', 'oak')).toBe(1);
    expect(diceSimilarity('oak', 'elm')).toBe(0);
  });

  it('is twice the shared pairs over all pairs, ends included', () => {
    // ^t te ea ak k$ and ^t ta ae ek k$ share ^t and k$.
    expect(diceSimilarity('taek', 'teak')).toBe(4 / 10);
    // ^o oa ak k$ and ^o oa ar r$ share ^o and oa.
    expect(diceSimilarity('oar', 'oak')).toBe(4 / 8);
  });

  it('does not count words of the name that were not asked for', () => {
    expect(diceSimilarity('maple', 'maple red')).toBe(1);
  });

  it('is the mean over the words asked for', () => {
    expect(diceSimilarity('oak elm', 'oak')).toBe(0.5);
  });

  it('lies between 0 and 1 and does not mind the order of words', () => {
    const word = constantFrom('oak', 'oka', 'red', 'reed', 'elm', '木');
    assert(
      property(word, word, word, (a, b, c) => {
        const value = diceSimilarity(`${a} ${b}`, c);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
        expect(diceSimilarity(`${b} ${a}`, c)).toBe(value);
        expect(diceSimilarity(c, `${a} ${b}`)).toBe(diceSimilarity(c, `${b} ${a}`));
      }),
    );
  });
});
