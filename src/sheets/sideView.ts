import type { Drawing, FillMark, Path, Point, StrokeMark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { line, polygon, stroke } from '../drawing/shapes.ts';
import type { Joint } from '../joint/joint.ts';
import type { SideView } from '../joint/kinds/kind.ts';
import { kindOf } from '../joint/kinds/kinds.ts';

/** Grey of tails in a picture: 0 black to 1 paper. */
const TONE = 0.82;

/**
 * A closed corner's tails seen from the side, shaded.
 * @param place maps a point of the view to the picture: mm from the pin board's outside face, mm from the reference edge
 */
export const tailMarks = ({ tails }: SideView, place: (point: Point) => Point): (FillMark | StrokeMark)[] => {
  const paths = tails.map((tail): Path => polygon(tail.map(place)));
  return [{ kind: 'fill', role: 'waste', tone: TONE, paths }, stroke('slope', 'saw', paths)];
};

/** How far a front's lip extends beyond its sides' edges, mm. */
export interface LipReach {
  readonly top: number;
  readonly bottom: number;
}

/**
 * A closed corner seen from the side, `length` mm of it: at the left what shows of the pin board, such as its lap and its
 * lip, then the tails, shaded, with the pins' ends between them, then the tail board's face. The tail board's lower edge is at y 0.
 */
export const sideView = (
  joint: Joint,
  length: number,
  scale: number,
  lip: LipReach = { top: 0, bottom: 0 },
): Drawing => {
  const { width, pinBoard } = joint;
  const side = kindOf(joint).sideView(joint);
  const place = ([x, u]: Point): Point => [x * scale, u * scale];
  const [from, to] = side.span;
  const upright = (x: number): Path => line(x * scale, from * scale, x * scale, to * scale);
  const shoulders = [from, to]
    .filter((u) => u > 0 && u < width)
    .map((u) => line(0, u * scale, side.reach * scale, u * scale));
  const half = PENS.medium.width / 2;
  const [foot, top] = [-lip.bottom, width + lip.top];
  const outline: readonly Point[] = [
    [0, foot],
    [pinBoard.lap, foot],
    [pinBoard.lap, 0],
    [length, 0],
    [length, width],
    [pinBoard.lap, width],
    [pinBoard.lap, top],
    [0, top],
  ];
  return {
    box: { x0: -half, y0: foot * scale - half, x1: length * scale + half, y1: top * scale + half },
    marks: [
      ...tailMarks(side, place),
      stroke('outline', 'medium', [polygon(outline.map(place)), ...side.uprights.map(upright), ...shoulders]),
    ],
  };
};
