import { assert, constantFrom, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likeness } from '../../src/wood/likeness.ts';

describe('likeness', () => {
  it('is 1 for the same word and 0 for words without a pair of letters in common', () => {
    expect(likeness('oak', 'oak')).toBe(1);
    expect(likeness('oak', 'elm')).toBe(0);
  });

  it('is twice the shared pairs over all pairs, ends included', () => {
    // ^t te ea ak k$ and ^t ta ae ek k$ share ^t and k$.
    expect(likeness('taek', 'teak')).toBe(4 / 10);
    // ^o oa ak k$ and ^o oa ar r$ share ^o and oa.
    expect(likeness('oar', 'oak')).toBe(4 / 8);
  });

  it('does not count words of the name that were not asked for', () => {
    expect(likeness('maple', 'maple red')).toBe(1);
  });

  it('is the mean over the words asked for', () => {
    expect(likeness('oak elm', 'oak')).toBe(0.5);
  });

  it('lies between 0 and 1 and does not mind the order of words', () => {
    const word = constantFrom('oak', 'oka', 'red', 'reed', 'elm', '木');
    assert(
      property(word, word, word, (a, b, c) => {
        const value = likeness(`${a} ${b}`, c);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1);
        expect(likeness(`${b} ${a}`, c)).toBe(value);
        expect(likeness(c, `${a} ${b}`)).toBe(likeness(c, `${b} ${a}`));
      }),
    );
  });
});
