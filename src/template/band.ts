import type { Path, PenName, Point, Role } from '../drawing/drawing.ts';
import type { Joint } from '../joint/joint.ts';
import { gauges } from '../joint/settings.ts';
import { tailOutline } from '../joint/tailOutline.ts';

/** Which of the two boards of a corner. */
export type Board = 'tail' | 'pin';

export type BandName = 'inside' | 'end' | 'outside';

/** Paper left beyond the baseline, to hold the template by and to write on. */
export const GRIP = 12;

/** A mark in a band's own coordinates: mm from the arris, then mm from the reference edge. */
export interface BandStroke {
  readonly role: Role;
  readonly pen: PenName;
  readonly paths: readonly Path[];
}

/**
 * A strip of a template that lies on one face or on the end of a board. Its first coordinate runs from the arris where
 * it meets the inside face (on the end) or the end (on a face).
 */
export interface Band {
  readonly name: BandName;
  readonly width: number;
  /** How far the joint reaches over this band from the arris; beyond it lies the grip, or the lap. */
  readonly reach: number;
  readonly strokes: readonly BandStroke[];
  /** Closed outlines of what is cut away. */
  readonly waste: readonly (readonly Point[])[];
}

/** The bands of a board's end, from its inside face over the end to its outside face. */
export const bandsOf = (joint: Joint, board: Board): Band[] =>
  board === 'tail' ? tailBands(joint) : pinBands(joint);

const stroke = (role: Role, pen: PenName, paths: readonly Path[]): BandStroke => ({ role, pen, paths });

const line = (a: Point, b: Point): Path => ({ points: [a, b] });

const across = (joint: Joint, at: number): Path => line([at, 0], [at, joint.width]);

const tailBands = (joint: Joint): Band[] => {
  const { depth, tails, pins, tailBoard } = joint;
  const face = (name: BandName): Band => ({
    name,
    width: depth + GRIP,
    reach: depth,
    strokes: [
      stroke('baseline', 'baseline', [across(joint, depth)]),
      // A tail's outline is measured from its base; a face band from the arris at its tip.
      stroke(
        'slope',
        'saw',
        slopedSides(joint, ([u, y]) => [depth - y, u]),
      ),
    ],
    waste: pins.map(({ narrow, wide }): Point[] => [
      [depth, wide[0]],
      [0, narrow[0]],
      [0, narrow[1]],
      [depth, wide[1]],
    ]),
  });
  const thickness = tailBoard.thickness;
  const end: Band = {
    name: 'end',
    width: thickness,
    reach: thickness,
    strokes: [
      stroke(
        'square',
        'saw',
        tails.flatMap(({ tip }) => tip.map((u) => line([0, u], [thickness, u]))),
      ),
    ],
    waste: pins.map(({ narrow: [from, to] }): Point[] => rectangle(from, to, thickness)),
  };
  return [face('inside'), end, face('outside')];
};

const pinBands = (joint: Joint): Band[] => {
  const { depth, tails, pinBoard, tailBoard } = joint;
  const { pinBoardFace } = gauges(joint);
  const face = (name: BandName, level: 'base' | 'tip'): Band => ({
    name,
    width: tailBoard.thickness + GRIP,
    reach: pinBoardFace,
    strokes: [
      stroke('baseline', 'baseline', [across(joint, pinBoardFace)]),
      stroke(
        'square',
        'saw',
        tails.flatMap((tail) => tail[level].map((u) => line([0, u], [pinBoardFace, u]))),
      ),
    ],
    waste: tails.map((tail) => rectangle(tail[level][0], tail[level][1], pinBoardFace)),
  });
  const end: Band = {
    name: 'end',
    width: pinBoard.thickness,
    reach: depth,
    strokes: [
      stroke('slope', 'saw', slopedSides(joint, swap)),
      ...(pinBoard.lap > 0 ? [stroke('lap', 'lap', [across(joint, depth)])] : []),
    ],
    waste: tails.map((tail) => tailOutline(tail, joint).map(swap)),
  };
  return joint.kind === 'lapped'
    ? [face('inside', 'base'), end]
    : [face('inside', 'base'), end, face('outside', 'tip')];
};

/** On the pin board's end the outline lies as it is, its base on the inside arris. */
const swap = ([u, y]: Point): Point => [y, u];

const slopedSides = (joint: Joint, place: (point: Point) => Point): Path[] =>
  joint.tails.flatMap((tail) => {
    const [a, b, c, d] = tailOutline(tail, joint);
    return [line(place(a), place(b)), line(place(c), place(d))];
  });

const rectangle = (from: number, to: number, reach: number): Point[] => [
  [0, from],
  [0, to],
  [reach, to],
  [reach, from],
];
