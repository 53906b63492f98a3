import type { FillMark, Path, Point, StrokeMark } from '../drawing/drawing.ts';
import type { Joint } from '../joint/joint.ts';
import { tailOutline } from '../joint/tailOutline.ts';

/** The grey of tails in a picture. */
const TONE = 0.82;

/**
 * A joint's tails, shaded.
 * @param place puts a point of a tail in the picture: mm from the reference edge, then from the base toward the tip
 */
export const tailMarks = (joint: Joint, place: (point: Point) => Point): (FillMark | StrokeMark)[] => {
  const paths = joint.tails.map(
    (tail): Path => ({ points: tailOutline(tail, joint).map(place), closed: true }),
  );
  return [
    { kind: 'fill', role: 'waste', tone: TONE, paths },
    { kind: 'stroke', role: 'slope', pen: 'saw', paths },
  ];
};
