import { gauges } from '../../joint/gauges.ts';
import type { Joint } from '../../joint/joint.ts';
import type { Unit } from '../../units/unit.ts';
import type { Drawer } from '../drawer.ts';
import { SAW_CUT, TRIAL_SPARE, TRIM_SPARE } from '../drawerLimits.ts';
import type { PartName } from '../partsList.ts';

/** One end of a part, in mm. */
export interface PartEnd {
  /** Wood beyond the finished end, to be cut off. */
  readonly spare: number;
  /** How far the joint reaches into the finished part; 0 where there is none. */
  readonly joint: number;
}

/** The ends of each kind of part of a drawer: of a side the front end and the back end, of all others both alike. */
export const partEnds = (
  { spec: { stock, bottom }, sizes, front, back }: Drawer,
  unit: Unit,
): Readonly<Record<PartName, readonly [PartEnd, PartEnd]>> => {
  const wall = stock.side.thickness;
  const trial = ({ depth }: Joint) => depth + TRIAL_SPARE;
  // A trial on a pin board's end uses up as much of it as the side is thick.
  const trialOfPins = (joint: Joint) => Math.max(trial(joint), wall + SAW_CUT);
  // Tails that are cut back, or rebated, end before their board does.
  const tailEnd = (joint: Joint): PartEnd => {
    const reach = gauges(joint).tailBoard;
    return { spare: reach + TRIAL_SPARE, joint: reach };
  };
  const both = (end: PartEnd) => [end, end] as const;
  return {
    // A trial of a front with a lip takes the rebate at that end too.
    front: both({ spare: trialOfPins(front) + sizes.rebate.sides, joint: wall }),
    side: [tailEnd(front), tailEnd(back)],
    back: both({ spare: trialOfPins(back), joint: wall }),
    bottom: both({ spare: bottom.kind === 'solid' ? TRIM_SPARE[unit] : 0, joint: 0 }),
    slip: both({ spare: TRIM_SPARE[unit], joint: 0 }),
  };
};
