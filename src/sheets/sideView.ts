import type { Drawing, FillMark, Path, Point, StrokeMark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { polygon, stroke } from '../drawing/shapes.ts';
import type { Joint } from '../joint/joint.ts';
import type { SideView } from '../joint/kinds/kind.ts';
import { kindOf } from '../joint/kinds/kinds.ts';

/** The grey of tails in a picture. */
const TONE = 0.82;

/**
 * A closed corner's tails as they are seen from the side, shaded.
 * @param place puts a point of that view in the picture: mm from the pin board's outside face, then mm from the reference edge
 */
export const tailMarks = ({ tails }: SideView, place: (point: Point) => Point): (FillMark | StrokeMark)[] => {
  const paths = tails.map((tail): Path => polygon(tail.map(place)));
  return [{ kind: 'fill', role: 'waste', tone: TONE, paths }, stroke('slope', 'saw', paths)];
};

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
      stroke('outline', 'medium', [polygon(corners.map(place)), ...side.uprights.map(upright)]),
    ],
  };
};
