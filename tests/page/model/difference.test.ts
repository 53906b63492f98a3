import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { difference, differing } from '../../../src/page/model/difference.ts';

it('what differs is as short as it can be, where it is one run of letters', () => {
  expect(difference('pin: 5 # narrow', 'pin: 5.1 # narrow')).toEqual({ at: 6, length: 0, words: '.1' });
  expect(difference('pin: 5.1', 'pin: 5')).toEqual({ at: 6, length: 2, words: '' });
  expect(difference('aa', 'aaa')).toEqual({ at: 2, length: 0, words: 'a' });
  expect(difference('same', 'same')).toEqual({ at: 4, length: 0, words: '' });
});

it('makes any text of any other', () => {
  const text = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom('a', 'b', '\n', '🪵') }));
  fc.assert(
    fc.property(text, text, (from, to) => {
      expect(differing(from, difference(from, to))).toBe(to);
    }),
  );
});
