import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clipArea, clipLine, clipMarks, touches } from '../../src/drawing/clip.ts';
import type { Path, Point } from '../../src/drawing/drawing.ts';
import { lengthOf } from '../paper/ink.ts';

const box = { x0: 0, y0: 0, x1: 10, y1: 10 };

test('a line that leaves the box is cut exactly at its border', () => {
  const line: Path = {
    points: [
      [5, 5],
      [15, 7],
    ],
  };
  expect(clipLine(box, line)).toEqual([
    {
      points: [
        [5, 5],
        [10, 6],
      ],
    },
  ]);
});

test('a line through the box, out of it and back leaves two lines', () => {
  const line: Path = {
    points: [
      [-5, 2],
      [15, 2],
      [15, 8],
      [-5, 8],
    ],
  };
  expect(clipLine(box, line)).toEqual([
    {
      points: [
        [0, 2],
        [10, 2],
      ],
    },
    {
      points: [
        [10, 8],
        [0, 8],
      ],
    },
  ]);
});

test('a line on the border stays, one beside it does not, and one that only touches a corner leaves nothing', () => {
  const border: Path = {
    points: [
      [10, 2],
      [10, 8],
    ],
  };
  expect(clipLine(box, border)).toEqual([{ points: border.points, closed: false }]);
  const beside: Path = {
    points: [
      [10.001, 2],
      [10.001, 8],
    ],
  };
  expect(clipLine(box, beside)).toEqual([]);
  const corner: Path = {
    points: [
      [8, 12],
      [12, 8],
    ],
  };
  expect(clipLine(box, corner)).toEqual([]);
});

test('a closed line inside stays closed; one that is cut opens where it leaves and runs on through its first point', () => {
  const square = (x: number): Path => ({
    closed: true,
    points: [
      [x, 2],
      [x + 4, 2],
      [x + 4, 6],
      [x, 6],
    ],
  });
  expect(clipLine(box, square(3))).toEqual([square(3)]);
  expect(clipLine(box, square(8))).toEqual([
    {
      points: [
        [10, 6],
        [8, 6],
        [8, 2],
        [10, 2],
      ],
    },
  ]);
});

const coordinate = fc.double({ min: -20, max: 30, noNaN: true });
const point = fc.tuple(coordinate, coordinate);
const points = fc.array(point, { minLength: 2, maxLength: 8 });

test('cutting a drawing in two loses no length of any line and makes none up', () => {
  const whole = { x0: -20, y0: -20, x1: 30, y1: 30 };
  fc.assert(
    fc.property(points, fc.boolean(), coordinate, (corners, closed, at) => {
      // A line along the cut belongs to both halves.
      fc.pre(corners.every(([, y]) => y !== at));
      const path = { points: corners, closed };
      const halves = [...clipLine({ ...whole, y1: at }, path), ...clipLine({ ...whole, y0: at }, path)];
      expect(lengthOf(halves)).toBeCloseTo(lengthOf([path]), 6);
    }),
  );
});

test('nothing of a clipped line or area lies outside the box', () => {
  fc.assert(
    fc.property(points, fc.boolean(), (corners, closed) => {
      const left = [
        ...clipLine(box, { points: corners, closed }),
        ...[clipArea(box, { points: corners, closed: true })].filter((area) => area !== undefined),
      ];
      for (const [x, y] of left.flatMap((path) => path.points)) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9);
        expect(Math.max(x, y)).toBeLessThanOrEqual(10 + 1e-9);
      }
    }),
  );
});

/** Twice the signed area, by the shoelace formula. */
const area = (corners: readonly Point[]): number =>
  corners.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] ?? [0, 0];
    return sum + x * nextY - nextX * y;
  }, 0);

test('cutting an area in two loses none of it', () => {
  const whole = { x0: -20, y0: -20, x1: 30, y1: 30 };
  fc.assert(
    fc.property(points, coordinate, (corners, at) => {
      const halves = [
        clipArea({ ...whole, x1: at }, { points: corners }),
        clipArea({ ...whole, x0: at }, { points: corners }),
      ];
      const sum = halves.reduce((total, half) => total + area(half?.points ?? []), 0);
      expect(sum).toBeCloseTo(area(corners), 6);
    }),
  );
});

test('marks outside the box go, and text is left to the caller', () => {
  const inside: Path = {
    points: [
      [1, 1],
      [2, 2],
    ],
  };
  const outside: Path = {
    points: [
      [11, 1],
      [12, 2],
    ],
  };
  const stroke = { kind: 'stroke', role: 'slope', pen: 'saw' } as const;
  expect(
    clipMarks(box, [
      { ...stroke, paths: [inside, outside] },
      { ...stroke, paths: [outside] },
      {
        kind: 'text',
        role: 'label',
        text: 'END',
        at: [1, 1],
        size: 3,
        turn: 0,
        anchor: 'start',
        weight: 'bold',
      },
    ]),
  ).toEqual([{ ...stroke, paths: [{ ...inside, closed: false }] }]);
});

test('a line touches a box that it only grazes', () => {
  expect(touches(box, [8, 12], [12, 8])).toBe(true);
  expect(touches(box, [8, 12.1], [12.1, 8])).toBe(false);
});
