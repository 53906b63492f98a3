import { rise } from '../../units/slope.ts';
import { type Cutter, cutterSlope } from '../limits/cutter.ts';
import type { Fingers } from './fingers.ts';

/**
 * How far the inside face of a through pin board stands beyond the mark of tapered fingers, towards their wide end, in mm;
 * negative short of it. Moving the board by e changes every socket by 2 e tan a. Undefined where there are no such fingers.
 *
 * A straight cutter d in a bush B2 runs along a wall that leans by a: across, the wall lies (B2 - d) / (2 cos a) beyond
 * what is cut. A socket is b wide at the inside face, the tail's base, so the channel there is c = b + (B2 - d) / cos a; the
 * pair is P = b + D - B, so c - together = (B2 - d) / cos a + B - D but for its spacer, the same for every tail. From the mark
 * the channel widens by 2 tan a for every mm.
 * @param straight diameter of the straight cutter
 * @param pinBush outside diameter of its bush
 */
export const pinsBeyond = (
  { together, bush, through }: Fingers,
  cutter: Cutter,
  straight: number,
  pinBush: number,
): number | undefined => {
  if (through === undefined) return undefined;
  const lean = rise(cutterSlope(cutter));
  const excess = (pinBush - straight) * Math.hypot(1, lean) + bush - cutter.diameter;
  return (excess - (through.channel - together)) / (2 * lean);
};
