import { type Complaint, under } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { checkRange, lengthOrNaN } from '../../units/range.ts';
import { checkBush } from '../limits/checkBush.ts';
import { type Cutter, leastPin } from '../limits/cutter.ts';

/**
 * A guide whose fingers slide along a bar in pairs: one pair guards one tail, and a guide bush runs between neighbouring
 * pairs. Lengths in mm.
 */
export interface Fingers {
  /** Width of a pair that is pushed together, outer edge to outer edge. */
  readonly together: number;
  /** Outside diameter of the bush that runs between the pairs: at least the dovetail cutter's. */
  readonly bush: number;
  /** How many pairs there are; not limited unless given. */
  readonly pairs?: number;
  /** The most from the first pair's outer edge to the last's; not limited unless given. */
  readonly bar?: number;
  /** Another end of the same fingers, for lapped sockets. */
  readonly lapped?: SocketEnd;
  /** Another end of the same fingers, for through pins. */
  readonly through?: PinEnd;
}

/** An end of the fingers between whose halves a bush runs, and not beside them. */
export interface SocketEnd {
  /** Width of the channel between the two fingers of a pair that is pushed together. */
  readonly channel: number;
}

/** An end with tapered fingers: the bush's run leans as a pin's side does. */
export interface PinEnd {
  /** Width of the channel at the fingers' mark, of a pair that is pushed together. */
  readonly channel: number;
  /** The angle of either side to the pair's middle, in degrees; the cutter's unless given. */
  readonly taper?: number;
}

export const TOGETHER_RANGE = { least: 1, most: 200 } as const;
export const PAIRS_RANGE = { least: 1, most: 1000 } as const;
export const BAR_RANGE = { least: 1, most: 5000 } as const;

/** How far two tapers may differ and still be one, in degrees: what rounding to a hundredth leaves. */
const SAME_TAPER = 0.005;

/**
 * The narrowest tail at its tip that a pair guards, in mm: one with the pair pushed together.
 *
 * The cutter's centre runs in the middle of a gap, a bush's radius off the pair's outer edge, and cuts a cutter's radius to
 * its side; so the pair's edges lie (B - D) / 2 inside the tail's base, and a tail t wide at its tip, t - 2 L tan a at its
 * base, has a pair P = t - 2 L tan a + D - B wide. With D - 2 L tan a, the least pin, P = together gives t.
 */
export const leastGuardedTail = (
  { together, bush }: Pick<Fingers, 'together' | 'bush'>,
  cutter: Cutter,
  depth: number,
): number => together + bush - leastPin(cutter, depth);

/** Everything that can be judged of the fingers before any joint; places lie under `fingers`. */
export const checkFingers = (
  { together, bush, pairs, bar, lapped, through }: Fingers,
  cutter: Cutter,
): Complaint[] => {
  const { diameter, angle } = cutter;
  const wrong: Complaint[] = [
    ...checkRange(
      ['together'],
      'a pair of fingers pushed together',
      together,
      TOGETHER_RANGE,
      say`${mm(20)}`,
    ),
    ...checkBush('bush', bush, 'dovetail', diameter),
    ...checkRange(['lapped', 'channel'], 'the channel for lapped sockets', lapped?.channel, TOGETHER_RANGE),
    ...checkRange(['through', 'channel'], 'the channel for through pins', through?.channel, TOGETHER_RANGE),
  ];
  if (
    pairs !== undefined &&
    !(Number.isInteger(pairs) && pairs >= PAIRS_RANGE.least && pairs <= PAIRS_RANGE.most)
  )
    wrong.push({
      at: ['pairs'],
      says: say`${pairs} is no number of pairs of fingers; it must be a whole number, ${PAIRS_RANGE.least} to ${PAIRS_RANGE.most}`,
    });
  if (bar !== undefined && !(bar >= together - EPSILON && bar <= BAR_RANGE.most))
    wrong.push({
      at: ['bar'],
      says: say`the bar is ${lengthOrNaN(bar)} long; one pair of fingers takes ${lengthOrNaN(together)} of it, so it must be ${atLeast(together)} or more`,
      ...(together > 0 && { hint: say`${atLeast(together)}` }),
    });
  if (through?.taper !== undefined && !(Math.abs(through.taper - angle) <= SAME_TAPER))
    wrong.push({
      at: ['through', 'taper'],
      says: say`fingers tapered by ${through.taper} degrees do not guide pins for a cutter of ${angle} degrees: it must be the cutter's angle`,
      hint: say`${angle}`,
      remedy: say`remove \`through\`, and cut the pins along a guide board or by hand`,
    });
  return under(['fingers'], wrong);
};
