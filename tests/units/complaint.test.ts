import { describe, expect, it } from 'vitest';
import { under } from '../../src/units/complaint.ts';

describe('complaints seen from a level further out', () => {
  it('stand under its place, but those of the cutter at the one cutter', () => {
    const places = under(
      ['drawers', 1],
      [
        { at: ['joint', 'pin'], says: [] },
        { at: ['cutter', 'length'], says: [] },
      ],
    ).map(({ at }) => at);
    expect(places).toEqual([
      ['drawers', 1, 'joint', 'pin'],
      ['cutter', 'length'],
    ]);
  });
});
