import { boxOfMarks } from '../../drawing/boxOfMarks.ts';
import type { Drawing, Mark, Path, Point } from '../../drawing/drawing.ts';
import { stroke } from '../../drawing/shapes.ts';
import { translateMarks } from '../../drawing/transform.ts';
import type { Joint, JointBoard } from '../../joint/joint.ts';
import type { Size } from '../../paper/printable.ts';
import { INSIDE, OUTSIDE, project, type View } from './axonometry.ts';
import { type ConvexBlock, moved } from './convexBlock.ts';
import { cornerBlocks } from './cornerBlocks.ts';
import { endGrain } from './endGrain.ts';
import { type Segment, trueEdges } from './trueEdges.ts';
import { visibleParts } from './visibleParts.ts';

/** How a corner is shown: closed; open, its tail board drawn off as it comes apart; or both boards from inside, side by side. */
export type Shown = 'closed' | 'open' | 'inside';

/** Boards in their places, and how they are looked at. */
interface Scene {
  readonly boards: Readonly<Partial<Record<JointBoard, readonly ConvexBlock[]>>>;
  readonly view: View;
}

/** Distance of the lines of end grain in a picture, mm. */
const GRAIN = 1;

/** How far either board is shown beyond the joint, and how far the two are apart in the picture, in thicknesses. */
const BEYOND = 1.6;
const APART = 0.5;

/**
 * A corner as a line drawing, from its numbers alone: every edge that is seen, and end grain hatched.
 * @param scale of its lengths before they are projected: 1 as they are
 */
export const cornerPicture = (joint: Joint, shown: Shown, scale: number): Drawing => {
  let marks: Mark[] = [];
  let end = 0;
  for (const scene of scenesOf(joint, shown)) {
    const next = marksOf(scene, scale);
    const { x0, x1 } = boxOfMarks(next);
    const start = marks.length === 0 ? x0 : end + gapOf(joint) * scale;
    marks = [...marks, ...translateMarks(next, start - x0, 0)];
    end = start + x1 - x0;
  }
  return { box: boxOfMarks(marks), marks };
};

/** How large a corner's picture is at the scale 1, but for the width of its lines, in mm. */
export const pictureSize = (joint: Joint, shown: Shown): Size => {
  const boxes = scenesOf(joint, shown).map(({ boards, view }) => {
    const corners = Object.values(boards)
      .flat(2)
      .flatMap((face) => face.corners.map((corner) => project(view, corner)));
    const span = (axis: 0 | 1) => {
      const values = corners.map((corner) => corner[axis]);
      return { least: Math.min(...values), most: Math.max(...values) };
    };
    return { across: span(0), up: span(1) };
  });
  return {
    width: boxes.reduce(
      (sum, { across }) => sum + across.most - across.least,
      (boxes.length - 1) * gapOf(joint),
    ),
    height: Math.max(...boxes.map(({ up }) => up.most)) - Math.min(...boxes.map(({ up }) => up.least)),
  };
};

const thickest = ({ tailBoard, pinBoard }: Joint): number =>
  Math.max(tailBoard.thickness, pinBoard.thickness);

const gapOf = (joint: Joint): number => APART * thickest(joint);

const scenesOf = (joint: Joint, shown: Shown): readonly Scene[] => {
  const { tail, pin } = cornerBlocks(joint, BEYOND * thickest(joint));
  switch (shown) {
    case 'closed':
      return [{ boards: { tail, pin }, view: OUTSIDE }];
    case 'open': {
      // So far that the tails clear the pins' ends in the picture.
      const [, y, z] = OUTSIDE.eye;
      const off = joint.tailBoard.thickness + (joint.pinBoard.thickness * z) / y + gapOf(joint);
      return [{ boards: { tail: tail.map((block) => moved(block, off)), pin }, view: OUTSIDE }];
    }
    case 'inside':
      return [
        { boards: { tail }, view: INSIDE.tail },
        { boards: { pin }, view: INSIDE.pin },
      ];
  }
};

const marksOf = ({ boards, view }: Scene, scale: number): Mark[] => {
  const named = (['tail', 'pin'] as const).map((board) => [board, boards[board] ?? []] as const);
  const all = named.flatMap(([, blocks]) => blocks);
  const place = ([right, up]: Point): Point => [right * scale, up * scale];
  const seen = (lines: readonly Segment[]): Path[] =>
    lines
      .flatMap((each) => visibleParts(each, all, view.eye))
      .map((ends) => ({ points: ends.map((end) => place(project(view, end))) }));
  return [
    stroke(
      'waste',
      'hatch',
      seen(
        named.flatMap(([board, blocks]) =>
          blocks.flatMap((each) => endGrain(board, each, view, GRAIN / scale)),
        ),
      ),
    ),
    stroke('outline', 'medium', seen(named.flatMap(([, blocks]) => trueEdges(blocks)))),
  ];
};
