import type { Drawing, Path, Point } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import type { Joint } from '../joint/joint.ts';
import { kindOf } from '../joint/kinds/kinds.ts';
import { tailMarks } from './tailMarks.ts';

/**
 * A closed corner as it is seen from the side, `length` mm of it: the pin board at the left, such as its lap, then the
 * tails, shaded, with the pins' ends between them, then the tail board's face. The reference edge is at the bottom, on the height of the origin.
 */
export const sideView = (joint: Joint, length: number, scale: number): Drawing => {
  const { width } = joint;
  const side = kindOf(joint).sideView(joint);
  const place = ([x, u]: Point): Point => [x * scale, u * scale];
  const upright = (x: number): Path => ({ points: [place([x, 0]), place([x, width])] });
  const half = PENS.medium.width / 2;
  const corners: Point[] = [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ];
  return {
    box: { x0: -half, y0: -half, x1: length * scale + half, y1: width * scale + half },
    marks: [
      ...tailMarks(side, place),
      {
        kind: 'stroke',
        role: 'outline',
        pen: 'medium',
        paths: [{ points: corners.map(place), closed: true }, ...side.uprights.map(upright)],
      },
    ],
  };
};
