import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { rebateFirst } from '../../src/drawer/rebateFirst.ts';
import { speak } from '../../src/units/phrase.ts';
import { value } from '../value.ts';
import { drawer } from './chest.ts';

const told = (change: Partial<DrawerSpec>) =>
  value(layOutSet([drawer(change)]))
    .drawers.flatMap(rebateFirst)
    .map((phrase) => speak(phrase, 'mm'));

describe('where a front with a lip is measured from', () => {
  it('is its rebate, as far in as the lip and the gap that it covers', () => {
    // A front of 20 with a lap of 5; a lip of 6 over a gap of 0.5.
    expect(told({ lip: { sides: 6, top: 6, bottom: 4 } })).toEqual([
      "cut the front's rebate first, along its ends and both edges, 15 mm deep; gauge the front from the rebate's shoulder, 6.5 mm in from the front's own end; mark it from the rebate's lower edge, 4 mm above the front's own",
    ]);
  });

  it('is its own lower edge, or its own ends, where no rebate runs along them', () => {
    expect(told({ lip: { sides: 6, top: 6, bottom: 0 } })).toEqual([
      "cut the front's rebate first, along its ends and its upper edge, 15 mm deep; gauge the front from the rebate's shoulder, 6.5 mm in from the front's own end",
    ]);
    const size = { width: 280, height: 76, depth: 420 };
    expect(told({ space: { kind: 'size', size }, lip: { sides: 0, top: 6, bottom: 3 } })).toEqual([
      "cut the front's rebate first, along both edges, 15 mm deep; mark it from the rebate's lower edge, 3 mm above the front's own",
    ]);
  });

  it('goes without saying where the front is inset', () => {
    expect(told({})).toEqual([]);
  });
});
