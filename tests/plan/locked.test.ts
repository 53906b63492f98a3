import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/plan/readPlan.ts';
import { complaintsOf } from './complaintsOf.ts';

const corner = (keys: string): string =>
  `joints: [{name: A, kind: through, width: 60, tailBoard: 12, pinBoard: 12, ${keys}}]\n`;
const LISTED = 'tails: [20, 20], pins: [8], halfPin: 6';
const told = (plan: string): string[] => complaintsOf(plan).map((line) => line.replace(/^\S+ /u, ''));

describe('locked widths', () => {
  it('are numbered from the reference edge', () => {
    const reading = readPlan(corner(`${LISTED}, locked: [pin 1, lower half pin, tail 2]`));
    expect(reading.ok && reading.plan.joints[0]?.spec.spacing).toEqual({
      kind: 'listed',
      tails: [20, 20],
      pins: [8],
      locked: [0, 2, 3],
    });
  });

  it('are refused by a name that the corner does not have, with those it has', () => {
    expect(told(corner(`${LISTED}, locked: [tail 2, tail 3, Tail 1]`))).toEqual([
      'joints[0].locked[1]: "tail 3" is no width of this corner; they are lower half pin, tail 1 to tail 2, pin 1, upper half pin',
      'joints[0].locked[2]: "Tail 1" is no width of this corner; they are lower half pin, tail 1 to tail 2, pin 1, upper half pin',
    ]);
  });

  it('are refused where their widths are not listed', () => {
    expect(told(corner('tails: 2, locked: [tail 1]'))).toEqual([
      'joints[0].locked: widths are locked, but the tails are not listed, so they follow from the board; list the tails, or remove the locks',
    ]);
    expect(told(corner('tails: [20, 20], pin: 8, locked: [pin 1, upper half pin]'))).toEqual([
      'joints[0].locked[0]: pin 1 is locked, but the pins are not listed; list the pins between the tails, or remove the lock',
      'joints[0].locked[1]: the upper half pin is locked, but its width is not given; give the half pins beside it: halfPin: [6mm, 6mm]',
    ]);
    expect(told(corner(`${LISTED}, locked: tail 1`))).toEqual([
      'joints[0].locked: this is "tail 1"; it must be a list of widths by their names, such as [lower half pin, tail 2]',
    ]);
  });

  it('go with the tails that they are of, for all drawers and for one', () => {
    const plan = (own: string): string => `stock: {front: {thickness: 20}, side: {thickness: 11}}
joint: {tails: [17, 17, 17], pins: [6, 6], halfPin: 6, locked: [tail 3]}
drawers: [{name: A, size: {width: 280, height: 75, depth: 300}${own}}]
`;
    const locked = (text: string): readonly number[] | undefined => {
      const reading = readPlan(text);
      if (!reading.ok) throw new Error(complaintsOf(text).join());
      const { spacing } = reading.plan.drawers[0]?.joint ?? {};
      return spacing?.kind === 'listed' ? spacing.locked : undefined;
    };
    expect(locked(plan(''))).toEqual([5]);
    expect(locked(plan(', joint: {locked: [tail 1]}'))).toEqual([1]);
    expect(locked(plan(', joint: {tails: 2}'))).toBeUndefined();
    expect(locked(plan(', joint: {tails: [63], pins: []}'))).toBeUndefined();
  });
});
