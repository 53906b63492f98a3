import fc from 'fast-check';
import clipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/drawing/drawing.ts';
import {
  holdsBox,
  type Polygon,
  rectangle,
  selfCrossing,
  shareArea,
  signedArea,
  widestOf,
} from '../../src/stock/polygon.ts';

/** Corners at growing angles round a middle: a simple polygon, convex or not. */
const anyStar = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 20, max: 100 })), {
    minLength: 3,
    maxLength: 9,
  })
  .map(
    (rays): Polygon =>
      [...new Map(rays).entries()]
        .sort(([a], [b]) => a - b)
        .map(([angle, reach]): Point => {
          const turn = (angle * Math.PI) / 180;
          return [Math.round(reach * Math.cos(turn)), Math.round(reach * Math.sin(turn))];
        }),
  )
  .filter((star) => star.length >= 3 && selfCrossing(star) === undefined && signedArea(star) > 1);

const moved = (polygon: Polygon, x: number, y: number): Polygon =>
  polygon.map(([px, py]) => [px + x, py + y]);

/** In common, in mm², by another library. */
const common = (a: Polygon, b: Polygon): number => {
  const ring = (polygon: Polygon): [number, number][] => polygon.map(([x, y]) => [x, y]);
  return clipping
    .intersection([ring(a)], [ring(b)])
    .flat()
    .reduce((sum, corners) => sum + signedArea(corners.slice(0, -1)), 0);
};

describe('polygons', () => {
  it('have area in common where another library finds some', () => {
    const shift = fc.integer({ min: -150, max: 150 });
    fc.assert(
      fc.property(anyStar, anyStar, shift, shift, (a, other, x, y) => {
        const b = moved(other, x, y);
        const area = common(a, b);
        fc.pre(area === 0 || area > 0.01);
        expect(shareArea(a, b)).toBe(area > 0);
      }),
    );
  });

  it('that only touch have none', () => {
    const box = rectangle({ x0: 0, y0: 0, x1: 10, y1: 10 });
    expect(shareArea(box, moved(box, 10, 0))).toBe(false);
    expect(shareArea(box, moved(box, 10, 10))).toBe(false);
    expect(shareArea(box, box)).toBe(true);
  });

  it.each<[string, Polygon, readonly [number, number] | undefined]>([
    [
      'a bow tie',
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
      [0, 2],
    ],
    [
      'a line that returns on itself',
      [
        [0, 0],
        [10, 0],
        [5, 0],
        [5, 10],
      ],
      [0, 1],
    ],
    [
      'a corner on another line',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
      ],
      [0, 2],
    ],
    [
      'two corners in one place',
      [
        [0, 0],
        [10, 0],
        [10, 0],
        [5, 10],
      ],
      [0, 1],
    ],
    ['a square', rectangle({ x0: 0, y0: 0, x1: 1, y1: 1 }), undefined],
    [
      'a corner within a straight line',
      [
        [0, 0],
        [5, 0],
        [10, 0],
        [5, 10],
      ],
      undefined,
    ],
  ])('cross themselves or not: %s', (_what, polygon, crossing) => {
    expect(selfCrossing(polygon)).toEqual(crossing);
  });

  it('hold a box where nothing of it is outside', () => {
    const size = fc.integer({ min: 1, max: 80 });
    const place = fc.integer({ min: -100, max: 60 });
    fc.assert(
      fc.property(anyStar, place, place, size, size, (star, x0, y0, length, width) => {
        const box = { x0, y0, x1: x0 + length, y1: y0 + width };
        const outside = length * width - common(star, rectangle(box));
        fc.pre(outside < 1e-6 || outside > 0.01);
        expect(holdsBox(star, box)).toBe(outside < 1e-6);
      }),
    );
  });

  it('have room for a widest rectangle, and for none that is wider', () => {
    fc.assert(
      fc.property(anyStar, fc.integer({ min: 5, max: 120 }), (star, length) => {
        const widest = widestOf(star, length);
        const fits = (width: number): boolean => {
          for (let x = -100; x <= 100; x++)
            for (let y = -100; y <= 100; y += 2)
              if (holdsBox(star, { x0: x, y0: y, x1: x + length, y1: y + width })) return true;
          return false;
        };
        expect(fits(widest + 0.5)).toBe(false);
        if (widest > 6) expect(widest).toBeLessThan(200);
      }),
      { numRuns: 10 },
    );
    // A trapezium 100 long, 40 wide at the left and 20 at the right: over 50 mm from its left end it narrows to 30.
    const trapezium: Polygon = [
      [0, 0],
      [100, 0],
      [100, 20],
      [0, 40],
    ];
    expect(widestOf(trapezium, 50)).toBeCloseTo(30, 3);
    // A gable, 50 high in the middle: 20 mm round the middle are at least 50 - 10 high.
    expect(
      widestOf(
        [
          [0, 0],
          [100, 0],
          [50, 50],
        ],
        20,
      ),
    ).toBeCloseTo(40, 2);
    expect(widestOf(trapezium, 101)).toBe(0);
  });
});
