import { movement, type SawnWood, thicknessCoefficient, widthCoefficient } from './movement.ts';

/** A board of a corner. */
export interface CornerBoard extends SawnWood {
  /** mm */
  readonly thickness: number;
}

/** Steps between the surfaces of a corner that was planed flush, in mm: more than 0 is proud, less is below flush. */
export interface CornerSteps {
  /** The side's upper edge over the front's, where the corner is flush at the lower edge. */
  readonly topEdge: number;
  /** The tails' ends over the front's face, where the joint is a through one: a board's length does not move. */
  readonly tailEnds: number;
  /** The pins' ends over the side's outside face. */
  readonly pinEnds: number;
}

/**
 * The steps that a change of moisture content makes at a flush corner of a front and a side, each free to move;
 * the glue holds some of it back.
 * @param width mm, of both boards
 * @param from moisture content in percent when the corner was planed flush
 * @param to moisture content in percent
 */
export const cornerSteps = (
  front: CornerBoard,
  side: CornerBoard,
  width: number,
  from: number,
  to: number,
): CornerSteps => ({
  topEdge:
    movement(width, widthCoefficient(side.wood, side.cut), from, to) -
    movement(width, widthCoefficient(front.wood, front.cut), from, to),
  tailEnds: -movement(front.thickness, thicknessCoefficient(front.wood, front.cut), from, to),
  pinEnds: -movement(side.thickness, thicknessCoefficient(side.wood, side.cut), from, to),
});
