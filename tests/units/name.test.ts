import { describe, expect, it } from 'vitest';
import { nameKey, parseName, repeatedNames } from '../../src/units/name.ts';
import { speak } from '../../src/units/phrase.ts';

const told = (text: string): string => {
  const read = parseName(text);
  return read.ok ? read.value : read.complaints.map(({ says }) => speak(says, 'mm')).join();
};

describe('a name', () => {
  it.each([
    'Buttons',
    'Кружева и ленты',
    'חולצות',
    '漢字',
    'e\u0301',
    '👩‍👩‍👧‍👦',
    '../../etc/passwd',
    '<script>',
    '{{7*7}}',
  ])('may be %s', (name) => {
    expect(parseName(name)).toEqual({ ok: true, value: name });
  });

  it('is without the blanks round it, and of 1 to 80 letters', () => {
    expect(told('  Thread ')).toBe('Thread');
    expect(told('W'.repeat(80))).toBe('W'.repeat(80));
    expect(told(' ')).toBe('"" has 0 letters; it must have 1 to 80');
    expect(told('\u200E\u200B')).toMatch(/ has 0 letters; it must have 1 to 80$/u);
    expect(told('W'.repeat(81))).toMatch(/^"W{40}…" has 81 letters; it must have 1 to 80$/u);
  });

  it.each([
    ['a line end', 'a\nb', 'U+000A'],
    ['an escape', 'a\u001b[2J', 'U+001B'],
    ['a control character of eight bits', 'a\u009b2J', 'U+009B'],
    ['half a letter', 'a\uD800', 'U+D800'],
    ['a mark that turns what follows round', 'a\u202Egpj.exe', 'U+202E'],
  ])('holds no %s', (_, name, code) => {
    expect(told(name)).toBe(`this holds a character that cannot be printed, ${code}`);
  });
});

describe('two names', () => {
  it.each([
    ['Left side', 'left  SIDE'],
    ['Left side', ' Leftside '],
    ['Caf\u00E9', 'Cafe\u0301'],
    ['\uFF21', 'a'],
    ['Left\u200E side', '\u200FLeft\u200B side\u00AD'],
  ])('%s and %s are the same', (a, b) => {
    expect(nameKey(a)).toBe(nameKey(b));
  });

  it('differ in any letter, figure or sign', () => {
    expect(new Set(['Left side', 'Left-side', 'Left side 2', 'Left'].map(nameKey)).size).toBe(4);
  });

  it('in one list are reported by their places', () => {
    expect(repeatedNames(['Thread', undefined, 'Buttons', 'THREAD', 'thread '])).toEqual([
      { name: 'THREAD', index: 3, first: 0 },
      { name: 'thread ', index: 4, first: 0 },
    ]);
  });
});
