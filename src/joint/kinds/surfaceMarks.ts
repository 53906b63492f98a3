import type { Point } from '../../drawing/drawing.ts';
import { type Interval, type Joint, jointSpan, pinLength, shoulderZones } from '../joint.ts';
import { tailOutline, tailOutlines } from '../tailOutline.ts';
import type { SideView, SurfaceMarks } from './kind.ts';

type Line = readonly [Point, Point];

const across = ([from, to]: Interval, at: number): Line => [
  [at, from],
  [at, to],
];

/**
 * A face of the tail board: its tails from the baseline to the end.
 * @param cutBack how far from the end the tails are cut back between the shoulders, in mm
 */
export const tailFace = (joint: Joint, surface: 'inside' | 'outside', cutBack = 0): SurfaceMarks => {
  const { depth, pins } = joint;
  const reach = depth + cutBack;
  const [from, to] = jointSpan(joint);
  return {
    surface,
    reach,
    lines: [
      { role: 'baseline', paths: [across([0, joint.width], reach)] },
      // A tail's outline is measured from its base; a face from the arris.
      { role: 'slope', paths: slopedSides(joint, ([u, y]) => [reach - y, u]) },
      ...(cutBack > 0 ? [{ role: 'square' as const, paths: [across([from, to], cutBack)] }] : []),
    ],
    waste: [
      ...(cutBack > 0 ? [rectangle([from, to], cutBack)] : []),
      ...pins.map(({ narrow, wide }): Point[] => [
        [reach, wide[0]],
        [cutBack, narrow[0]],
        [cutBack, narrow[1]],
        [reach, wide[1]],
      ]),
    ],
  };
};

/** The tail board's end where all of it is cut back between the shoulders, before the tails are marked there. */
export const allCutBack = (joint: Joint): SurfaceMarks => {
  const reach = joint.tailBoard.thickness;
  return { surface: 'end', reach, lines: [], waste: [rectangle(jointSpan(joint), reach)] };
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
    waste: pins.map(({ narrow }) => rectangle(narrow, reach)),
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
      { role: 'baseline', paths: [across([0, joint.width], reach)] },
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
    waste: sockets.map((socket) => rectangle(socket, reach)),
  };
};

/** The pin board's end: its sockets from the inside arris to the tails' tips. */
export const pinEnd = (joint: Joint): SurfaceMarks => ({
  surface: 'end',
  reach: joint.depth,
  lines: [{ role: 'slope', paths: slopedSides(joint, swap) }],
  waste: tailOutlines(joint).map((outline) => outline.map(swap)),
});

/** An end, with the line where its joint stops at a lap. */
export const withLap = (joint: Joint, end: SurfaceMarks): SurfaceMarks => ({
  ...end,
  lines: [...end.lines, { role: 'lap', paths: [across(jointSpan(joint), end.reach)] }],
});

/**
 * A surface with the lines of its shoulders. Beyond them all of an inside face and of an end is cut away in a mitre; an
 * outside face stays whole there, and bears no baseline.
 * @param reach how far the shoulders reach over it, where that is further than the joint, in mm
 */
export const withShoulders = (joint: Joint, marks: SurfaceMarks, reach = marks.reach): SurfaceMarks => {
  const zones = shoulderZones(joint);
  if (zones.length === 0) return marks;
  const [from, to] = jointSpan(joint);
  const isWhole = marks.surface === 'outside';
  const lines = marks.lines.map((line) =>
    isWhole && line.role === 'baseline' ? { ...line, paths: [across([from, to], marks.reach)] } : line,
  );
  return {
    ...marks,
    lines: [
      ...lines,
      {
        role: 'square',
        paths: zones.map(
          ([low]): Line => [
            [0, low > 0 ? to : from],
            [reach, low > 0 ? to : from],
          ],
        ),
      },
    ],
    waste: isWhole
      ? marks.waste
      : [
          ...zones.filter(([low]) => low === 0).map((zone) => rectangle(zone, reach)),
          ...marks.waste,
          ...zones.filter(([low]) => low > 0).map((zone) => rectangle(zone, reach)),
        ],
  };
};

/** A corner whose tails are seen from the side, and how far behind the pin board's outside face they end. */
export const tailsFromTheSide = (joint: Joint, setBack: number): Omit<SideView, 'uprights'> => {
  const reach = setBack + joint.depth;
  return {
    reach,
    tails: tailOutlines(joint).map((outline) => outline.map(([u, y]): Point => [reach - y, u])),
    span: jointSpan(joint),
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

/** What lies between two heights, from an arris to a distance from it. */
export const rectangle = ([from, to]: Interval, reach: number): Point[] => [
  [0, from],
  [0, to],
  [reach, to],
  [reach, from],
];
