import { accept, type Result, refuse } from '../../units/complaint.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Slope } from '../../units/slope.ts';
import {
  checkDepth,
  checkMeasured,
  checkMove,
  checkSideMoves,
  type Measured,
  MOST_DEPTH,
} from './checkTrial.ts';
import { type Correction, correction, doubt, measuredFit, type SideWords, sideMoves } from './correction.ts';
import { fingersAfterMove } from './fingersAfter.ts';

/** How a trial was set whose pins a straight cutter cut along a sloped guide. Lengths in mm. */
export interface GuideSetting {
  readonly slope: Slope;
  /** The joint's depth, where it is known: no move can be larger. */
  readonly depth?: number;
  /** How deep the straight cutter was set, from the pin board's end, where it is known. */
  readonly straight?: number;
  /** How far the inside face was beyond the mark of tapered fingers, which then are the guide. */
  readonly beyond?: number;
}

/** The next place of a sloped guide. Lengths in mm. */
export interface GuideMove extends Correction {
  /** How far the guide moves across the pin board towards its outside face, where sockets are wide; less than 0, towards the inside. */
  readonly move: number;
}

/**
 * The next setting of pins that a straight cutter cuts along a sloped guide: the guide moves by `correction`. Towards
 * the outside face, where the sockets are wide, each pin grows. The straight cutter's own depth is corrected by how far
 * the tail board is proud.
 * @returns the move, or what is wrong: places are `depth`, `looseness`, `proud` and `short`
 * @example
 * ```ts
 * const next = correctGuide({ slope: { run: 8 } }, { looseness: -0.1 });
 * if (next.ok) console.log(next.value.move.toFixed(1)); // -0.4
 * ```
 */
export const correctGuide = (setting: GuideSetting, measured: Measured): Result<GuideMove> => {
  const { slope, depth, beyond } = setting;
  const wrong = [...(depth === undefined ? [] : checkDepth(depth)), ...checkMeasured(measured)];
  if (wrong.length > 0) return refuse(...wrong);
  const { looseness } = measured;
  const move = correction(looseness, slope);
  const size = depth ?? MOST_DEPTH;
  const tooLarge = [
    ...checkMove(move, size, 'looseness', say`the joint's ${mm(size)}`),
    ...checkSideMoves(measured, size),
  ];
  if (tooLarge.length > 0) return refuse(...tooLarge);
  const by = mm(Math.abs(move));
  return accept({
    move,
    because:
      move === 0
        ? say`The fit is right: leave the guide where it is.`
        : beyond !== undefined
          ? say`${measuredFit(looseness)}: ${mm(Math.abs(looseness))} x ${Number(slope.run.toFixed(2))} / 2 = ${by}.`
          : say`${measuredFit(looseness)}: ${mm(Math.abs(looseness))} x ${Number(slope.run.toFixed(2))} / 2 = ${by} towards the ${move > 0 ? say`outside face. Fasten the guide's fence ${by} further from the open ends of its slots` : say`inside face. Put a shim ${by} thick between the guide's fence and the pin board`}.`,
    advice: doubt(looseness),
    ...sideMoves(measured, sideWords(setting, measured)),
    ...(beyond !== undefined && { fingers: fingersAfterMove(beyond, move) }),
  });
};

/** The pin board stands upright: the straight cutter's depth is the length of its sockets. */
const sideWords = ({ straight }: GuideSetting, { proud = 0 }: Measured): SideWords => {
  const next = straight === undefined ? say`` : say`, at ${mm(straight + proud)}`;
  return {
    proud: (by) =>
      say`The tail board is ${by} proud: the sockets are that much too shallow. Set the straight cutter ${by} deeper${next}.`,
    shy: (by) =>
      say`The tail board is ${by} below flush: the sockets are that much too deep. Set the straight cutter ${by} shallower${next}.`,
    short: (by) =>
      say`The tails end ${by} short. Set the dovetail cutter ${by} deeper for the tail board, and do not move its guide: the fit stays the same.`,
  };
};
