import { describe, expect, it } from 'vitest';
import { mm, say, speak } from '../../src/units/phrase.ts';

describe('a phrase', () => {
  it('keeps its lengths until the unit is known', () => {
    const phrase = say`the lap is ${mm(12.7)}; it must be ${mm(1)} to ${mm(25.4)}`;
    expect(speak(phrase, 'mm')).toBe('the lap is 12.7 mm; it must be 1 mm to 25.4 mm');
    expect(speak(phrase, 'in')).toBe('the lap is 1/2"; it must be 3/64" −.008 to 1"');
  });

  it('takes in numbers, strings and other phrases as they are', () => {
    expect(speak(say`${3} ${'tails'} of ${say`about ${mm(20)}`}`, 'mm')).toBe('3 tails of about 20 mm');
  });

  it('may be empty', () => {
    expect(speak(say``, 'mm')).toBe('');
  });
});
