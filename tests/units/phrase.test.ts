import { describe, expect, it } from 'vitest';
import {
  atLeast,
  atMost,
  type LengthWord,
  mm,
  say,
  soldAtLeast,
  soldAtMost,
  speak,
} from '../../src/units/phrase.ts';

describe('a phrase', () => {
  it('keeps its lengths until the unit is known', () => {
    const phrase = say`the lap is ${mm(12.7)}; it must be ${mm(1)} to ${mm(25.4)}`;
    expect(speak(phrase, 'mm')).toBe('the lap is 12.7 mm; it must be 1 mm to 25.4 mm');
    expect(speak(phrase, 'in')).toBe('the lap is 1/2"; it must be 3/64" to 1"');
    expect(speak(phrase, 'in/1000')).toBe('the lap is .500"; it must be .039" to 1.000"');
  });

  it('tells a bound in inches as a mark of the rule within it, to be typed as it is', () => {
    const range = say`${atLeast(10)} to ${atMost(5000)}`;
    expect(speak(range, 'mm')).toBe('10 mm to 5000 mm');
    // 10 mm is 25.2 sixty-fourths of an inch, 5000 mm 12598.4 of them.
    expect(speak(range, 'in')).toBe('13/32" to 196 27/32"');
    expect(speak(say`${atLeast(12.7)} to ${atMost(25.4)}`, 'in')).toBe('1/2" to 1"');
    expect(speak(range, 'in/16')).toBe('7/16" to 196 13/16"');
    expect(speak(range, 'in/1000')).toBe('.394" to 196.850"');
    // Under the first mark there is none within: 0.3 mm is 0.0118 in.
    expect(speak(say`${atMost(0.3)}`, 'in')).toBe('.011"');
    expect(speak(say`${atLeast(0.3)}`, 'in')).toBe('1/64"');
  });

  it('writes numbers, strings and other phrases as they are', () => {
    expect(speak(say`${3} ${'tails'} of ${say`about ${mm(20)}`}`, 'mm')).toBe('3 tails of about 20 mm');
  });

  it('may be empty', () => {
    expect(speak(say``, 'mm')).toBe('');
  });
});

describe('the size of a tool', () => {
  // Half an inch is 12.7 mm, five eighths 15.875.
  const BUSHES = { mm: [12, 16, 20], in: [12.7, 15.875] };
  const told = (word: LengthWord) => [speak([word], 'mm'), speak([word], 'in')];

  it('is the nearest that is sold in the unit that it is bought in', () => {
    expect(told(soldAtMost(18.7, BUSHES))).toEqual(['16 mm', '5/8"']);
    expect(told(soldAtLeast(15.9, BUSHES))).toEqual(['16 mm', '41/64"']);
    expect(told(soldAtLeast(12.1, BUSHES))).toEqual(['16 mm', '1/2"']);
  });

  it('is the bound itself where none is sold within it', () => {
    // 15 mm are 37.8 sixty-fourths.
    expect(told(soldAtMost(15, BUSHES, 13))).toEqual(['15 mm', '37/64"']);
    expect(told(soldAtLeast(21, BUSHES))).toEqual(['21 mm', '53/64"']);
  });
});
