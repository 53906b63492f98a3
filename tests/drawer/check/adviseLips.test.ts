import { describe, expect, it } from 'vitest';
import { adviseLips } from '../../../src/drawer/check/adviseLips.ts';
import { readProject } from '../../../src/project/readProject.ts';
import { told } from '../../value.ts';

/** Two drawers side by side over a wide one, with lips all round; a clearance of 1 mm above and 0.5 mm at each side. */
const said = (lip: string, { rail = 18, divider = 18 } = {}) => {
  const reading = readProject(`
stock: {front: {thickness: 22}, side: {thickness: 11}}
front: {lip: ${lip}}
fit: {side: 0.5, top: 1}
cabinet: {width: 600, height: 300, depth: 420, rail: ${rail}, divider: ${divider}, rows: [[Buttons, Thread], Cloth]}
`);
  if (!reading.ok) throw new Error('these drawers can be made');
  return told(adviseLips(reading.value.set.drawers));
};

describe('adviseLips', () => {
  it('says nothing where the rail and the divider have room for both lips and their clearance', () => {
    // Above each other 8 + 8 + 1, side by side 8 + 8 + 2 x 0.5.
    expect(said('8', { rail: 17, divider: 17 })).toEqual([]);
    expect(said('0')).toEqual([]);
  });

  it('tells how near lips come on a rail that is too thin, and on a divider', () => {
    expect(said('8', { rail: 16.5, divider: 15 })).toEqual([
      'cabinet.divider: the lips of "Buttons" and "Thread" would run 1 mm into each other on the divider; make the divider thicker by 2 mm, or the lips narrower',
      'cabinet.rail: the lips of "Cloth" and "Buttons" come within 0.5 mm of each other on the rail, and need 1 mm to move; make the rail thicker by 0.5 mm, or the lips narrower',
      'cabinet.rail: the lips of "Cloth" and "Thread" come within 0.5 mm of each other on the rail, and need 1 mm to move; make the rail thicker by 0.5 mm, or the lips narrower',
    ]);
  });

  it('counts only the lips that meet there', () => {
    expect(said('{sides: 0, top: 16, bottom: 0}')).toEqual([]);
    expect(said('{sides: 8, top: 10, bottom: 10}', { divider: 17 })).toHaveLength(2);
  });
});
