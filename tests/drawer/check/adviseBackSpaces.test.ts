import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { complaintsOf, value } from '../../value.ts';
import { drawer } from '../chest.ts';

const cutter = { diameter: 12.7, angle: 8, length: 20 };
const { slope: _, ...joint } = drawer().joint;
const guided = (name: string, halfPin = { lower: 6, upper: 6 }) =>
  drawer({
    name,
    cutter,
    joint: { ...joint, pin: 8.5 },
    backJoint: { pin: 9.62, halfPin, spacing: { kind: 'even' } },
  });

describe("the half spaces of the sides' back ends", () => {
  it('are advised on once for all drawers, with how far a cutter would cut', () => {
    const { advice } = value(layOutSet([guided('Buttons'), guided('Thread')]));
    // A half pin of 6 mm is 7.546 mm wide at its base; the cutter takes 12.7 mm.
    expect(complaintsOf(refuse(...advice)).filter((said) => said.includes('half spaces'))).toEqual([
      "cutter.diameter: saw and chisel the half spaces of the sides' back ends: the cutter would cut 5.15 mm into the sides, beyond the back's edges",
    ]);
  });

  it('are one where the back is as high as the sides', () => {
    const { advice } = value(layOutSet([{ ...guided('Buttons'), backDrop: 0 }]));
    expect(complaintsOf(refuse(...advice)).filter((said) => said.includes('back ends'))).toEqual([
      "cutter.diameter: saw and chisel the lower half space of the sides' back ends: the cutter would cut 5.15 mm into the sides, beyond the back's lower edge",
    ]);
  });

  it('are measured at the narrower half pin', () => {
    for (const halfPin of [
      { lower: 8, upper: 6 },
      { lower: 6, upper: 8 },
    ])
      expect(complaintsOf(refuse(...value(layOutSet([guided('Buttons', halfPin)])).advice)).join()).toContain(
        "cutter.diameter: saw and chisel the half spaces of the sides' back ends: the cutter would cut 5.15 mm into the sides, beyond the back's edges",
      );
  });

  it('need no advice where all is cut by hand', () => {
    expect(complaintsOf(refuse(...value(layOutSet([drawer()])).advice)).join()).not.toContain('outer spaces');
  });
});
