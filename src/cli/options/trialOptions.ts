import { optionName, refuseOptions } from '../../files/failure.ts';
import { gauges } from '../../joint/gauges.ts';
import type { Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { FingerCut } from '../../router/fingers/fingerCut.ts';
import type { Cutter } from '../../router/limits/cutter.ts';
import type { Measured } from '../../router/trial/checkTrial.ts';
import type { OneCutterSetting } from '../../router/trial/depthCorrection.ts';
import type { GuideSetting } from '../../router/trial/guideCorrection.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { parseSlope } from '../../units/slope.ts';
import { optionReader } from './optionReader.ts';
import { parseAngle } from './readCutterOptions.ts';

/** The options of `trial`, as typed. */
export interface TrialOptions {
  readonly joint?: string;
  readonly cutterAngle?: string;
  readonly cutterLength?: string;
  readonly depth?: string;
  readonly slope?: string;
  readonly byHand?: boolean;
  readonly at?: string;
  readonly loose?: string;
  readonly tight?: string;
  readonly proud?: string;
  readonly shy?: string;
  readonly short?: string;
  readonly units?: string;
  readonly log?: string;
  readonly out?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** How the trial joint was cut. */
export type TrialSetting =
  | { readonly kind: 'depth'; readonly setting: OneCutterSetting }
  /** `at`: the guide's distance from its first position in mm, where it is given. */
  | { readonly kind: 'guide'; readonly setting: GuideSetting; readonly at?: number }
  /** `depth`: the joint's in mm, where it is known. */
  | { readonly kind: 'hand'; readonly depth?: number };

/** The corner of a plan that was tried. */
export interface PlannedJoint {
  readonly joint: Joint;
  readonly cutter?: Cutter;
  /** How it is cut along fingers; absent without those. */
  readonly fingers?: FingerCut;
}

/** Reads how a trial joint was cut and what was measured of it. Throws a Failure with all that is wrong. */
export const readTrialOptions = (
  options: TrialOptions,
  unit: Notation,
  planned: PlannedJoint | undefined,
): { readonly trial: TrialSetting; readonly measured: Measured } => {
  const read = optionReader(options, unitOf(unit));
  /** Two options that measure one thing, in opposite directions. */
  const either = (more: keyof TrialOptions, less: keyof TrialOptions): number | undefined => {
    if (options[more] !== undefined && options[less] !== undefined)
      read.complain({ at: [less], says: say`--${more} is given too, and a joint is only one of them` });
    const [above, below] = [read.length(more), read.length(less)];
    for (const [key, other, value] of [
      [more, less, above],
      [less, more, below],
    ] as const)
      if (value !== undefined && value < 0)
        read.complain({
          at: [key],
          says: say`${mm(value)} is less than 0`,
          hint: say`--${other} ${mm(-value)}`,
        });
    return above ?? (below === undefined ? undefined : -below);
  };

  const looseness = either('loose', 'tight');
  const proud = either('proud', 'shy');
  const short = read.length('short');
  const nothing = (['loose', 'tight', 'proud', 'shy', 'short'] as const).every(
    (key) => options[key] === undefined,
  );
  if (nothing)
    read.complain({
      at: ['loose'],
      says: say`what was measured on the trial joint is missing`,
      hint: say`--loose ${mm(0.2)}, --tight ${mm(0.1)}, or --loose 0 where it fits`,
    });

  if (!nothing && options.log !== undefined && options.loose === undefined && options.tight === undefined)
    read.complain({
      at: ['log'],
      says: say`a log holds how joints fitted, and no fit was measured`,
      remedy: say`add --loose or --tight`,
    });

  const angle = read.value('cutterAngle', parseAngle);
  const cutterLength = read.length('cutterLength');
  const depth = read.length('depth') ?? planned?.joint.depth;
  const slope = read.value('slope', parseSlope);
  const at = read.length('at');
  const complain = (key: keyof TrialOptions, says: Phrase, hint: Phrase) =>
    read.complain({ at: [key], says, hint });

  const ways = (['cutterAngle', 'slope', 'byHand'] as const).filter((key) => options[key] !== undefined);
  for (const way of ways.slice(1))
    read.complain({
      at: [way],
      says: say`${optionName([ways[0] ?? way])} is given too, and a joint is cut in one way`,
      remedy: say`remove one of them`,
    });
  // Stopped sockets of a plan with a cutter are cut by that in both boards, open ones along a guide; without one, all by hand.
  const stopped = planned !== undefined && kindOf(planned.joint).sockets === 'stopped';
  const own = ways.length > 0 ? undefined : planned?.cutter;
  const both = stopped ? own : undefined;
  const along = slope ?? (own && planned?.joint.slope);
  const byCutter = options.cutterAngle !== undefined || both !== undefined;
  const byHand = options.byHand === true || (ways.length === 0 && planned !== undefined && own === undefined);
  if (ways.length === 0 && planned === undefined)
    complain(
      'cutterAngle',
      say`how the joint was cut is missing`,
      say`--cutter-angle 14 --depth ${mm(9.5)}, --slope 1:8, --by-hand, or a plan`,
    );
  if (byCutter && options.depth === undefined && depth === undefined)
    complain('depth', say`how deep the cutter was set is missing`, say`--depth ${mm(9.5)}`);
  if (byCutter && options.at !== undefined)
    complain('at', say`a cutter is set by its depth, not along a guide`, say`--depth`);
  if (!byCutter && !byHand && options.cutterLength !== undefined && read.complaints.length === 0)
    read.complain({
      at: ['cutterLength'],
      says: say`pins along a guide are cut by a straight cutter, whose length limits no setting`,
      remedy: say`remove the option`,
    });
  if (byHand)
    for (const key of ['depth', 'cutterLength', 'at', 'log', 'out'] as const)
      if (options[key] !== undefined)
        read.complain({
          at: [key],
          says: say`a corner cut by hand has no setting to correct`,
          remedy: say`remove ${optionName([key])}, or say what cut it: --cutter-angle 14 or --slope 1:8`,
        });
  if (read.complaints.length > 0) return refuseOptions(read.complaints, unit);

  const measured: Measured = {
    looseness: looseness ?? 0,
    ...(proud !== undefined && { proud }),
    ...(short !== undefined && { short }),
  };
  if (byHand) return { trial: { kind: 'hand', ...(depth !== undefined && { depth }) }, measured };
  // Another way than the plan's has no fingers.
  const pins = own && planned?.fingers?.pins;
  const cutAngle = angle ?? both?.angle;
  if (cutAngle !== undefined && depth !== undefined) {
    const reach = cutterLength ?? planned?.cutter?.length;
    return {
      trial: {
        kind: 'depth',
        setting: {
          angle: cutAngle,
          depth,
          ...(reach !== undefined && { length: reach }),
          ...(stopped && { pinBoard: planned.joint.pinBoard.thickness }),
          ...(pins?.kind === 'round' && { fingers: true }),
        },
      },
      measured,
    };
  }
  if (along === undefined) return refuseOptions(read.complaints, unit);
  return {
    trial: {
      kind: 'guide',
      setting: {
        slope: along,
        ...(depth !== undefined && { depth }),
        ...(own && planned && { straight: gauges(planned.joint).pinBoardFace }),
        ...(pins?.kind === 'straight' && pins.beyond !== undefined && { beyond: pins.beyond }),
      },
      ...(at !== undefined && { at }),
    },
    measured,
  };
};
