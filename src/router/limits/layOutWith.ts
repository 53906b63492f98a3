import type { Joint } from '../../joint/joint.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { layOut } from '../../joint/layOut.ts';
import { accept, type Result } from '../../units/complaint.ts';
import type { Fingers } from '../fingers/fingers.ts';
import { atPitch } from './atPitch.ts';
import type { Cutter } from './cutter.ts';
import type { Cutting } from './cutting.ts';
import { withCutter } from './fitToCutter.ts';
import { layOutForCutter } from './layOutForCutter.ts';

/** What a corner is cut with, where it is not by hand alone. */
export interface Tooling {
  readonly cutter?: Cutter;
  /** What guides the cutter, where that moves on a bar. */
  readonly fingers?: Fingers;
  /** A machine's spacing, from the middle of one pin to that of the next, in mm. */
  readonly pitch?: number;
}

/** The part of the tools that limits a layout: the dovetail cutter, the fingers that guide it, and a machine's pitch. */
export const toolingOf = (cutting: Cutting | undefined, pitch?: number): Tooling => ({
  ...(cutting && { cutter: cutting.cutter }),
  ...(cutting?.fingers && { fingers: cutting.fingers }),
  ...(pitch !== undefined && { pitch }),
});

/** A wish at a pitch, its pins as wide as the cutter asks; a pin and a slope that are wished for remain, to be judged as they are. */
const heldAtPitch = (wish: JointSpec, pitch: number, cutter: Cutter | undefined): Result<JointSpec> => {
  const entry = kindOf(wish).sockets === 'open' ? undefined : cutter?.diameter;
  const spaced = atPitch(cutter === undefined ? wish : withCutter(wish, cutter), pitch, entry);
  if (!spaced.ok) return spaced;
  const { pin, halfPin, spacing } = spaced.value;
  return accept({ ...wish, pin: wish.pin ?? pin, halfPin, spacing });
};

/** Sets out one corner within the limits of the tools, or of hand work where there are none; places as theirs. */
export const layOutWith = (wish: JointSpec, { cutter, fingers, pitch }: Tooling): Result<Joint> => {
  const held = pitch === undefined ? accept(wish) : heldAtPitch(wish, pitch, cutter);
  if (!held.ok) return held;
  return cutter === undefined ? layOut(held.value) : layOutForCutter(held.value, cutter, fingers);
};
