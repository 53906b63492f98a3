import { gauges } from '../../joint/gauges.ts';
import type { Joint } from '../../joint/joint.ts';
import type { Unit } from '../../units/unit.ts';
import type { Hand } from '../cornerLetters.ts';
import type { Drawer } from '../drawer.ts';
import { SAW_CUT, TRIAL_SPARE, TRIM_SPARE } from '../drawerLimits.ts';
import { sidesOf } from '../drawerSizes.ts';
import type { SideSize } from '../drawerSpec.ts';
import type { PartName } from '../partsList.ts';

/** One end of a part, in mm. */
export interface PartEnd {
  /** Wood beyond the finished end, to be cut off. */
  readonly spare: number;
  /** How far the joint reaches into the finished part; 0 where there is none. */
  readonly joint: number;
}

/**
 * The ends of each kind of part of a drawer: of a side the front end and the back end; of a front and a back the two
 * as they are seen from outside; of all others both alike.
 * @param hand which side; either where both are alike
 */
export const partEnds = (
  { spec, sizes, front, back, right = { front, back } }: Drawer,
  unit: Unit,
  hand: Hand = 'left',
): Readonly<Record<PartName, readonly [PartEnd, PartEnd]>> => {
  const { bottom } = spec;
  const walls = sidesOf(spec);
  const [atFront, atBack] = hand === 'left' ? [front, back] : [right.front, right.back];
  const trial = ({ depth }: Joint) => depth + TRIAL_SPARE;
  // A trial on a pin board's end uses up as much of it as the side is thick.
  const trialOfPins = (joint: Joint, wall: number) => Math.max(trial(joint), wall + SAW_CUT);
  const pinEnd = (joint: Joint, { thickness }: SideSize): PartEnd => ({
    spare: trialOfPins(joint, thickness),
    joint: thickness,
  });
  const rebated = ({ spare, joint }: PartEnd): PartEnd => ({ spare: spare + sizes.rebate.sides, joint });
  // Tails that are cut back, or rebated, end before their board does.
  const tailEnd = (joint: Joint): PartEnd => {
    const reach = gauges(joint).tailBoard;
    return { spare: reach + TRIAL_SPARE, joint: reach };
  };
  const both = (end: PartEnd) => [end, end] as const;
  return {
    // A trial of a front with a lip takes the rebate at that end too.
    front: [rebated(pinEnd(front, walls.left)), rebated(pinEnd(right.front, walls.right))],
    side: [tailEnd(atFront), tailEnd(atBack)],
    back: [pinEnd(right.back, walls.right), pinEnd(back, walls.left)],
    bottom: both({ spare: bottom.kind === 'solid' ? TRIM_SPARE[unit] : 0, joint: 0 }),
    slip: both({ spare: TRIM_SPARE[unit], joint: 0 }),
  };
};
