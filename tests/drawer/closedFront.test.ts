import { describe, expect, it } from 'vitest';
import type { DrawerSpec, JointWish } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { complaintsOf, value } from '../value.ts';
import { drawer, joint } from './chest.ts';

const { lap: _, kind: __, ...common } = joint;
const DOUBLE: JointWish = { ...common, kind: 'double-lapped', lap: 5, tailLap: 4 };
const SECRET: JointWish = { ...common, kind: 'secret-mitred', lap: 4, mitre: 'corner' };
const { groove } = drawer();

const made = (front: JointWish, change: Partial<DrawerSpec> = {}) => {
  const [first] = value(layOutSet([drawer({ joint: front, ...change })])).drawers;
  if (first === undefined) throw new Error('one drawer');
  return first;
};
const refusals = (front: JointWish, change: Partial<DrawerSpec> = {}) =>
  complaintsOf(layOutSet([drawer({ joint: front, ...change })]));

describe('a drawer whose front corners laps close on both boards', () => {
  it('has sides that end behind the lap, or at the front’s outside face where they are mitred', () => {
    // 420 - 12 deep.
    expect(made(DOUBLE).boards.side.length).toBe(408 - 5);
    expect(made(SECRET).boards.side.length).toBe(408);
    expect(made(SECRET).boards.front.length).toBe(made(DOUBLE).boards.front.length);
  });

  it.each([
    ['double-lapped', DOUBLE],
    ['secret-mitred', SECRET],
  ])('may have its groove anywhere: %s', (_, front) => {
    for (const offset of [0, 1, 4, 20, 33]) {
      const { front: laid, choices } = made(front, { groove: { ...groove, offset } });
      expect(choices.length).toBeGreaterThan(1);
      // The half pin stays as wished, 6 mm above the shoulder.
      const [from = 0] = laid.tails[0]?.tip ?? [];
      expect(from - laid.shoulder.lower).toBeCloseTo(6, 9);
    }
  });

  it('keeps 1 mm between its groove and the laps, in the sides and in the front', () => {
    // 11 - 4 - 1 and 20 - 5 - 1.
    expect(refusals(DOUBLE, { groove: { ...groove, depth: 6 } })).toEqual([]);
    expect(refusals(DOUBLE, { groove: { ...groove, depth: 6.1 } })).toEqual([
      'drawers.0.groove.depth: "Buttons": the groove is 6.1 mm deep; at the front corners it must stay 1 mm under the lap of the sides, so it may be at most 6 mm; try 6mm',
    ]);
  });

  it('tells the lap of the front where that leaves less', () => {
    expect(refusals({ ...DOUBLE, lap: 16, tailLap: 2 }, { groove: { ...groove, depth: 4 } })).toEqual([
      'drawers.0.groove.depth: "Buttons": the groove is 4 mm deep; at the front corners it must stay 1 mm under the lap of the front, so it may be at most 3 mm; try 3mm',
    ]);
  });

  it('has no lip, and no groove that stops short of what laps cover', () => {
    const lip = { sides: 6, top: 6, bottom: 0 };
    expect(refusals(DOUBLE, { lip })).toEqual([
      'drawers.0.joint.kind: "Buttons": a front with a lip cannot have double-lapped corners: its lip is the lap of a lapped joint; try lapped, or remove the lip',
    ]);
    expect(refusals(SECRET, { groove: { ...groove, stopped: 6 } })).toEqual([
      `drawers.0.groove.stopped: "Buttons": the laps of a secret-mitred joint cover the groove's ends: it need not stop short of them; try none`,
    ]);
  });
});
