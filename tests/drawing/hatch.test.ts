import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Path, Point } from '../../src/drawing/drawing.ts';
import { hatch } from '../../src/drawing/hatch.ts';

/** Between two neighbouring lines 2.2 mm apart at 45 degrees, measured level. */
const STEP = 2.2 * Math.SQRT2;

const rectangle = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

const endsOf = ({ points: [a = [0, 0], b = [0, 0]] }: Path): [Point, Point] => [a, b];

const rounded = (paths: readonly Path[]) =>
  paths.map(({ points }) => points.map((point) => point.map((value) => Number(value.toFixed(6)))));

/** Whether a point lies inside a polygon: a ray to the right crosses its sides an odd number of times. */
const inside = (polygon: readonly Point[], [x, y]: Point): boolean =>
  polygon.filter(([ax, ay], i) => {
    const [bx, by] = polygon[(i + 1) % polygon.length] ?? [ax, ay];
    return ay > y !== by > y && ax + ((bx - ax) * (y - ay)) / (by - ay) > x;
  }).length %
    2 ===
  1;

const coordinate = fc.double({ min: -50, max: 50, noNaN: true });

/** Any polygon whose sides do not cross: its corners stand round its middle, near or far. */
const polygon: fc.Arbitrary<Point[]> = fc
  .tuple(
    coordinate,
    coordinate,
    fc.array(fc.double({ min: 1, max: 40, noNaN: true }), { minLength: 3, maxLength: 9 }),
  )
  .map(([x, y, reaches]) =>
    reaches.map((reach, i): Point => {
      const angle = (2 * Math.PI * i) / reaches.length;
      return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
    }),
  );

const box: fc.Arbitrary<Box> = fc
  .tuple(
    coordinate,
    coordinate,
    fc.double({ min: 0, max: 30, noNaN: true }),
    fc.double({ min: 0, max: 30, noNaN: true }),
  )
  .map(([x0, y0, width, height]) => ({ x0, y0, x1: x0 + width, y1: y0 + height }));

describe('hatch', () => {
  it('draws lines at 45 degrees, 2.2 mm apart, from side to side', () => {
    // On a line x - y is a whole number of steps of 3.111270 mm.
    expect(rounded(hatch(rectangle(0, 0, 5, 4)))).toEqual([
      [
        [0, 3.11127],
        [0.88873, 4],
      ],
      [
        [0, 0],
        [4, 4],
      ],
      [
        [3.11127, 0],
        [5, 1.88873],
      ],
    ]);
  });

  it('fills the inside of any polygon along its lines, and nothing else', () => {
    fc.assert(
      fc.property(
        polygon,
        fc.integer({ min: -30, max: 30 }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        (corners, k, x) => {
          const level = k * STEP;
          const at: Point = [x, x - level];
          const lines = hatch(corners).map(endsOf);
          for (const [a, b] of lines) {
            expect(b[0] - b[1]).toBeCloseTo(a[0] - a[1], 9);
            expect((a[0] - a[1]) / STEP).toBeCloseTo(Math.round((a[0] - a[1]) / STEP), 9);
          }
          const onLine = lines.filter(([a]) => Math.abs(a[0] - a[1] - level) < 1e-6);
          // Ends shorter than 0.05 mm are left out, and at a side itself a point may count either way.
          const near = [-0.06, 0.06].map((off): Point => [at[0] + off, at[1] + off]);
          if (near.some((point) => inside(corners, point) !== inside(corners, at))) return;
          expect(onLine.some(([a, b]) => a[0] <= x && x <= b[0])).toBe(inside(corners, at));
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('leaves its lines out inside the boxes to be kept clear, and only there', () => {
    fc.assert(
      fc.property(polygon, fc.array(box, { maxLength: 4 }), (corners, clear) => {
        const within = ([x, y]: Point, by: number) =>
          clear.some(({ x0, y0, x1, y1 }) => x > x0 + by && x < x1 - by && y > y0 + by && y < y1 - by);
        const left = hatch(corners, clear).map(endsOf);
        for (const [a, b] of left)
          for (const share of [0, 0.1, 0.5, 0.9, 1]) {
            const point: Point = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
            expect(within(point, 1e-9)).toBe(false);
          }
        for (const [a, b] of hatch(corners).map(endsOf)) {
          const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
          const kept = left.some(
            ([c, d]) =>
              Math.abs(c[0] - c[1] - (a[0] - a[1])) < 1e-6 && c[0] <= middle[0] && middle[0] <= d[0],
          );
          if (!within(middle, -0.06)) expect(kept).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('continues from one area into the next', () => {
    const whole = hatch(rectangle(0, 0, 20, 7)).map(endsOf);
    const parts = [...hatch(rectangle(0, 0, 9, 7)), ...hatch(rectangle(9, 0, 20, 7))].map(endsOf);
    const length = (lines: readonly [Point, Point][]) =>
      lines.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
    expect(length(parts)).toBeCloseTo(length(whole), 6);
    const levels = (lines: readonly [Point, Point][]) =>
      [...new Set(lines.map(([a]) => Math.round((a[0] - a[1]) / STEP)))].sort((p, q) => p - q);
    expect(levels(parts)).toEqual(levels(whole));
  });

  it('is empty in an empty area', () => {
    expect(hatch([])).toEqual([]);
    expect(hatch([[1, 1]])).toEqual([]);
    expect(hatch(rectangle(5, 5, 5, 40))).toEqual([]);
  });
});
