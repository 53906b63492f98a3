import { describe, expect, it } from 'vitest';
import { atOption } from '../../../src/cli/options/atOption.ts';
import type { Place } from '../../../src/units/complaint.ts';

const optionOf = (at: Place, instead?: Parameters<typeof atOption>[1]) =>
  atOption({ at, says: [] }, instead).at[0];

describe('the option that a complaint stands at', () => {
  it('is that of its own name', () => {
    expect(atOption({ at: ['tails', 2], says: [] }).at).toEqual(['tails', 2]);
    expect(optionOf(['width'])).toBe('width');
  });

  it.each([
    ['diameter', 'cutterDiameter'],
    ['angle', 'cutterAngle'],
    ['length', 'cutterLength'],
    ['neck', 'cutterNeck'],
    ['straight', 'straight'],
    ['pinBush', 'pinBush'],
  ])("of the cutter's %s is %s", (key, option) => {
    expect(optionOf(['cutter', key])).toBe(option);
  });

  it.each(['tails', 'pins', 'halfPin'])(
    'of %s is the pitch where one is given, for there is no other',
    (key) => {
      expect(optionOf([key], { pitch: 25 })).toBe('pitch');
      expect(optionOf([key], {})).toBe(key);
    },
  );

  it('of what was measured on a trial joint is the one that was typed', () => {
    expect(optionOf(['looseness'], { tight: '0.1' })).toBe('tight');
    expect(optionOf(['looseness'])).toBe('loose');
    expect(optionOf(['proud'], { shy: '0.1' })).toBe('shy');
    expect(optionOf(['proud'])).toBe('proud');
  });
});
