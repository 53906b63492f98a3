import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileStem } from '../../src/sheets/fileStem.ts';

/** No separators, dots, spaces or control characters, nor what file systems reserve. */
const PLAIN = /^[\p{L}\p{M}\p{N}](?:[\p{L}\p{M}\p{N}-]*[\p{L}\p{M}\p{N}])?$/u;

describe('fileStem', () => {
  it.each([
    ['Haberdashery chest', 'haberdashery-chest'],
    ['  Ribbon / lace (upper)  ', 'ribbon-lace-upper'],
    ['Cloth 2', 'cloth-2'],
    ['Кружева', 'кружева'],
    ['Écharpes', 'écharpes'],
    ['E\u0301charpes', 'écharpes'],
    ['हिन्दी', 'हिन्दी'],
    ['..', 'piece'],
    ['🧵', 'piece'],
    ['', 'piece'],
    ['a/../../etc/passwd', 'a-etc-passwd'],
    ['x'.repeat(80), 'x'.repeat(40)],
  ])('makes of %j the stem %j', (name, stem) => {
    expect(fileStem(name)).toBe(stem);
  });

  it('is never empty, hidden, longer than 40 characters, or more than a name', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.nat(0x10ffff).map((code) => String.fromCodePoint(code)) }), (name) => {
        const stem = fileStem(name);
        expect([...stem].length).toBeLessThanOrEqual(40);
        expect(PLAIN.test(stem)).toBe(true);
      }),
    );
  });

  it('stays as it is when it is made again', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        expect(fileStem(fileStem(name))).toBe(fileStem(name));
      }),
    );
  });
});
