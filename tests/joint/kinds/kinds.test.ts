import { describe, expect, expectTypeOf, it } from 'vitest';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import {
  foreignLengths,
  hasLength,
  isKind,
  KIND_NAMES,
  KINDS,
  kindFor,
  kindsWith,
  OWN_LENGTH_KEYS,
  OWN_LENGTHS,
  withoutKind,
} from '../../../src/joint/kinds/kinds.ts';

describe('the kinds of corner', () => {
  it('are through, lapped, double-lapped and secret-mitred, the plainest first', () => {
    expect(KIND_NAMES).toEqual(['through', 'lapped', 'double-lapped', 'secret-mitred']);
    expect(KIND_NAMES.filter(isKind)).toEqual(KIND_NAMES);
    expect(['mitred', 'Lapped', '', 'toString', 'constructor'].filter(isKind)).toEqual([]);
  });

  it('each wish for a corner of their own name', () => {
    for (const name of KIND_NAMES) expect(KINDS[name].wish({}).kind).toBe(name);
  });

  it('have among them lengths that only some have', () => {
    expect(OWN_LENGTH_KEYS).toEqual(['lap', 'tailLap']);
    expect(OWN_LENGTHS.map(({ word }) => word)).toEqual(['lap', 'tail lap']);
    expect(hasLength('lapped', 'lap')).toBe(true);
    expect(hasLength('through', 'lap')).toBe(false);
  });

  it('are known by the lengths that are given', () => {
    expect(kindsWith([])).toEqual(['through', 'lapped', 'double-lapped', 'secret-mitred']);
    expect(kindsWith(['lap'])).toEqual(['lapped', 'double-lapped', 'secret-mitred']);
    expect(kindFor([])).toBe('through');
    expect(kindFor(['lap'])).toBe('lapped');
    expect(kindFor(['lap', 'tailLap'])).toBe('double-lapped');
    expect(kindFor(['tailLap'])).toBe('double-lapped');
    expect(kindFor(['lap'], 'lapped')).toBe('lapped');
    expect(kindFor([], 'lapped')).toBe('lapped');
    expect(kindFor(['tailLap'], 'lapped')).toBe('double-lapped');
  });

  it('find lengths that are given for another kind, and none that are not given', () => {
    expect(foreignLengths('through', { lap: 5 }).map(({ key }) => key)).toEqual(['lap']);
    expect(foreignLengths('through', {})).toEqual([]);
    expect(foreignLengths('lapped', { lap: 5 })).toEqual([]);
  });

  it('leave of a wish what every kind may be given', () => {
    expect(withoutKind({ kind: 'lapped', lap: 5, pin: 4 })).toStrictEqual({ pin: 4 });
  });

  it('give no length to a wish for a corner that has none', () => {
    const board = { width: 96, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } } as const;
    const lap = { ...board, kind: 'lapped', lap: 5 } as const;
    const both = { ...board, kind: 'through', lap: 5 } as const;
    expectTypeOf(lap).toExtend<JointSpec>();
    expectTypeOf(both).not.toExtend<JointSpec>();
  });
});
