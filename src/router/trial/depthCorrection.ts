import { LEAST_LAP } from '../../joint/jointLimits.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { slopeOfDegrees } from '../../units/slope.ts';
import { checkAngle } from '../limits/cutter.ts';
import { checkDepth, checkMeasured, checkMove, checkSideMoves, type Measured } from './checkTrial.ts';
import { type Correction, correction, doubt, measuredFit, type SideWords, sideMoves } from './correction.ts';
import { fingersAfterDepth } from './fingersAfter.ts';

/** How a trial was set that one cutter cut in both boards. Lengths in mm. */
export interface OneCutterSetting {
  /** The cutter's, in degrees. */
  readonly angle: number;
  /** The depth that the trial was cut at. */
  readonly depth: number;
  /** The cutter's cutting length, where it is known. */
  readonly length?: number;
  /** The pin board's thickness, where it is known. */
  readonly pinBoard?: number;
  /** Whether both boards were cut along fingers. */
  readonly fingers?: boolean;
}

/** The next setting of one cutter for both boards. Lengths in mm. */
export interface DepthMove extends Correction {
  /** The next depth, for both boards. */
  readonly depth: number;
  /** By how much that is deeper; less than 0, shallower. */
  readonly change: number;
}

/**
 * The next setting of a joint that one cutter cuts in both boards: its depth changes by `correction`, deeper is
 * tighter. The centres stay where they are, so a deeper socket is narrower at its mouth, and the tails stay as they are.
 * @returns the move, or what is wrong: places are `angle`, `depth`, `looseness`, `proud` and `short`
 * @example
 * ```ts
 * const next = correctDepth({ angle: 14, depth: 9.5 }, { looseness: 0.2 });
 * if (next.ok) console.log(next.value.depth.toFixed(1)); // 9.9
 * ```
 */
export const correctDepth = (setting: OneCutterSetting, measured: Measured): Result<DepthMove> => {
  const { angle, depth } = setting;
  const wrong = [...checkAngle(angle), ...checkDepth(depth), ...checkMeasured(measured)];
  if (wrong.length > 0) return refuse(...wrong);
  const { looseness } = measured;
  const change = correction(looseness, slopeOfDegrees(angle));
  const tooLarge = [
    ...checkMove(change, depth, 'looseness', say`the depth of ${mm(depth)}`),
    ...checkSideMoves(measured, depth),
  ];
  if (tooLarge.length > 0) return refuse(...tooLarge);
  const through = comesThrough(setting, depth + change);
  if (through.length > 0) return refuse(...through);
  return accept({
    depth: depth + change,
    change,
    because:
      change === 0
        ? say`The fit is right: leave the depth at ${mm(depth)}.`
        : say`${measuredFit(looseness)}: ${mm(Math.abs(looseness))} / (2 tan ${angle}°) = ${mm(Math.abs(change))} ${change > 0 ? 'deeper, so tighter' : 'shallower, so looser'}. Set the dovetail cutter at ${mm(depth + change)} for both boards.`,
    advice: [...doubt(looseness), ...adviseDepth(setting, depth + change), ...adviseSheets(setting, change)],
    ...sideMoves(measured, SIDE_WORDS),
    ...(setting.fingers && { fingers: fingersAfterDepth(change, slopeOfDegrees(angle)) }),
  });
};

const comesThrough = ({ pinBoard }: OneCutterSetting, depth: number): Complaint[] =>
  pinBoard === undefined || depth < pinBoard - EPSILON
    ? []
    : [
        {
          at: ['looseness'],
          says: say`the next depth would be ${mm(depth)}, and the cutter would come out at the face of a pin board of ${mm(pinBoard)}`,
          remedy: say`measure again, move the guide's centres, or take a thicker pin board or a cutter with another angle`,
        },
      ];

/** A change of less than this is planed off and need not be in the plan; in mm (common practice). */
const PLANED_OFF = 0.1;

/** Gauges, lengths and templates were made for the planned depth. */
const adviseSheets = ({ depth, pinBoard }: OneCutterSetting, change: number): Complaint[] =>
  pinBoard === undefined || Math.abs(change) < PLANED_OFF || pinBoard - depth - change < LEAST_LAP
    ? []
    : [
        {
          at: ['depth'],
          says: say`gauges, templates and the sides' length were set for ${mm(depth)}; the lap is now ${mm(pinBoard - depth - change)}`,
          remedy: say`give that lap in the plan, and print its sheets again`,
        },
      ];

const adviseDepth = ({ length, pinBoard }: OneCutterSetting, depth: number): Complaint[] => {
  const advice: Complaint[] = [];
  if (length !== undefined && depth > length + EPSILON)
    advice.push({
      at: ['length'],
      says: say`${mm(depth)} is deeper than the cutter cuts (${mm(length)}): its neck would rub`,
      remedy: say`move the guide's centres for a tighter fit, or take a longer cutter`,
    });
  if (pinBoard !== undefined && depth > pinBoard - LEAST_LAP + EPSILON)
    advice.push({
      at: ['depth'],
      says: say`${mm(depth)} leaves a lap of ${mm(Math.max(0, pinBoard - depth))} of a pin board of ${mm(pinBoard)}; it must be at least ${atLeast(LEAST_LAP)}`,
      remedy: say`take a thicker pin board, or a cutter with another angle`,
    });
  return advice;
};

/** The pin board lies flat: the cutter runs into it from its end. */
const SIDE_WORDS = {
  proud: (by) =>
    say`The tail board is ${by} proud: the sockets are that much too short. Move the stop so that the cutter runs ${by} further in.`,
  shy: (by) =>
    say`The tail board is ${by} below flush: the sockets are that much too long. Move the stop so that the cutter ends ${by} sooner.`,
  short: (by) =>
    say`The tails end ${by} short of the floors of their sockets. Set the cutter ${by} deeper for the tail board alone, and do not move its guide: the fit stays the same.`,
} satisfies SideWords;
