import { describe, expect, it } from 'vitest';
import { spacerList } from '../../../src/drawer/spacers/spacerList.ts';
import { gapBlock, spacersToCut } from '../../../src/drawer/spacers/spacersToCut.ts';
import { layOutPlan } from '../../../src/project/readProject.ts';

const setOf = (backPin: string) => {
  const reading = layOutPlan(`stock: {front: {thickness: 20}, side: {thickness: 11}}
cutter: {diameter: 12.7, angle: 8, length: 20}
fingers: {together: 14, bush: 16}
joint: {lap: 5, pin: 8.5, halfPin: 6}
back: {joint: {pin: ${backPin}}}
drawers:
  - {name: Ribbon, opening: {width: 280, height: 110, depth: 420}}
  - {name: Cloth, opening: {width: 574, height: 190, depth: 420}}
`);
  if (!reading.ok) throw new Error('the plan cannot be set out');
  return reading.value.set;
};

describe('spacers to cut', () => {
  it('are as many as a corner needs, and one spare', () => {
    const set = setOf('9.62');
    expect(spacerList(set).length).toBeGreaterThan(1);
    expect(spacersToCut(set)).toEqual(spacerList(set).map((group) => ({ ...group, count: group.count + 1 })));
  });

  it('have a gap block beside them only where it fits every gap', () => {
    // B + (pin - (D - 2 L tan 8°)): 16 + 8.5 - 8.484 at the front, and 16 + 9.62 - 9.608 at the back.
    const least = 16 + 9.62 - 12.7 + 22 * Math.tan((8 * Math.PI) / 180);
    expect(gapBlock(setOf('9.62'))).toBeCloseTo(least, 9);
    expect(gapBlock(setOf('9.8'))).toBeUndefined();
  });
});
