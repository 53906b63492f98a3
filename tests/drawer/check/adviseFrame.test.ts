import { describe, expect, it } from 'vitest';
import { readProject } from '../../../src/project/readProject.ts';
import { told } from '../../value.ts';

const said = (runner: number, clearance = 0.5) => {
  const reading = readProject(`
stock: {front: {thickness: 20}, side: {thickness: 11}}
fit: {side: ${clearance}}
cabinet: {width: 600, height: 300, depth: 420, rail: 18, rows: [Buttons, Cloth], runners: {width: ${runner}}}
drawers: [{name: Buttons}, {name: Cloth, stock: {side: {thickness: 13}}}]
`);
  if (!reading.ok) throw new Error('these drawers can be made');
  return told(reading.value.set.advice).filter((each) => each.startsWith('cabinet'));
};

describe('adviseFrame', () => {
  it('tells of runners that the thickest side would run off when it lies against one side of its opening', () => {
    // 13 and twice 0.5.
    expect(said(13.5)).toEqual([
      'cabinet.runners.width: runners 13.5 mm wide do not carry the whole side of "Cloth", which needs 14 mm with its clearance on both sides; try 14mm',
    ]);
    expect(said(14)).toEqual([]);
    expect(said(14, 0.6)).toHaveLength(1);
  });
});
