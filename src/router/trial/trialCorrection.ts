import { LEAST_LAP } from '../../joint/jointLimits.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, type Phrase, say } from '../../units/phrase.ts';
import { rise, type Slope, slopeOfDegrees } from '../../units/slope.ts';
import { checkAngle } from '../limits/cutter.ts';
import {
  checkDepth,
  checkMeasured,
  checkMove,
  checkSideMoves,
  type Measured,
  MOST_DEPTH,
} from './checkTrial.ts';

/** A change to one setting, in mm, and why. */
export interface Move {
  readonly change: number;
  readonly because: Phrase;
}

/** The next settings after a trial. What needs no change is absent. */
export interface SideMoves {
  /** How much further into the pin board the cutter is to run, from its end; less than 0, how much less far. */
  readonly stop?: Move;
  /** How much deeper the cutter is to be set for the tail board alone. */
  readonly tails?: Move;
}

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
}

/** The next setting of one cutter for both boards. Lengths in mm. */
export interface DepthMove extends SideMoves {
  /** The next depth, for both boards. */
  readonly depth: number;
  /** By how much that is deeper; less than 0, shallower. */
  readonly change: number;
  readonly because: Phrase;
  /** Doubt of what was measured, and what the next depth asks for that the cutter or the board may not have. */
  readonly advice: readonly Complaint[];
}

/** How a trial was set whose pins were cut along a sloped template. Lengths in mm. */
export interface SlopedSetting {
  readonly slope: Slope;
  /** The joint's depth, where it is known: no move can be larger. */
  readonly depth?: number;
}

/** The next place of a sloped template. Lengths in mm. */
export interface TemplateMove extends SideMoves {
  /** How far the template moves across the pin board towards its outside face, where sockets are wide; less than 0, towards the inside. */
  readonly move: number;
  readonly because: Phrase;
  /** Doubt of what was measured. */
  readonly advice: readonly Complaint[];
}

/**
 * Change of a setting that removes a looseness, in mm: g / (2 s), for each of a tail's two sides moves by s for
 * every mm of the setting. Where one cutter cuts both boards, s is the tangent of its angle, and the change is of its
 * depth: deeper is tighter. Where pins are cut along a sloped template, the template moves towards their narrow ends.
 */
export const correction = (looseness: number, slope: Slope): number => looseness / (2 * rise(slope));

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
  const change = zero(correction(looseness, slopeOfDegrees(angle)));
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
        : say`${measuredFit(looseness)}: ${mm(Math.abs(looseness))} / (2 tan ${angle}°) = ${mm(Math.abs(change))} ${change > 0 ? 'deeper, so tighter' : 'shallower, so looser'}: ${mm(depth + change)}.`,
    advice: [...doubt(looseness), ...adviseDepth(setting, depth + change), ...adviseSheets(setting, change)],
    ...sideMoves(measured),
  });
};

const comesThrough = ({ pinBoard }: OneCutterSetting, depth: number): Complaint[] =>
  pinBoard === undefined || depth < pinBoard - EPSILON
    ? []
    : [
        {
          at: ['looseness'],
          says: say`the next depth would be ${mm(depth)}, and the cutter would come out at the face of a pin board of ${mm(pinBoard)}`,
          hint: say`measuring again, moving the guide's centres, a thicker pin board, or a cutter with another angle`,
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
          hint: say`that lap in the plan, and its sheets printed again`,
        },
      ];

/** A trial that was set out with care is seldom further off than this; in mm (common practice). */
const USUAL = 0.5;

/** Most measurements that are so far off have lost a decimal point. */
const doubt = (looseness: number): Complaint[] =>
  Math.abs(looseness) <= USUAL + EPSILON
    ? []
    : [
        {
          at: ['looseness'],
          says: say`measure again: ${mm(Math.abs(looseness))} is more than a trial joint is usually off`,
          hint: say`${mm(Math.abs(looseness) / 10)}, if a decimal point was left out`,
        },
      ];

const adviseDepth = ({ length, pinBoard }: OneCutterSetting, depth: number): Complaint[] => {
  const advice: Complaint[] = [];
  if (length !== undefined && depth > length + EPSILON)
    advice.push({
      at: ['length'],
      says: say`${mm(depth)} is deeper than the cutter cuts (${mm(length)}): its neck would rub`,
      hint: say`moving the guide's centres for a tighter fit, or a longer cutter`,
    });
  if (pinBoard !== undefined && depth > pinBoard - LEAST_LAP + EPSILON)
    advice.push({
      at: ['depth'],
      says: say`${mm(depth)} leaves a lap of ${mm(Math.max(0, pinBoard - depth))} of a pin board of ${mm(pinBoard)}; it must be at least ${atLeast(LEAST_LAP)}`,
      hint: say`a thicker pin board, or a cutter with another angle`,
    });
  return advice;
};

/**
 * The next setting of pins that a straight cutter cuts along a sloped template: the template moves by
 * `correction`. Towards the outside face, where the sockets are wide, each pin grows.
 * @example
 * ```ts
 * const next = correctTemplate({ slope: { run: 8 } }, { looseness: -0.1 });
 * if (next.ok) console.log(next.value.move.toFixed(1)); // -0.4
 * ```
 */
export const correctTemplate = (
  { slope, depth }: SlopedSetting,
  measured: Measured,
): Result<TemplateMove> => {
  const wrong = [...(depth === undefined ? [] : checkDepth(depth)), ...checkMeasured(measured)];
  if (wrong.length > 0) return refuse(...wrong);
  const { looseness } = measured;
  const move = zero(correction(looseness, slope));
  const size = depth ?? MOST_DEPTH;
  const tooLarge = [
    ...checkMove(move, size, 'looseness', say`the joint's ${mm(size)}`),
    ...checkSideMoves(measured, size),
  ];
  if (tooLarge.length > 0) return refuse(...tooLarge);
  return accept({
    move,
    because:
      move === 0
        ? say`The fit is right: leave the template where it is.`
        : say`${measuredFit(looseness)}: ${mm(Math.abs(looseness))} x ${Number(slope.run.toFixed(2))} / 2 = ${mm(Math.abs(move))} towards the ${move > 0 ? 'outside' : 'inside'} face.`,
    advice: doubt(looseness),
    ...sideMoves(measured),
  });
};

const measuredFit = (looseness: number): Phrase =>
  looseness > 0 ? say`Loose by ${mm(looseness)}` : say`Tight by ${mm(-looseness)}`;

/** No negative zero. */
const zero = (value: number): number => (Math.abs(value) < EPSILON ? 0 : value);

const sideMoves = ({ proud = 0, short = 0 }: Measured): SideMoves => ({
  ...(proud !== 0 && {
    stop: {
      change: proud,
      because:
        proud > 0
          ? say`The side stands ${mm(proud)} proud: its sockets are that much too short, so let the cutter run ${mm(proud)} further in.`
          : say`The side lies ${mm(-proud)} under the pins' end: its sockets are that much too long, so stop the cutter ${mm(-proud)} sooner.`,
    },
  }),
  ...(short !== 0 && {
    tails: {
      change: short,
      because: say`The tails end ${mm(short)} short of their sockets' bottom: cut the tail board alone ${mm(short)} deeper; with the centres where they are the fit stays the same.`,
    },
  }),
});
