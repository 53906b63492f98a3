import { describe, expect, it } from 'vitest';
import { shapeOf } from '../../../src/cabinet/measuredOpening.ts';
import { adviseOpening } from '../../../src/drawer/check/adviseOpening.ts';
import { told, value } from '../../value.ts';
import { drawer } from '../chest.ts';

/** An opening 400 wide and 300 high with a clearance of 0.5 at each side and 1 above, its upper corners where they are said to be. */
const said = (
  left: readonly [number, number],
  right: readonly [number, number],
  back: { width?: number; height?: number } = {},
) => {
  const shape = value(
    shapeOf({
      width: { front: 400, back: back.width ?? 400 },
      height: {
        left: Math.hypot(...left),
        right: Math.hypot(right[0] - 400, right[1]),
        ...(back.height && { back: back.height }),
      },
      diagonals: { rising: Math.hypot(...right), falling: Math.hypot(left[0] - 400, left[1]) },
      depth: 420,
    }),
  );
  return told(
    adviseOpening(
      drawer({
        space: { kind: 'opening', opening: shape.box, fit: { side: 0.5, top: 1, behind: 10 }, shape },
      }),
    ),
  );
};

describe('adviseOpening', () => {
  it('says nothing of an opening whose faults the clearances hide', () => {
    expect(said([0.5, 300], [399.5, 301], { width: 399.5, height: 299 })).toEqual([]);
  });

  it('tells a side that is out of plumb by more than the clearance beside the drawer, and to which hand', () => {
    expect(said([1.5, 300], [400, 300])).toEqual([
      "opening: the opening's left side is 1.5 mm out of plumb, to the right at its upper end, more than the clearance of 0.5 mm: plane it or shim it upright, or cut the front wider and plane it to the opening",
    ]);
  });

  it('tells corners that differ in height more than the clearance above', () => {
    expect(said([0, 300], [400, 301.5])).toEqual([
      'opening: the opening is 1.5 mm higher on the right, more than the clearance of 1 mm above: cut the front higher and plane its upper edge to the opening',
    ]);
  });

  it('tells a back that is narrower or lower', () => {
    expect(said([0, 300], [400, 300], { width: 398, height: 297 })).toEqual([
      'opening.width: the opening is 2 mm narrower behind than in front, more than the clearance of 0.5 mm; the drawer is as narrow as the back: plane the sides of the opening, or taper the drawer',
      'opening.height: the opening is 3 mm lower behind than in front, more than the clearance of 1 mm above; the drawer is as low as the back',
    ]);
  });
});
