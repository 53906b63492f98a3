import type { Joint } from '../../joint/joint.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { layOut } from '../../joint/layOut.ts';
import type { Result } from '../../units/complaint.ts';
import { atPitch } from './atPitch.ts';
import type { Cutter } from './cutter.ts';
import type { Cutting } from './cutting.ts';
import { withCutter } from './fitToCutter.ts';
import { layOutForCutter } from './layOutForCutter.ts';

/** What a corner is cut with, where it is not by hand alone. */
export interface Tooling {
  readonly cutter?: Cutter;
  /** A machine's spacing, from the middle of one pin to that of the next, in mm. */
  readonly pitch?: number;
}

/** The part of the tools that limits a layout: the dovetail cutter and a machine's pitch. */
export const toolingOf = (cutting: Cutting | undefined, pitch?: number): Tooling => ({
  ...(cutting && { cutter: cutting.cutter }),
  ...(pitch !== undefined && { pitch }),
});

/** Sets out one corner within the limits of the tools, or of hand work where there are none; places as theirs. */
export const layOutWith = (wish: JointSpec, { cutter, pitch }: Tooling): Result<Joint> => {
  // A pin that is wished for is judged as it is; one that is not is as wide as the cutter asks.
  const pinned = cutter !== undefined && wish.pin === undefined ? withCutter(wish, cutter) : wish;
  const entry = kindOf(wish).sockets === 'stopped' ? cutter?.diameter : undefined;
  const spaced = pitch === undefined ? undefined : atPitch(pinned, pitch, entry);
  if (spaced?.ok === false) return spaced;
  const held = spaced?.value ?? wish;
  return cutter === undefined ? layOut(held) : layOutForCutter(held, cutter);
};
