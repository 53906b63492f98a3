import { checkSizes } from '../../joint/checkSizes.ts';
import { withDefaults } from '../../joint/defaults.ts';
import { LEAST_PIN } from '../../joint/jointLimits.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { jointWidth, leastTip } from '../../joint/spacing.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';

/**
 * A wish spaced as a machine spaces it: tails and pins at a fixed pitch, from the middle of one pin to that of the next,
 * the same for every width of board. Both half pins are alike, and fill what the pitch leaves: of the counts that can be
 * cut, the one whose half pins are nearest in width to a pin.
 * @param wish its spacing and half pins do not count
 * @param entry the narrowest tail whose socket can be cut, where a cutter must enter it
 * @returns the wish with listed tails, or why the pitch does not work; the place is `pitch`, or that of a size that is wrong in itself
 */
export const atPitch = (
  wish: JointSpec,
  pitch: number,
  entry = 0,
): Result<JointSpec & Required<Pick<JointSpec, 'pin' | 'halfPin'>>> => {
  const sizes = checkSizes(wish);
  if (sizes.length > 0) return refuse(...sizes);
  const resolved = withDefaults(wish);
  const { pin } = resolved;
  const width = jointWidth(resolved);
  const tip = pitch - pin;
  const least = Math.max(leastTip(resolved), entry);
  const most = width - 2 * LEAST_PIN + pin;
  if (least + pin > most + EPSILON)
    return refuse({
      at: ['pitch'],
      says: say`boards ${mm(width)} wide have no room for a tail of ${mm(least)} and two half pins of ${mm(LEAST_PIN)}, whatever the pitch`,
      remedy: say`use wider boards`,
    });
  if (!(tip >= least - EPSILON && pitch <= most + EPSILON))
    return refuse({
      at: ['pitch'],
      says: say`a pitch of ${mm(pitch)} leaves tails of ${mm(Math.max(0, tip))} beside pins of ${mm(pin)}; it must be ${atLeast(least + pin)} to ${atMost(most)} here`,
      hint: say`${pitch > most ? atMost(most) : atLeast(least + pin)}`,
      remedy: say`make the pins narrower`,
    });
  // Each further tail narrows either half pin by half a pitch.
  const halfPin = (tails: number): number => (width - tails * pitch + pin) / 2;
  const mostTails = Math.floor((width + pin - 2 * LEAST_PIN) / pitch + EPSILON);
  const nearest = Math.round((width - pin) / pitch + EPSILON);
  const tails = Math.min(Math.max(1, nearest), mostTails);
  const half = halfPin(tails);
  return accept({
    ...wish,
    pin,
    halfPin: { lower: half, upper: half },
    spacing: { kind: 'listed', tails: new Array<number>(tails).fill(tip) },
  });
};
