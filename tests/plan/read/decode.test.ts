import { describe, expect, it } from 'vitest';
import { decode } from '../../../src/plan/read/decode.ts';
import { complaintsOf } from '../complaintsOf.ts';

const bytes = (...values: readonly (number | string)[]): Uint8Array =>
  Uint8Array.from(
    values.flatMap((value) => (typeof value === 'number' ? [value] : [...new TextEncoder().encode(value)])),
  );

describe('the bytes of a plan', () => {
  it('are UTF-8, in any language', () => {
    expect(decode(bytes('name: Näh­kästchen, швейная шкатулка, 裁縫箱'))).toEqual({
      ok: true,
      text: 'name: Näh­kästchen, швейная шкатулка, 裁縫箱',
    });
  });

  it('may begin with a byte order mark, which does not count as a column', () => {
    expect(decode(bytes(0xef, 0xbb, 0xbf, 'name: x'))).toEqual({ ok: true, text: 'name: x' });
    expect(decode('\uFEFFname: x')).toEqual({ ok: true, text: 'name: x' });
  });

  // The first bytes of each kind, as their standards give them: JPEG (ISO/IEC 10918-1), PNG (ISO/IEC 15948).
  it.each([
    ['a photograph', bytes(0xff, 0xd8, 0xff, 0xe0, 0, 0x10, 'JFIF', 0)],
    ['a picture', bytes(0x89, 'PNG', 13, 10, 26, 10, 0, 0, 0, 13)],
    ['UTF-16 without a mark', bytes('n', 0, 'a', 0)],
    ['a text with a NUL', bytes('name: x\0')],
  ])('cannot be %s', (_, given) =>
    expect(complaintsOf(given)).toEqual([
      'plan.yaml:1:1 this is not text, so it is no plan: a plan is written in YAML or JSON; begin with the plan that "halfpin start" writes',
    ]),
  );

  it('cannot be UTF-16', () => {
    const told = ['plan.yaml:1:1 this text is saved as UTF-16; a plan must be UTF-8; save it again as UTF-8'];
    expect(complaintsOf(bytes(0xff, 0xfe, 'n', 0))).toEqual(told);
    expect(complaintsOf(bytes(0xfe, 0xff, 0, 'n'))).toEqual(told);
  });

  it('cannot be of an older code page, and the letter is pointed out', () => {
    expect(complaintsOf(bytes('units: mm\nname: caf', 0xe9, '\n'))).toEqual([
      'plan.yaml:2:10 here is a letter that is not UTF-8, as a plan must be; save it again as UTF-8',
    ]);
  });

  it('hold no control characters', () => {
    expect(complaintsOf('name: a\u001b[31mb')).toEqual([
      'plan.yaml:1:8 here is a character that cannot be seen (U+001B); delete it and type it again',
    ]);
  });

  it('may be up to 4 MB', () => {
    expect(decode(`name: x #${'x'.repeat(3_999_991)}`)).toMatchObject({ ok: true });
    expect(complaintsOf(new Uint8Array(21e6))).toEqual([
      'plan.yaml:1:1 the plan is 21 MB long; it may have up to 4 MB; divide it into several plans',
    ]);
  });
});
