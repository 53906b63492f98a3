import { describe, expect, it } from 'vitest';
import { adviseDrawer } from '../../../src/drawer/check/adviseDrawer.ts';
import { draftDrawer } from '../../../src/drawer/draftDrawer.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import type { Spacing } from '../../../src/joint/jointSpec.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { complaintsOf, value } from '../../value.ts';
import { drawer, joint } from '../chest.ts';

const { stock, bottom, groove } = drawer();

/** What is said of the first drawer in a set that keeps to a target. */
const said = (change: Partial<DrawerSpec>, family: { target?: number; pin?: number } = {}) => {
  const spec = drawer(change);
  const [made] = value(layOutSet([spec])).drawers;
  if (made === undefined) throw new Error('there is no drawer');
  const { target = 18, pin = 5 } = family;
  return complaintsOf(
    refuse(...adviseDrawer(value(draftDrawer(spec)), made.front, { target, pin, tips: [], spread: 1 })),
  );
};
const spaced = (spacing: Spacing): Partial<DrawerSpec> => ({ joint: { ...joint, spacing } });

describe('a drawer among others', () => {
  // Three tails of (75 - 12 - 10) / 3 = 17.67 mm.
  const THREE: Spacing = { kind: 'even', tails: 3 };

  it('differs where its wished tails are half as wide again, with what would not', () => {
    // Four tails need a lower half pin of 7.52 mm to hide the groove: (75 - 6 - 15 - 7.52) / 4.
    expect(said(spaced(THREE), { target: 10 })).toEqual([
      "joint.tails: tails of 17.67 mm differ from the set's tail width, 10 mm: they are 1.77 times as wide; 4 would be 11.62 mm wide; try 4",
    ]);
    // Two tails: (75 - 12 - 5) / 2.
    expect(said(spaced(THREE), { target: 30 })).toEqual([
      "joint.tails: tails of 17.67 mm differ from the set's tail width, 30 mm: they are 1.7 times as narrow; 2 would be 29 mm wide; try 2",
    ]);
    expect(said(spaced(THREE), { target: 12 })).toEqual([]);
  });

  it('differs where its tails are listed, with nothing to choose instead', () => {
    expect(said(spaced({ kind: 'listed', tails: [18, 17, 18] }), { target: 10 })).toEqual([
      "joint.tails: tails of 17.67 mm differ from the set's tail width, 10 mm: they are 1.77 times as wide",
    ]);
  });

  it('does not differ at exactly half as much again', () => {
    // One tail of 75 - 12.
    const single = spaced({ kind: 'listed', tails: [63] });
    expect(said(single, { target: 42 }).join()).not.toContain('differ from the set');
    expect(said(single, { target: 41.9 }).join()).toContain('differ from the set');
  });

  it('does not differ where its number of tails was found for it', () => {
    expect(said({}, { target: 10 })).toEqual([]);
  });

  it('differs by its pins', () => {
    expect(said({}, { pin: 6 })).toEqual(["joint.pin: pins of 5 mm differ from the set's, 6 mm; try 6mm"]);
  });
});

describe('a groove', () => {
  it('may be half as deep as its board is thick, no more', () => {
    expect(said({ groove: { ...groove, depth: 5.5 } })).toEqual([]);
    expect(said({ groove: { ...groove, depth: 6 } })).toEqual([
      'groove.depth: a groove 6 mm deep takes more than half of sides 11 mm thick; try 5.5mm, or let slips carry the bottom (bottom.slips)',
    ]);
    const slips = { ...bottom, hold: { kind: 'slips', width: 12, height: 20 } } as const;
    expect(said({ groove: { ...groove, depth: 6 }, bottom: slips })).toEqual([]);
    expect(said({ groove: { ...groove, depth: 7 }, bottom: slips })).toEqual([
      'groove.depth: a groove 7 mm deep takes more than half of slips 12 mm thick; try 6mm, or make the slips wider',
    ]);
  });

  it('shows at the front of a through joint, unless slips carry it or it stops short', () => {
    const { lap: _, ...noLap } = joint;
    const through: Partial<DrawerSpec> = { joint: { ...noLap, kind: 'through', slope: { run: 8 } } };
    const offset = { groove: { ...groove, offset: 12 } };
    expect(said({ ...through, ...offset })).toEqual([
      "groove.stopped: a groove that runs through the sides' front tails shows at the front of a through joint; try groove: {stopped: auto}, or choose lapped corners",
    ]);
    const slips = { ...bottom, hold: { kind: 'slips', width: 12, height: 20 } } as const;
    expect(said({ ...through, ...offset, bottom: slips })).toEqual([]);
    expect(said({ ...through, groove: { ...offset.groove, stopped: 10 } })).toEqual([]);
  });
});

describe('a bottom', () => {
  const of = (thickness: number) => said({ stock: { ...stock, bottom: { thickness } } });

  it('may be half a millimetre thinner than its groove', () => {
    expect(of(5)).toEqual([]);
    expect(of(4.5)).toEqual([]);
    expect(of(4)).toEqual([
      'stock.bottom.thickness: a bottom of 4 mm is loose in a groove of 5 mm and will rattle; make the groove 4 mm wide (groove.width)',
    ]);
  });

  it('that is thicker than its groove is to be thinned', () => {
    expect(of(8)).toEqual([
      'stock.bottom.thickness: a bottom of 8 mm is thicker than its groove of 5 mm: thin its edges from below to fit',
    ]);
  });
});

describe('a target that is given', () => {
  const told = (target: number) => {
    const set = layOutSet([drawer()], target);
    return set.ok ? complaintsOf(refuse(...set.value.advice)) : complaintsOf(set);
  };

  it('should be two to four pins', () => {
    for (const target of [10, 20])
      expect(told(target).filter((line) => line.startsWith('family'))).toEqual([]);
    for (const [target, nearest] of [
      [9.9, 10],
      [20.1, 20],
    ] as const)
      expect(told(target)).toContain(
        `family.target: tails of ${target} mm are not 2 to 4 times the set's pin of 5 mm; try ${nearest}mm`,
      );
  });

  it.each([0, -5])('is refused where it is %d', (target) => {
    expect(told(target)).toEqual([
      `family.target: the set's tail width is ${target}; it must be more than 0`,
    ]);
  });
});
