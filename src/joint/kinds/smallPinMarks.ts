import type { Point } from '../../drawing/drawing.ts';
import { mm, say } from '../../units/phrase.ts';
import { type Interval, type Joint, tailParts } from '../joint.ts';
import { smallOutline } from '../tailOutline.ts';
import type { BoardNames, GaugeSetting, SurfaceMarks } from './kind.ts';
import type { MoreWork } from './mitredShoulder.ts';
import { rectangle } from './surfaceMarks.ts';

/** A surface of the tail board, with the sockets that are cut in its tails for the small pins. */
export const withSmallSockets = (joint: Joint, marks: SurfaceMarks): SurfaceMarks => {
  const { smallPins } = joint;
  const { surface, reach } = marks;
  if (smallPins === undefined) return marks;
  if (surface === 'end')
    return {
      ...marks,
      lines: [...marks.lines, { role: 'square', paths: squareLines(smallPins, reach) }],
      waste: [...marks.waste, ...smallPins.map(({ narrow }) => rectangle(narrow, reach))],
    };
  // An outline is measured from the tails' base; a face from the arris, at their ends.
  const outlines = smallPins.map((small) =>
    smallOutline(small, joint).map(([u, y]): Point => [reach - y, u]),
  );
  return {
    ...marks,
    lines: [...marks.lines, ...sidesAndFloors(outlines)],
    waste: [...marks.waste, ...outlines],
  };
};

/** A surface of the pin board, with the small pins that stand in its sockets: on the end and the outside face; the inside one shows none. */
export const withSmallPins = (joint: Joint, marks: SurfaceMarks): SurfaceMarks => {
  const { smallPins } = joint;
  const { surface, reach } = marks;
  if (smallPins === undefined || surface === 'inside') return marks;
  if (surface === 'end') {
    // The waste of the sockets has them left out already.
    const outlines = smallPins.map((small) => smallOutline(small, joint).map(([u, y]): Point => [y, u]));
    return { ...marks, lines: [...marks.lines, ...sidesAndFloors(outlines)] };
  }
  return {
    ...marks,
    lines: [...marks.lines, { role: 'square', paths: squareLines(smallPins, reach) }],
    waste: tailParts(joint, 'tip').map((part) => rectangle(part, reach)),
  };
};

/** Where the small pins end, on both boards. */
export const smallPinGauges = ({ smallPins: [small] = [], depth }: Joint): GaugeSetting[] =>
  small === undefined
    ? []
    : [
        {
          name: 'tailBoardSmallPins',
          board: 'tail',
          on: 'both faces',
          line: 'small pins',
          from: 'end',
          length: small.depth,
        },
        {
          name: 'pinBoardSmallPins',
          board: 'pin',
          on: 'end',
          line: 'small pins',
          from: 'inside face',
          length: depth - small.depth,
        },
      ];

/** What else is done for small pins, at each stage of the work (from memory). */
export const smallPinWork = ({ smallPins: [small] = [] }: Joint, { tail, pin }: BoardNames): MoreWork =>
  small === undefined
    ? {}
    : {
        afterGauging: [
          say`Gauge the small pins’ line, ${mm(small.depth)} from the ${tail}’s end on both faces, and on the ${pin}’s end from the inside face.`,
        ],
        afterTails: [
          say`Saw and chop the small sockets in the tails’ ends, down to that line and no further.`,
        ],
        afterScribing: [
          say`Saw both sides of each small pin down to the baseline, right through the ${pin}: what lies behind it is waste.`,
        ],
        afterPins: [say`Beside the small pins chop from both faces; behind them pare down to their line.`],
      };

const squareLines = (
  smallPins: NonNullable<Joint['smallPins']>,
  reach: number,
): (readonly [Point, Point])[] =>
  smallPins.flatMap(({ narrow }: { readonly narrow: Interval }) =>
    narrow.map((u): readonly [Point, Point] => [
      [0, u],
      [reach, u],
    ]),
  );

/** The sides of small outlines, at the slope, and their floors, square across. */
const sidesAndFloors = (outlines: readonly (readonly Point[])[]): SurfaceMarks['lines'] => [
  { role: 'slope', paths: outlines.flatMap((outline) => [outline.slice(0, 2), outline.slice(2)]) },
  { role: 'square', paths: outlines.map((outline) => outline.slice(1, 3)) },
];
