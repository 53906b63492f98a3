import { describe, expect, it } from 'vitest';
import { OUTSIDE, project, type View } from '../../../src/sheets/corners/axonometry.ts';
import { endGrain } from '../../../src/sheets/corners/endGrain.ts';
import { box } from './blocks.ts';

const board = box([0, 0, 0], [40, 30, 20]);

/** The distances between neighbouring lines in the picture. */
const gaps = (view: View, lines: ReturnType<typeof endGrain>): number[] => {
  const drawn = lines.map(
    (ends) => ends.map((end) => project(view, end)) as [[number, number], [number, number]],
  );
  return drawn.slice(1).map(([[x, y]], i) => {
    const [[a, b], [c, d]] = drawn[i] ?? [
      [0, 0],
      [0, 0],
    ];
    return Math.abs((c - a) * (y - b) - (d - b) * (x - a)) / Math.hypot(c - a, d - b);
  });
};

describe('end grain', () => {
  it('is hatched on the end of each board that the eye sees, and on no other face', () => {
    // The tail board's fibres run along y, the pin board's along z.
    for (const [name, axis, at] of [
      ['tail', 1, 30],
      ['pin', 2, 20],
    ] as const) {
      const lines = endGrain(name, board, OUTSIDE, 1);
      expect(lines.length).toBeGreaterThan(10);
      expect(lines.flat().every((place) => Math.abs(place[axis] - at) < 1e-9)).toBe(true);
    }
  });

  it('has its lines as far apart in the picture as is asked, however the surface is turned', () => {
    for (const name of ['tail', 'pin'] as const)
      for (const gap of gaps(OUTSIDE, endGrain(name, board, OUTSIDE, 1.5))) expect(gap).toBeCloseTo(1.5, 9);
  });

  it('runs at 45 degrees on a square end', () => {
    for (const [a, b] of endGrain('pin', board, OUTSIDE, 1)) expect(a[0] - b[0]).toBeCloseTo(b[1] - a[1], 9);
  });
});
