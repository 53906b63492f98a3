import { describe, expect, it } from 'vitest';
import { quote } from '../../src/units/quote.ts';

describe('quote', () => {
  it('makes control characters visible and never cuts a character in two', () => {
    expect(quote('a\nb\u001b[31m')).toBe('"a\\nb\\u001b[31m"');
    // Eight-bit controls, and marks that turn the reading direction of the rest of the line.
    expect(quote('a\u009b2J\u202Eb\u2028')).toBe('"a\\u009b2J\\u202eb\\u2028"');
    expect(quote('🪚'.repeat(50))).toBe(`"${'🪚'.repeat(40)}…"`);
  });
});
