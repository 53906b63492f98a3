import fc from 'fast-check';
import startManifold from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { shapeOf } from '../../src/cabinet/measuredOpening.ts';
import { complaintsOf, value } from '../value.ts';

const { CrossSection } = await (async () => {
  const solids = await startManifold();
  solids.setup();
  return solids;
})();
const alike = (width: number, left: number, right = left) => ({
  width: { front: width, back: width },
  height: { left, right },
  depth: 420,
});

describe('shapeOf', () => {
  it('is a rectangle where the diagonals are equal, as in 3-4-5', () => {
    const { upperLeft, upperRight, box } = value(
      shapeOf({ ...alike(400, 300), diagonals: { rising: 500, falling: 500 } }),
    );
    expect([upperLeft, upperRight, box]).toEqual([
      [0, 300],
      [400, 300],
      { width: 400, height: 300, depth: 420 },
    ]);
  });

  it('is taken as square without diagonals, as high as the lower side', () => {
    const { upperRight, box } = value(shapeOf(alike(280, 76, 75)));
    expect(upperRight).toEqual([280, 75]);
    expect(box).toEqual({ width: 280, height: 75, depth: 420 });
  });

  it('is no wider and no higher than the back', () => {
    const shape = shapeOf({
      width: { front: 280, back: 279 },
      height: { left: 76, right: 76, back: 74.5 },
      depth: 420,
    });
    expect(value(shape).box).toEqual({ width: 279, height: 74.5, depth: 420 });
  });

  it('finds corners whose distances are what was measured, and a box that lies within them', () => {
    const corner = fc.tuple(
      fc.double({ min: -6, max: 6, noNaN: true }),
      fc.double({ min: 70, max: 190, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 600, noNaN: true }),
        corner,
        corner,
        (width, [lean, left], [out, right]) => {
          // Four corners are chosen, measured, and found again.
          const corners = [
            [0, 0],
            [width, 0],
            [width + out, right],
            [lean, left],
          ] as const;
          const [a, b, c, d] = corners;
          const distance = ([x, y]: readonly [number, number], [u, v]: readonly [number, number]) =>
            Math.hypot(x - u, y - v);
          const shape = value(
            shapeOf({
              width: { front: width, back: width },
              height: { left: distance(a, d), right: distance(b, c) },
              diagonals: { rising: distance(a, c), falling: distance(b, d) },
              depth: 420,
            }),
          );
          expect(distance(shape.upperLeft, d)).toBeLessThan(1e-6);
          expect(distance(shape.upperRight, c)).toBeLessThan(1e-6);
          // What of the box would be outside the opening, by manifold-3d: nothing.
          const opening = new CrossSection(corners.map(([x, y]): [number, number] => [x, y]));
          const from = Math.max(0, lean);
          const box = CrossSection.square([shape.box.width, shape.box.height]).translate(from, 0);
          expect(box.subtract(opening).area()).toBeLessThan(0.01);
        },
      ),
      { numRuns: 100 },
    );
  });

  it.each<[string, Parameters<typeof shapeOf>[0], string]>([
    [
      'a diagonal that is too long for its sides',
      { ...alike(280, 76), diagonals: { rising: 356, falling: 290 } },
      'diagonals.rising: a diagonal of 356 mm does not reach across 280 mm and a right side of 76 mm; it must lie between 204 mm and 356 mm',
    ],
    [
      'a diagonal that is too short for its sides',
      { ...alike(280, 76), diagonals: { rising: 290, falling: 200 } },
      'diagonals.falling: a diagonal of 200 mm does not reach across 280 mm and a left side of 76 mm; it must lie between 204 mm and 356 mm',
    ],
    [
      'diagonals that bend a corner inwards',
      { ...alike(100, 200), diagonals: { rising: 110, falling: 290 } },
      'diagonals: with these diagonals the opening would be bent inwards or crossed at a corner; rising runs from the lower left corner, falling from the upper left; measure them again',
    ],
  ])('refuses %s', (_, measured, says) => {
    expect(complaintsOf(shapeOf(measured))).toEqual([says]);
  });
});
