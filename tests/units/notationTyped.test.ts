import fc from 'fast-check';
import { expect, it } from 'vitest';
import { formatLength } from '../../src/units/formatLength.ts';
import { halfMark } from '../../src/units/notation.ts';
import { notationTyped } from '../../src/units/notationTyped.ts';

it.each<[readonly (string | number)[], ReturnType<typeof notationTyped>]>([
  [['1-5/8in', '1 9/16"'], 'in/16'],
  [['1-5/8in', '1-9/32in'], 'in/32'],
  [['1/2in', '27/64in'], 'in'],
  [['1-5/8in', '.008in'], 'in/16'],
  [['.797"', '1.250in'], 'in/1000'],
  [['1/128in'], 'in/1000'],
  [['½″', '2 inches'], 'in/16'],
  [["3/4''", '20mm', 18], 'in/16'],
  [['18', 18, '1.8cm', '5/8'], undefined],
  [['', 'x'], undefined],
  [[], undefined],
])('lengths typed as %j are in the notation %j', (typed, notation) => {
  expect(notationTyped(typed, 'mm')).toBe(notation);
  expect(notationTyped(typed, 'in')).toBeUndefined();
});

it('lengths that were shown in a notation are known to be at least as coarse', () => {
  const notations = fc.constantFrom('in', 'in/32', 'in/16', 'in/1000');
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 2, max: 300, noNaN: true }), { minLength: 1 }),
      notations,
      (all, notation) => {
        const typed = notationTyped(
          all.map((length) => formatLength(length, notation)),
          'mm',
        );
        expect(typed && halfMark(typed)).toBeGreaterThanOrEqual(halfMark(notation));
      },
    ),
  );
});
