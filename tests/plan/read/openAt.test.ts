import { describe, expect, it } from 'vitest';
import { openAt } from '../../../src/plan/read/openAt.ts';

const open = (text: string): string | undefined => {
  const found = openAt(text, text.length);
  return found && `${found.sign} at ${found.offset}`;
};

describe('openAt', () => {
  it('finds the innermost bracket or quote that is not closed', () => {
    expect(open('a: {b: [1, 2]')).toBe('{ at 3');
    expect(open('a: {b: [1, 2')).toBe('[ at 7');
    expect(open('a: {b: "1, 2}')).toBe('" at 7');
    expect(open("a: 'it''s")).toBe("' at 3");
    expect(open('a: "\\"')).toBe('" at 3');
    expect(open('- [\n- "x"')).toBe('[ at 2');
    expect(open('{"a":{')).toBe('{ at 5');
  });

  it('finds none where all are closed, or are part of a word or a note', () => {
    expect(open('a: {b: [1, "2"], c: \'3\'}\n')).toBeUndefined();
    expect(open('name: Maker\'s 3" {chest [1\n# it\'s {\nb: 1 # ["')).toBeUndefined();
    expect(open('a: "#"\nb: {c: 1#2}')).toBeUndefined();
  });

  it('takes as long as the text is long', () => {
    const line = `[${'{a: "b"}, # c\r'.repeat(100_000)}`;
    expect(open(line)).toBe('[ at 0');
  });
});
