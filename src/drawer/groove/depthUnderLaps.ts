import { kindOf } from '../../joint/kinds/kinds.ts';
import { type FrontBoards, frontShape } from '../drawerSizes.ts';

/** Least wood between a groove and the lap that covers its end, in mm. */
export const LEAST_UNDER_LAP = 1;

/**
 * The most that a groove's depth may be in the sides and in the front, in mm, so that it ends under the laps that close
 * the front corners; undefined where laps do not close them on both boards.
 */
export const depthUnderLaps = (
  spec: FrontBoards,
): { readonly side: number; readonly front: number } | undefined => {
  if (kindOf(spec.joint).sockets !== 'closed') return undefined;
  const { tailBoard, pinBoard } = frontShape(spec);
  return {
    side: tailBoard.thickness - tailBoard.lap - LEAST_UNDER_LAP,
    front: pinBoard.thickness - pinBoard.lap - LEAST_UNDER_LAP,
  };
};
