import type { Joint } from '../../joint/joint.ts';
import { jointSpan } from '../../joint/joint.ts';
import type { CornerWish, HalfPins } from '../../joint/jointSpec.ts';
import { KINDS, kindOf, withoutKind } from '../../joint/kinds/kinds.ts';
import type { JointWish } from '../drawerSpec.ts';

/**
 * What is wished of a corner that has been planned, held fast: its tails in number, its pins and its half pins, its laps and
 * shoulders. What follows by default from a board's thickness follows from the plan's, not from what came out, so that all
 * corners of a set still look alike.
 * @param pin narrow width of its pins as planned, in mm
 */
export const heldCorner = (wish: CornerWish, joint: Joint, pin: number): CornerWish => ({
  ...wish,
  pin,
  halfPin: halfPinsOf(joint),
  ...(wish.shoulder !== undefined && heldShoulder(joint)),
  ...(wish.houndsTooth && { houndsTooth: { ...smallPinOf(joint), ...wish.houndsTooth } }),
  spacing: wish.spacing.kind === 'listed' ? wish.spacing : { ...wish.spacing, tails: joint.tails.length },
});

/** The same of a front corner, which may have laps. */
export const heldFront = (wish: JointWish, joint: Joint, pin: number): JointWish => ({
  ...heldCorner(withoutKind(wish), joint, pin),
  ...KINDS[joint.kind].wish(
    Object.fromEntries(kindOf(joint).lengths.map((length) => [length.key, length.of(joint)])),
  ),
});

const halfPinsOf = (joint: Joint): HalfPins => {
  const [from, to] = jointSpan(joint);
  return {
    lower: (joint.tails[0]?.tip[0] ?? from) - from,
    upper: to - (joint.tails.at(-1)?.tip[1] ?? to),
  };
};

/** Shoulders of two widths have one that covers the groove, and the usual one. */
const heldShoulder = ({ shoulder: { lower, upper } }: Joint): Pick<CornerWish, 'shoulderWidth'> =>
  lower > 0 && upper > 0 && lower !== upper ? {} : { shoulderWidth: lower || upper };

const smallPinOf = ({ smallPins = [] }: Joint) => {
  const [first] = smallPins;
  return first && { smallPin: first.narrow[1] - first.narrow[0] };
};
