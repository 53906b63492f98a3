import { describe, expect, it } from 'vitest';
import type { DrawerSpec, JointWish } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { parts } from '../../src/drawer/partsList.ts';
import { complaintsOf, told, value } from '../value.ts';
import { drawer, joint } from './chest.ts';

const { lap: _, kind: __, ...common } = joint;
const wish = { ...common, mitre: 'corner', shoulder: 'lower' } as const;
const LAPPED: JointWish = { ...wish, kind: 'lapped', lap: 5 };
const THROUGH: JointWish = { ...wish, kind: 'through' };
const { groove } = drawer();

const made = (front: JointWish, change: Partial<DrawerSpec> = {}) => {
  const [first] = value(layOutSet([drawer({ joint: front, ...change })])).drawers;
  if (first === undefined) throw new Error('one drawer');
  return first;
};
const refusals = (front: JointWish, change: Partial<DrawerSpec> = {}) =>
  complaintsOf(layOutSet([drawer({ joint: front, ...change })]));

describe('a drawer whose front corners have a mitred shoulder at the lower edge', () => {
  it('covers the groove unless its width is given: 11 + 5, and 1 to spare', () => {
    expect(made(LAPPED).front.shoulder).toEqual({ lower: 17, upper: 0 });
    expect(made({ ...THROUGH, shoulder: 'both' }).front.shoulder).toEqual({ lower: 17, upper: 3 });
    // An eighth of an inch more than the groove, to the next 1/32: 0.65 in is 20.8 of them.
    const inches = made({ ...THROUGH, notation: 'in/32' }, { groove: { ...groove, offset: 10.51 } });
    expect(inches.front.shoulder.lower).toBeCloseTo((21 / 32) * 25.4, 9);
  });

  it('need not hide it in a tail: the half pin stays as wished above the shoulder, and no advice tells of the groove', () => {
    for (const front of [LAPPED, THROUGH]) {
      const { front: laid, choices, advice } = made(front);
      expect(choices.length).toBeGreaterThan(1);
      const [from = 0] = laid.tails[0]?.tip ?? [];
      expect(from - laid.shoulder.lower).toBeCloseTo(6, 9);
      expect(told(advice).filter((each) => /groove|half pin/u.test(each))).toEqual([]);
    }
  });

  it('has sides of full length, also where the corner is lapped: 420 - 12', () => {
    expect(made(LAPPED).boards.side.length).toBe(408);
    expect(made(THROUGH).boards.side.length).toBe(408);
    // 408, the front's 20 and 3, the back's 11 and 3: the tails begin at the end, though they are cut back from it.
    const set = value(layOutSet([drawer({ joint: LAPPED })]));
    expect(parts(set).find(({ part }) => part === 'side')?.roughLength).toBe(445);
  });

  it('hides a groove above a narrower shoulder inside the lowest tail, measured from there', () => {
    const { front } = made({ ...LAPPED, shoulderWidth: 5 });
    const [low = 0, high = 0] = front.tails[0]?.base ?? [];
    expect([low <= 10 + 1e-9, high >= 17 - 1e-9]).toEqual([true, true]);
    expect(front.pins[0]?.narrow[0]).toBe(5);
    // Nothing can hide it where the shoulder ends within it.
    expect(refusals({ ...LAPPED, shoulderWidth: 13 })[0]).toContain('would show at the front');
  });

  it('lets a groove in the shoulder be deeper than the sockets, up to 3 mm of the front’s thickness', () => {
    const deep = { groove: { ...groove, depth: 7 }, stock: { ...drawer().stock, side: { thickness: 16 } } };
    const thick = { ...LAPPED, lap: 14 };
    expect(refusals(thick, deep)).toEqual([]);
    const { shoulder, mitre, ...plain } = thick;
    expect(refusals(plain, deep)[0]).toContain('it must stay within the sockets');
  });

  it('has no lip, no groove that stops short of the mitre, and no fingers where its tails are sawn', () => {
    expect(refusals(LAPPED, { lip: { sides: 6, top: 6, bottom: 0 } })).toEqual([
      'drawers.0.joint.shoulder: "Buttons": a front with a lip cannot have mitred shoulders: its lip extends over the corners; remove the lip, or the shoulder',
    ]);
    expect(refusals(THROUGH, { groove: { ...groove, stopped: 6 } })).toEqual([
      `drawers.0.groove.stopped: "Buttons": the mitred shoulder covers the groove's ends: it need not stop short of them; try none`,
    ]);
    const cutter = { diameter: 12.7, angle: 8, length: 20 };
    const sawn =
      /^drawers\.0\.joint\.shoulder: "Buttons": front corners: the tails of a lapped joint .* are sawn/mu;
    const refused = (change: Partial<DrawerSpec>) =>
      refusals({ ...LAPPED, slope: { run: 7.12 } }, { cutter, ...change }).join('\n');
    expect(refused({ fingers: { together: 14, bush: 16 } })).toMatch(sawn);
    expect(refused({})).not.toMatch(/front corners/u);
  });

  it('asks how boards that differ are mitred', () => {
    const { mitre, ...asked } = LAPPED;
    expect(refusals(asked)).toEqual([
      'drawers.0.joint.mitre: "Buttons": front corners: a tail board of 11 mm and a pin board of 20 mm do not meet at 45 degrees; say how they are mitred; try corner, or make both boards equally thick',
    ]);
  });
});
