import type { FillMark, Path, Point, StrokeMark } from '../drawing/drawing.ts';
import type { SideView } from '../joint/kinds/kind.ts';

/** The grey of tails in a picture. */
const TONE = 0.82;

/**
 * A closed corner's tails as they are seen from the side, shaded.
 * @param place puts a point of that view in the picture: mm from the pin board's outside face, then mm from the reference edge
 */
export const tailMarks = ({ tails }: SideView, place: (point: Point) => Point): (FillMark | StrokeMark)[] => {
  const paths = tails.map((tail): Path => ({ points: tail.map(place), closed: true }));
  return [
    { kind: 'fill', role: 'waste', tone: TONE, paths },
    { kind: 'stroke', role: 'slope', pen: 'saw', paths },
  ];
};
