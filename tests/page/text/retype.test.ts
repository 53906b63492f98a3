import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { retype } from '../../../src/page/text/retype.ts';

const anyText = fc
  .array(fc.constantFrom('a', 'b', '\n', '\r\n'), { maxLength: 12 })
  .map((parts) => parts.join(''));
/** What a text field makes of a text. */
const shown = (text: string): string => text.replaceAll('\r\n', '\n');

describe('retype', () => {
  it('keeps the line breaks of what was not typed over, and writes new ones as the first', () => {
    expect(retype('a\r\nb\r\nc\n', 'a\nb2\n\nc\n')).toBe('a\r\nb2\r\n\r\nc\n');
    expect(retype('a\r\nb', 'a\nb')).toBe('a\r\nb');
  });

  it('always gives what was typed, and the text itself where nothing was', () => {
    fc.assert(
      fc.property(anyText, anyText, (text, typed) => {
        expect(shown(retype(text, shown(typed)))).toBe(shown(typed));
        expect(retype(text, shown(text))).toBe(text);
      }),
    );
  });
});
