import { describe, expect, it } from 'vitest';
import { backPlace, frontPlace, ofCorners } from '../../src/drawer/places.ts';
import { speak } from '../../src/units/phrase.ts';
import { drawer, inOpening } from './chest.ts';

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
  ])('%j are those of its drawer at the front, %j, and at the back, %j', (place, front, back) => {
    expect(frontPlace(inOpening(280, 76, 420), place)).toEqual(front);
    expect(backPlace(place)).toEqual(back);
  });

  it('follow from the size of a drawer that is given one', () => {
    const sized = drawer({ space: { kind: 'size', size: { width: 280, height: 76, depth: 420 } } });
    expect(frontPlace(sized, ['width'])).toEqual(['size', 'height']);
  });

  it('are told with the corners that are meant', () => {
    const [told] = ofCorners('back', backPlace, [{ at: ['pin'], says: ['too thin'] }]);
    expect(told?.at).toEqual(['back', 'joint', 'pin']);
    expect(speak(told?.says ?? [], 'mm')).toBe('back corners: too thin');
  });
});
