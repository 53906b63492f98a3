import { describe, expect, it } from 'vitest';
import { refuse } from '../../src/complaint.ts';
import { grooveComplaint } from '../../src/drawer/grooveComplaint.ts';
import type { Remedies } from '../../src/drawer/remedies.ts';
import type { DrawerSpec } from '../../src/drawer/spec.ts';
import type { Spacing } from '../../src/joint/spec.ts';
import { drawer } from './chest.ts';
import { complaintsOf } from './value.ts';

const { joint } = drawer();
const told = (change: Partial<DrawerSpec>, remedies: Remedies = {}): [says: string, hint: string] => {
  const [line = ''] = complaintsOf(refuse(grooveComplaint(drawer(change), remedies)));
  const [says = '', hint = ''] = line.split('; try ');
  return [says, hint];
};
const LOW: Partial<DrawerSpec> = { groove: { offset: 3, width: 5, depth: 5 } };
const spaced = (spacing: Spacing): Partial<DrawerSpec> => ({ joint: { ...joint, spacing } });

describe('a groove that would show', () => {
  it('is told by how much it misses the lowest tail', () => {
    // The narrowest half pin, 1 mm, the slope's 15/7 and 1 mm to spare: 4.143 mm.
    expect(told(LOW)[0]).toBe(
      'groove.offset: the groove, 3 mm to 8 mm up, would show at the front: it must lie inside the base of the lowest tail, however many there are, with 1 mm to spare, but it lies 1.14 mm too low',
    );
  });

  it('is told which tail it misses', () => {
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

  it('is told what would hide it, and what would not', () => {
    expect(told(LOW)[1]).toBe(
      'a narrower groove or a higher drawer (no groove offset and no pin width and no slope helps by itself)',
    );
    expect(told(LOW, { offset: { bound: 'least', value: 4.15 }, slope: { run: 15 } })[1]).toBe(
      'a groove offset of at least 4.15 mm; or a slope of at most 1:15 (no pin width helps by itself)',
    );
    expect(told(LOW, { offset: { bound: 'most', value: 9.5 }, pin: 4.5, slope: { run: 6.57 } })[1]).toBe(
      'a groove offset of at most 9.5 mm; or a pin of at most 4.5 mm; or a slope of at most 1:6.57',
    );
  });

  it('is told the nearest number of tails that would hide it, where another was wished', () => {
    const five = told(spaced({ kind: 'even', tails: 5 }));
    expect(five[0]).toContain('the lowest of 5 tails');
    expect(five[1]).toMatch(/^4 tails \(/u);
    // A groove too wide for more than one tail: 30 mm and 2 to spare.
    const wide = { groove: { offset: 11, width: 30, depth: 5 } };
    expect(told({ ...wide, ...spaced({ kind: 'even', tails: 3 }) })[1]).toMatch(/^1 tail \(/u);
    expect(told({ ...LOW, ...spaced({ kind: 'listed', tails: [18, 17, 18] }) })[1]).not.toMatch(/\d tail/u);
  });
});
