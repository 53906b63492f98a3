import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatten, type Outline } from '../../src/drawing/outline.ts';

describe('flatten', () => {
  it('keeps straight outlines as they are, and closes them', () => {
    const square: Outline = [{ at: [0, 0] }, { at: [2, 0] }, { at: [2, 1] }];
    expect(flatten(square)).toEqual({
      points: [
        [0, 0],
        [2, 0],
        [2, 1],
      ],
      closed: true,
    });
  });

  it('bows an arc with a bulge above 0 to the right of its chord, below 0 to the left', () => {
    const bowl = (bulge: number) => flatten([{ at: [-1, 0], bulge }, { at: [1, 0] }]).points.slice(1, -1);
    expect(bowl(1).every(([, y]) => y < 0)).toBe(true);
    expect(bowl(-1).every(([, y]) => y > 0)).toBe(true);
  });

  it('leaves no arc by 0.002 mm or more: every corner lies on it and every chord near it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        fc.double({ min: 5, max: 350, noNaN: true }),
        fc.boolean(),
        (radius, degrees, clockwise) => {
          const sweep = ((clockwise ? -1 : 1) * degrees * Math.PI) / 180;
          const { points } = flatten([
            { at: [radius, 0], bulge: Math.tan(sweep / 4) },
            { at: [radius * Math.cos(sweep), radius * Math.sin(sweep)] },
          ]);
          points.forEach(([x, y], i) => {
            expect(Math.hypot(x, y)).toBeCloseTo(radius, 6);
            const [nextX, nextY] = points[i + 1] ?? [x, y];
            expect(Math.hypot((x + nextX) / 2, (y + nextY) / 2)).toBeGreaterThan(radius - 0.002);
          });
          const total = points
            .slice(1)
            .reduce((sum, [x, y], i) => sum + turned(points[i] ?? [x, y], [x, y]), 0);
          expect(total).toBeCloseTo(sweep, 6);
        },
      ),
    );
  });
});

/** The angle from one point to another as seen from the origin. */
const turned = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number =>
  Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
