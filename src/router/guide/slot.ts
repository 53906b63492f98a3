import type { Point } from '../../drawing/drawing.ts';
import type { Vertex } from '../../drawing/outline.ts';
import { EPSILON } from '../../units/epsilon.ts';

/** A straight run of the bush's centre, from the slot's closed end towards its mouth. */
export interface SlotWall {
  readonly end: Point;
  /** Across the joint for every mm towards the mouth. */
  readonly lean: number;
}

/** A slot of a guide: everywhere that the bush's centre may go lies between two runs that end at the same x. */
export interface Slot {
  /** The run nearest the reference edge. */
  readonly lower: SlotWall;
  readonly upper: SlotWall;
}

/** Where a run's wall lies at an x, a bush's radius to one side of the centre. */
export const wallAt = ({ end, lean }: SlotWall, side: 1 | -1, radius: number, x: number): number =>
  end[1] + lean * (x - end[0]) + side * radius * Math.hypot(1, lean);

/**
 * The slot's outline from its mouth at an x, in by the lower wall and out by the upper, x growing towards the mouth.
 * At the closed end it follows the bush round.
 */
export const slotOutline = ({ lower, upper }: Slot, radius: number, mouth: number): Vertex[] => {
  // A wall's end lies square to it off the centre.
  const [turnLower, turnUpper] = [Math.atan(lower.lean), Math.atan(upper.lean)];
  const [x] = lower.end;
  const lowerEnd: Point = [x + radius * Math.sin(turnLower), lower.end[1] - radius * Math.cos(turnLower)];
  const upperEnd: Point = [x - radius * Math.sin(turnUpper), upper.end[1] + radius * Math.cos(turnUpper)];
  const lowerSweep = Math.PI / 2 + turnLower;
  const upperSweep = Math.PI / 2 - turnUpper;
  const start: Vertex = { at: [mouth, wallAt(lower, -1, radius, mouth)] };
  const end: Vertex = { at: [mouth, wallAt(upper, 1, radius, mouth)] };
  if (upper.end[1] - lower.end[1] < EPSILON)
    return [start, { at: lowerEnd, bulge: clockwise(lowerSweep + upperSweep) }, { at: upperEnd }, end];
  return [
    start,
    { at: lowerEnd, bulge: clockwise(lowerSweep) },
    { at: [x - radius, lower.end[1]] },
    { at: [x - radius, upper.end[1]], bulge: clockwise(upperSweep) },
    { at: upperEnd },
    end,
  ];
};

const clockwise = (sweep: number): number => -Math.tan(sweep / 4);
