import { describe, expect, it } from 'vitest';
import { cornerComplaints } from '../../src/drawer/cornerComplaints.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import type { Place } from '../../src/units/complaint.ts';
import { speak } from '../../src/units/phrase.ts';
import { drawer, inOpening } from './chest.ts';

const placeOf = (spec: DrawerSpec, end: 'front' | 'back', at: Place): Place | undefined =>
  cornerComplaints(spec, end, [{ at, says: [] }])[0]?.at;

describe("a joint's options", () => {
  it.each([
    [['width'], ['opening', 'height'], ['back', 'drop']],
    [['tailBoard'], ['stock', 'side', 'thickness'], ['stock', 'side', 'thickness']],
    [['pinBoard'], ['stock', 'front', 'thickness'], ['stock', 'back', 'thickness']],
    [['slope'], ['joint', 'slope'], ['back', 'joint', 'slope']],
    [
      ['tails', 2],
      ['joint', 'tails', 2],
      ['back', 'joint', 'tails', 2],
    ],
    [
      ['cutter', 'length'],
      ['cutter', 'length'],
      ['cutter', 'length'],
    ],
  ])('%j are those of its drawer at the front, %j, and at the back, %j', (place, front, back) => {
    expect(placeOf(inOpening(280, 76, 420), 'front', place)).toEqual(front);
    expect(placeOf(inOpening(280, 76, 420), 'back', place)).toEqual(back);
  });

  it('follow from the size of a drawer that is given one', () => {
    const sized = drawer({ space: { kind: 'size', size: { width: 280, height: 76, depth: 420 } } });
    expect(placeOf(sized, 'front', ['width'])).toEqual(['size', 'height']);
  });

  it('are told with the corners that are meant', () => {
    const [told] = cornerComplaints(drawer(), 'back', [{ at: ['pin'], says: ['too thin'] }]);
    expect(told?.at).toEqual(['back', 'joint', 'pin']);
    expect(speak(told?.says ?? [], 'mm')).toBe('back corners: too thin');
  });
});
