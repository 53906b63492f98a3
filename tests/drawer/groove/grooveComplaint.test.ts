import { describe, expect, it } from 'vitest';
import { draftDrawer } from '../../../src/drawer/draftDrawer.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { grooveComplaint } from '../../../src/drawer/groove/grooveComplaint.ts';
import type { GrooveFixes } from '../../../src/drawer/groove/grooveFixes.ts';
import type { Spacing } from '../../../src/joint/jointSpec.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { speak } from '../../../src/units/phrase.ts';
import { complaintsOf } from '../../value.ts';
import { drawer } from '../chest.ts';

const { joint } = drawer();
/** What is wrong, and what to try or to choose. */
const told = (change: Partial<DrawerSpec>, fixes: GrooveFixes = {}): [says: string, ways: string] => {
  const [line = ''] = complaintsOf(refuse(grooveComplaint(drawer(change), fixes)));
  const [says = '', ways = ''] = line.split('; ');
  return [says, ways];
};
const LOW: Partial<DrawerSpec> = { groove: { offset: 3, width: 5, depth: 5 } };
const spaced = (spacing: Spacing): Partial<DrawerSpec> => ({ joint: { ...joint, spacing } });

describe('a groove that would show', () => {
  it('is reported with how much it misses the lowest tail', () => {
    // The narrowest half pin, 1 mm, the slope's 15/7 and 1 mm to spare: 4.143 mm.
    expect(told(LOW)[0]).toBe(
      'groove.offset: the groove, 3 mm to 8 mm up, would show at the front: it must lie inside the base of the lowest tail, however many there are, with 1 mm to spare, but it lies 1.14 mm too low',
    );
  });

  it('is reported with the tail that it misses', () => {
    expect(told({ ...LOW, ...spaced({ kind: 'even', tails: 1 }) })[0]).toContain(
      'base of the single tail with',
    );
    expect(told({ ...LOW, ...spaced({ kind: 'even', tails: 3 }) })[0]).toContain(
      'base of the lowest of 3 tails with',
    );
    expect(told({ ...LOW, ...spaced({ kind: 'listed', tails: [18, 17, 18] }) })[0]).toContain(
      'base of the lowest tail listed with',
    );
  });

  it('is reported with both misses where it is wider than the tail', () => {
    // Lapped by 5 a front of 20 is 15 deep, which at 1:7.5 takes 2 off either side: the base runs from 6 + 2 to 6 + 18 - 2.
    const wide = {
      groove: { offset: 5, width: 20, depth: 5 },
      joint: { ...joint, slope: { run: 7.5 }, spacing: { kind: 'listed', tails: [18, 17, 18] } },
    } as const;
    expect(told(wide)[0]).toMatch(/ but it lies 4 mm too low and reaches 4 mm too high$/u);
  });

  it('is reported with what would hide it, and what would not', () => {
    expect(told(LOW)[1]).toBe(
      'choose a narrower groove or a higher drawer (changing only the groove offset, only the pin width or only the slope is not enough)',
    );
    expect(told(LOW, { offset: { bound: 'least', value: 4.15 }, slope: { run: 15 } })[1]).toBe(
      'try 4.15mm, or choose a slope of 1:15 or gentler (changing only the pin width is not enough)',
    );
    expect(told(LOW, { offset: { bound: 'most', value: 9.5 }, pin: 4.5, slope: { run: 6.57 } })[1]).toBe(
      'try 9.5mm, or choose a pin width of 4.5 mm or less or a slope of 1:6.57 or gentler',
    );
  });

  it('is reported in inches with the first or the last mark of a rule that hides it', () => {
    const hintFor = (bound: 'least' | 'most') =>
      speak(grooveComplaint(drawer(LOW), { offset: { bound, value: 4.15 } }).hint ?? [], 'in');
    // 4.15 mm is 0.1634 in: between 10/64 and 11/64.
    expect(hintFor('least')).toBe('11/64"');
    expect(hintFor('most')).toBe('5/32"');
  });

  it('is reported with the nearest number of tails that would hide it, where another was wished', () => {
    const five = told(spaced({ kind: 'even', tails: 5 }));
    expect(five[0]).toContain('the lowest of 5 tails');
    expect(five[1]).toMatch(/^choose 4 tails \(/u);
    // A groove too wide for more than one tail: 30 mm and 2 to spare.
    const wide = { groove: { offset: 11, width: 30, depth: 5 } };
    expect(told({ ...wide, ...spaced({ kind: 'even', tails: 3 }) })[1]).toMatch(/^choose 1 tail \(/u);
    expect(told({ ...LOW, ...spaced({ kind: 'listed', tails: [18, 17, 18] }) })[1]).not.toMatch(/\d tail/u);
  });
});

describe('a groove behind listed tails', () => {
  // At 1:7.5 the lowest tail's base runs from 8 to 22, so a groove of 5 and 1 mm to spare may lie 9 to 16 mm up.
  const listed = (offset: number): DrawerSpec =>
    drawer({
      groove: { offset, width: 5, depth: 5 },
      joint: { ...joint, slope: { run: 7.5 }, spacing: { kind: 'listed', tails: [18, 17, 18] } },
    });

  it('is hidden as long as both its edges are', () => {
    for (const offset of [9, 12, 16]) expect(complaintsOf(draftDrawer(listed(offset)))).toEqual([]);
  });

  it('shows where one of them does', () => {
    // 15 s <= 8.9 - 1 - 6 is 1:7.89 or shallower.
    expect(complaintsOf(draftDrawer(listed(8.9)))).toEqual([
      'groove.offset: the groove, 8.9 mm to 13.9 mm up, would show at the front: it must lie inside the base of the lowest tail listed with 1 mm to spare, but it lies 0.1 mm too low; try 9mm, or choose a slope of 1:7.9 or gentler (changing only the pin width is not enough)',
    ]);
    expect(complaintsOf(draftDrawer(listed(16.1)))).toEqual([
      'groove.offset: the groove, 16.1 mm to 21.1 mm up, would show at the front: it must lie inside the base of the lowest tail listed with 1 mm to spare, but it reaches 0.1 mm too high; try 16mm, or choose a slope of 1:7.9 or gentler (changing only the pin width is not enough)',
    ]);
  });
});

describe('tails for which no groove is to blame', () => {
  const { joint } = drawer();
  const refused = (spacing: Spacing) => complaintsOf(draftDrawer(drawer({ joint: { ...joint, spacing } })));

  it('are refused by themselves where they do not fill the board', () => {
    // 6 + 18 + 5 + 18 + 6 of 75.
    const lines = refused({ kind: 'listed', tails: [18, 18] });
    expect(lines).toEqual([
      expect.stringMatching(/^joint\.tails: front corners: tails, pins and half pins together are 53 mm/u),
    ]);
  });

  it('are refused by themselves where there are too many for even the narrowest half pin', () => {
    // (75 - 6 - 1 + 5) / (3 + 30 / 7 + 5) = 5.9.
    expect(refused({ kind: 'even', tails: 6 })).toEqual([
      expect.stringMatching(/^joint\.tails: front corners: 6 tails are too many for 75 mm: .* 1 to 5;/u),
    ]);
  });
});
