import { expect, it } from 'vitest';
import { frontsPicture } from '../../../src/sheets/fittings/frontsPicture.ts';

it('a front shows its pulls whole, wherever they are', () => {
  const lip = { sides: 0, top: 0, bottom: 0 };
  const front = { index: 0, x: 0, y: 0, width: 280, height: 76, lip };
  const outline = { x0: 100, y0: -20, x1: 180, y1: 40 };
  const { marks } = frontsPicture([front], 0.5, () => ({
    pulls: [{ at: [140, 10], holes: [], outline }],
  }));
  const drawn = marks.flatMap((mark) => (mark.kind === 'fill' ? mark.paths : []));
  const heights = drawn.flatMap(({ points }) => points.map(([, y]) => y));
  // To half its size, from 20 below the front's edge to 40 above it.
  expect([Math.min(...heights), Math.max(...heights)]).toEqual([-10, 20]);
});
