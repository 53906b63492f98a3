import { expect, test } from 'vitest';
import { copiesNeeded } from '../../src/paper/copiesNeeded.ts';

test('nothing is said of pages that are needed once', () => {
  expect(copiesNeeded([])).toBe('');
  expect(copiesNeeded([1, 1, 1])).toBe('');
});

test('pages are listed by their copies, three or more in a row by the first and the last', () => {
  expect(copiesNeeded([1, 2, 2, 3, 2, 2, 2])).toBe(
    'once: page 1; twice: pages 2, 3, 5 to 7; 3 times: page 4',
  );
  expect(copiesNeeded([12])).toBe('12 times: page 1');
});
