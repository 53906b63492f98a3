import type { Path, PenName, Point, Role } from '../../drawing/drawing.ts';
import { type Interval, type Joint, type JointBoard, tailParts } from '../../joint/joint.ts';
import type { MarkRole, Surface, SurfaceMarks } from '../../joint/kinds/kind.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';

/** Width of the grip, the paper beyond the baseline that is held and written on, mm. */
const GRIP_WIDTH = 12;

/** Lines in a band's own coordinates: mm from the arris, mm from the reference edge. */
export interface BandStroke {
  readonly role: Role;
  readonly pen: PenName;
  readonly paths: readonly Path[];
}

/**
 * The part of a template on one face or on the end grain of a board. Its first coordinate runs from the arris with the
 * inside face (on the end grain) or with the end grain (on a face).
 */
export interface Band {
  readonly name: Surface;
  readonly width: number;
  /** Reach of the joint over this band from the arris, mm; beyond it is the grip, or the lap. */
  readonly reach: number;
  readonly strokes: readonly BandStroke[];
  /** Closed outlines of what is cut away. */
  readonly waste: readonly (readonly Point[])[];
}

/** The marked end of a board, which a template is wrapped round. */
export interface MarkedEnd {
  /** Measured from the board's own reference edge, from which its width counts. */
  readonly joint: Joint;
  readonly board: JointBoard;
  /** Height of the joint's lower edge above the board's reference edge, mm. Below it the board is whole. */
  readonly jointFrom: number;
  /** Whether the pin board's end is rebated by its lap, so that the template covers only its sockets. */
  readonly rebated?: boolean;
}

/** The surfaces of a board's end that its bands are on, in the same order. */
export const surfacesOf = ({ joint, board }: Pick<MarkedEnd, 'joint' | 'board'>): Surface[] =>
  kindOf(joint)
    .marks(joint)
    [board].map(({ surface }) => surface);

/** The bands of a board's end, from its inside face over the end to its outside face. */
export const bandsOf = ({ joint, board, jointFrom, rebated = false }: MarkedEnd): Band[] =>
  kindOf(joint)
    .marks(joint)
    [board].map((marks) => {
      const marked = jointFrom > 0 ? marksFrom(jointFrom, marks) : marks;
      if (marked.surface !== 'end') return bandOf(marked, gripFrom(joint, board, marked.reach) + GRIP_WIDTH);
      const { thickness } = board === 'tail' ? joint.tailBoard : joint.pinBoard;
      if (!rebated && !marked.rebated) return bandOf(marked, thickness);
      // At the shoulder the sockets run out at the rebate, and there is no lap to stop at.
      const lines = marked.lines.filter(({ role }) => role !== 'lap');
      return bandOf({ ...marked, lines }, marked.reach);
    });

/** The marks of a joint that begins above the board's reference edge: no line runs on below it, and a square one ends it. */
const marksFrom = (jointFrom: number, marks: SurfaceMarks): SurfaceMarks => {
  const above = ([d, u]: Point): Point => [d, Math.max(u, jointFrom)];
  return {
    ...marks,
    lines: [
      ...marks.lines.map(({ role, paths }) => ({
        role,
        paths: paths.map((points) => points.map(above)),
      })),
      {
        role: 'square',
        paths: [
          [
            [0, jointFrom],
            [marks.reach, jointFrom],
          ],
        ],
      },
    ],
    waste: marks.waste.map((outline) => outline.map(above)),
  };
};

/**
 * Where a piece may be divided, in mm from the reference edge: inside a tail, beside its small pin; or inside that, where the
 * tail's base is no wider.
 */
export const dividedAt = (joint: Joint): Interval[] =>
  joint.tails.flatMap((tail, i) => {
    const small = joint.smallPins?.[i];
    const parts = tailParts({ tails: [tail], ...(small && { smallPins: [small] }) }, 'base');
    return parts.length === 0 && small !== undefined ? [small.narrow] : parts;
  });

/** A flap that holds the end grain's flat template to the arris with the inside face, from which its measures start. */
export const INSIDE_FLAP: Band = { name: 'inside', width: GRIP_WIDTH, reach: 0, strokes: [], waste: [] };

/** Where the grip begins on a face, mm from the arris; on the pin board also where the tail board is proud and the baseline is nearer. */
const gripFrom = ({ tailBoard }: Joint, board: JointBoard, reach: number): number =>
  board === 'tail' ? reach : tailBoard.thickness - tailBoard.lap;

const PENS: Readonly<Record<MarkRole, PenName>> = {
  baseline: 'baseline',
  slope: 'saw',
  square: 'saw',
  lap: 'lap',
};

const bandOf = ({ surface, reach, lines, waste }: SurfaceMarks, width: number): Band => ({
  name: surface,
  width,
  reach,
  strokes: lines.map(({ role, paths }) => ({
    role,
    pen: PENS[role],
    paths: paths.map((points) => ({ points })),
  })),
  waste,
});
