import { describe, expect, it } from 'vitest';
import { atLeast, atMost, mm, say, speak } from '../../src/units/phrase.ts';

describe('a phrase', () => {
  it('keeps its lengths until the unit is known', () => {
    const phrase = say`the lap is ${mm(12.7)}; it must be ${mm(1)} to ${mm(25.4)}`;
    expect(speak(phrase, 'mm')).toBe('the lap is 12.7 mm; it must be 1 mm to 25.4 mm');
    expect(speak(phrase, 'in')).toBe('the lap is 1/2"; it must be 3/64" −.008 to 1"');
  });

  it('tells a bound in inches as a mark of the rule within it, to be typed as it is', () => {
    const range = say`${atLeast(10)} to ${atMost(5000)}`;
    expect(speak(range, 'mm')).toBe('10 mm to 5000 mm');
    // 10 mm is 25.2 sixty-fourths of an inch, 5000 mm 12598.4 of them.
    expect(speak(range, 'in')).toBe('13/32" to 196 27/32"');
    expect(speak(say`${atLeast(12.7)} to ${atMost(25.4)}`, 'in')).toBe('1/2" to 1"');
    // Under the first mark there is none within: 0.3 mm is 0.0118 in, 0.0038 in under it.
    expect(speak(say`${atMost(0.3)}`, 'in')).toBe('1/64" −.004');
  });

  it('writes numbers, strings and other phrases as they are', () => {
    expect(speak(say`${3} ${'tails'} of ${say`about ${mm(20)}`}`, 'mm')).toBe('3 tails of about 20 mm');
  });

  it('may be empty', () => {
    expect(speak(say``, 'mm')).toBe('');
  });
});
