import { describe, expect, it } from 'vitest';
import { duplicate, remove } from '../../../../src/page/model/drawers.ts';
import type { Snapshot } from '../../../../src/page/model/snapshot.ts';
import type { Result } from '../../../../src/units/complaint.ts';
import { value } from '../../../value.ts';
import { cornerIn, EXAMPLE, snapshotOf } from '../../chest.ts';

const removed = (text: string, index: number): Snapshot => {
  const now = snapshotOf(text);
  const made: Result<Snapshot> = remove(now, cornerIn(now, { of: 'drawer', index, end: 'front' }));
  return snapshotOf(value(made).text);
};
const heights = ({ project }: Snapshot) =>
  project.cabinet?.openings.map(({ name, height }) => [name, height]);

const RULED = `stock: {front: {thickness: 20}, side: {thickness: 11}}
cabinet: # clear inside
  width: 600
  height: 418
  depth: 420
  rail: 18
  rows: [[Buttons, {rows: [Thread, Ribbon], width: 200}], Cloth]
`;

describe('a drawer that is removed from its cabinet', () => {
  it('goes with its row, and the cabinet is as much lower', () => {
    const now = removed(EXAMPLE, 3);
    expect(heights(now)).toEqual([
      ['Buttons', 76],
      ['Buttons', 76],
      ['Thread', 76],
      ['Thread', 76],
      ['Ribbon', 110],
      ['Ribbon', 110],
      ['Notions', 146],
      ['Cloth', 190],
    ]);
    // 778 less 110 and a rail of 14.
    expect(now.text).toContain('  height: 654\n');
    expect(now.text).toContain('[Ribbon, Ribbon], Notions, Cloth]   # from the top');
  });

  it('goes with both of its places in a row', () => {
    const now = removed(EXAMPLE, 0);
    expect(now.text).toContain('rows: [[Thread, Thread], [Ribbon, Ribbon], Patches, Notions, Cloth]');
    expect(now.text).toContain('heights: [76, 110, 110, 146, 190]');
  });

  it('leaves its width to those beside it, or the height of a place to the rows inside', () => {
    const wide = RULED.replace(', width: 200', '');
    expect(removed(wide, 0).text).toContain('rows: [[{rows: [Thread, Ribbon]}], Cloth]');
    expect(removed(RULED, 1).text).toContain('rows: [[Buttons, {rows: [Ribbon], width: 200}], Cloth]');
  });

  it('is copied with an opening of its own, as it has no place there', () => {
    const now = snapshotOf(EXAMPLE);
    const made = value(duplicate(now, cornerIn(now, { of: 'drawer', index: 3, end: 'front' })));
    expect(made.text).toContain('{name: Patches 2, opening: {width: 574, height: 110, depth: 420}}');
  });
});
