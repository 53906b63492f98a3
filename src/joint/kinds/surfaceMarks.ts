import type { Point } from '../../drawing/drawing.ts';
import { type Joint, jointSpan, pinLength } from '../joint.ts';
import { tailOutline } from '../tailOutline.ts';
import type { SideView, SurfaceMarks } from './kind.ts';

type Line = readonly [Point, Point];

const across = ({ width }: Joint, at: number): Line => [
  [at, 0],
  [at, width],
];

/** A face of the tail board: its tails from the baseline to the end. */
export const tailFace = (joint: Joint, surface: 'inside' | 'outside'): SurfaceMarks => {
  const { depth, pins } = joint;
  return {
    surface,
    reach: depth,
    lines: [
      { role: 'baseline', paths: [across(joint, depth)] },
      // A tail's outline is measured from its base; a face from the arris at its tip.
      { role: 'slope', paths: slopedSides(joint, ([u, y]) => [depth - y, u]) },
    ],
    waste: pins.map(({ narrow, wide }): Point[] => [
      [depth, wide[0]],
      [0, narrow[0]],
      [0, narrow[1]],
      [depth, wide[1]],
    ]),
  };
};

/** The tail board's end: the tails' tips, square across it, to its lap where it has one. */
export const tailEnd = ({ tails, pins, tailBoard }: Joint): SurfaceMarks => {
  const reach = tailBoard.thickness - tailBoard.lap;
  return {
    surface: 'end',
    reach,
    lines: [
      {
        role: 'square',
        paths: tails.flatMap(({ tip }) =>
          tip.map(
            (u): Line => [
              [0, u],
              [reach, u],
            ],
          ),
        ),
      },
    ],
    waste: pins.map(({ narrow: [from, to] }) => rectangle(from, to, reach)),
  };
};

/**
 * A face of the pin board: its sockets, square from the end to the baseline.
 * @param level how wide the tails are there: at their bases on the inside face, at their tips on the outside one
 */
export const pinFace = (joint: Joint, surface: 'inside' | 'outside', level: 'base' | 'tip'): SurfaceMarks => {
  const reach = pinLength(joint);
  const sockets = joint.tails.map((tail) => tail[level]);
  return {
    surface,
    reach,
    lines: [
      { role: 'baseline', paths: [across(joint, reach)] },
      {
        role: 'square',
        paths: sockets.flat().map(
          (u): Line => [
            [0, u],
            [reach, u],
          ],
        ),
      },
    ],
    waste: sockets.map(([from, to]) => rectangle(from, to, reach)),
  };
};

/** The pin board's end: its sockets from the inside arris to the tails' tips. */
export const pinEnd = (joint: Joint): SurfaceMarks => ({
  surface: 'end',
  reach: joint.depth,
  lines: [{ role: 'slope', paths: slopedSides(joint, swap) }],
  waste: joint.tails.map((tail) => tailOutline(tail, joint).map(swap)),
});

/** An end, with the line where its joint stops at a lap. */
export const withLap = (joint: Joint, end: SurfaceMarks): SurfaceMarks => ({
  ...end,
  lines: [...end.lines, { role: 'lap', paths: [across(joint, end.reach)] }],
});

/** A surface with the lines of its shoulders, beyond which all of it is cut away in a mitre. */
export const withShoulders = (joint: Joint, marks: SurfaceMarks): SurfaceMarks => {
  const { reach } = marks;
  const [from, to] = jointSpan(joint);
  return {
    ...marks,
    lines: [
      ...marks.lines,
      {
        role: 'square',
        paths: [from, to].map(
          (u): Line => [
            [0, u],
            [reach, u],
          ],
        ),
      },
    ],
    waste: [rectangle(0, from, reach), ...marks.waste, rectangle(to, joint.width, reach)],
  };
};

/** A corner whose tails are seen from the side, and how far behind the pin board's outside face they end. */
export const tailsFromTheSide = (joint: Joint, setBack: number): Omit<SideView, 'uprights'> => {
  const reach = setBack + joint.depth;
  return {
    reach,
    tails: joint.tails.map((tail) => tailOutline(tail, joint).map(([u, y]): Point => [reach - y, u])),
  };
};

/** On the pin board's end the outline lies as it is, its base on the inside arris. */
const swap = ([u, y]: Point): Point => [y, u];

const slopedSides = (joint: Joint, place: (point: Point) => Point): Line[] =>
  joint.tails.flatMap((tail): Line[] => {
    const [a, b, c, d] = tailOutline(tail, joint);
    return [
      [place(a), place(b)],
      [place(c), place(d)],
    ];
  });

const rectangle = (from: number, to: number, reach: number): Point[] => [
  [0, from],
  [0, to],
  [reach, to],
  [reach, from],
];
