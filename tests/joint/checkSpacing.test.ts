import { describe, expect, it } from 'vitest';
import type { Spacing } from '../../src/joint/jointSpec.ts';
import { against } from './told.ts';

// Over 12 mm, 1:8 takes 1.5 from each side of a tail: a base of 3 needs a tip of 6.
const wrongWith = (spacing: Spacing): string[] =>
  against({ kind: 'through', width: 100, tailBoard: 10, pinBoard: 12, spacing });

describe('a spacing that is no spacing', () => {
  it.each([[0], [-3], [2.5], [Number.NaN], [Number.POSITIVE_INFINITY]])('with %d tails', (tails) => {
    expect(wrongWith({ kind: 'even', tails })).toEqual([
      `tails: ${tails} is no number of tails; it must be a whole number, at least 1; remove it, to have the number chosen`,
    ]);
  });

  it.each([[0], [0.49], [2.01], [-1], [Number.NaN]])('with a ratio of %d', (ratio) => {
    expect(wrongWith({ kind: 'graded', ratio, from: 'edge' })).toEqual([
      `graded: the ratio from tail to tail is ${ratio}; it must be 0.5 to 2; try 0.9`,
    ]);
  });

  it('with an empty list', () => {
    expect(wrongWith({ kind: 'listed', tails: [] })).toEqual([
      'tails: no tails are listed; list at least one width',
    ]);
    expect(wrongWith({ kind: 'listed', tails: [], pins: [] })).toHaveLength(1);
  });

  it('with more or fewer pins than go between the tails', () => {
    expect(wrongWith({ kind: 'listed', tails: [20, 20, 20], pins: [5] })).toEqual([
      'pins: 1 pin is listed between 3 tails; there must be 2 (the half pins are given separately)',
    ]);
    expect(wrongWith({ kind: 'listed', tails: [90], pins: [5] })).toHaveLength(1);
  });

  it('with listed tails and pins too narrow to cut, each named by its place', () => {
    expect(
      wrongWith({
        kind: 'listed',
        tails: [20, 5.9, Number.NaN, 6],
        pins: [0.9, 1, Number.POSITIVE_INFINITY],
      }),
    ).toEqual([
      'tails.1: tail 2 is 5.9 mm wide; it must be 6 mm to 5000 mm, for a base of at least 3 mm',
      'tails.2: tail 3 is not a number wide; it must be 6 mm to 5000 mm, for a base of at least 3 mm',
      'pins.0: pin 1 is 0.9 mm; it must be 1 mm to 5000 mm',
      'pins.2: pin 3 is not a number; it must be 1 mm to 5000 mm',
    ]);
  });

  it('but not with tails that only a slope which is itself wrong makes too narrow', () => {
    // At 1:1 a base of 3 over 12 mm would need a tip of 27.
    const steep = { kind: 'through', width: 100, tailBoard: 10, pinBoard: 12, slope: { run: 1 } } as const;
    const wrong = (tails: readonly number[]) =>
      against({ ...steep, spacing: { kind: 'listed', tails } }).map((line) => line.split(':')[0]);
    expect(wrong([20, 20, 20])).toEqual(['slope']);
    expect(wrong([20, 2.9, 20])).toEqual(['slope', 'tails.1']);
  });
});
