import type { Interval, Joint } from '../../joint/joint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { rise } from '../../units/slope.ts';
import { type Cutter, cutterSlope } from '../limits/cutter.ts';
import { SAME_WIDTH } from '../limits/fitToCutter.ts';
import type { Fingers } from './fingers.ts';

/**
 * How the sockets of a lapped corner are cut along the same fingers: with pairs set over the pins; with the tails' setting,
 * the board moved half a pitch along; along another end of the fingers; or not along them.
 */
export type SocketWay = 'pairs' | 'half pitch' | 'channel' | 'none';

/**
 * Where the bush runs over each socket, wall to wall, in mm from the reference edge: the cutter clears the tail's tip, so
 * the channel is t + B - D wide over its middle.
 */
export const socketChannels = (
  { tails }: Pick<Joint, 'tails'>,
  { diameter }: Pick<Cutter, 'diameter'>,
  { bush }: Pick<Fingers, 'bush'>,
): Interval[] => {
  const outside = (bush - diameter) / 2;
  return tails.map(({ tip: [from, to] }) => [from - outside, to + outside]);
};

/** The narrow widths of the whole pins. */
const wholePins = ({ pins }: Pick<Joint, 'pins'>): number[] =>
  pins.filter(({ half }) => !half).map(({ narrow: [from, to] }) => to - from);

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_WIDTH + EPSILON;

/** What another end's channel is wider by than the pair: 2 (B - D) + 2 L tan a, the same for every tail. */
export const channelExcess = (
  { depth }: Pick<Joint, 'depth'>,
  cutter: Cutter,
  { bush }: Pick<Fingers, 'bush'>,
): number => 2 * (bush - cutter.diameter) + 2 * depth * rise(cutterSlope(cutter));

/**
 * The way that cuts this lapped corner's sockets and moves the fingers least, its front laid flat under the cutter that cut
 * the tails, as deep.
 * - half a pitch along: a tail's tip is as wide as the space beside it at the baseline, t = p + 2 L tan a, and so every
 *   pin; then pairs over the pins would be as wide as those over the tails;
 * - another end: its channel c over a pair P is c - together + P wide, and t + B - D is asked for: c - together =
 *   2 (B - D) + 2 L tan a, so that one depth suits every tail;
 * - pairs over the pins: what is left between two channels is p + D - B wide, at least a pair pushed together.
 */
export const socketWay = (joint: Joint, cutter: Cutter, fingers: Fingers): SocketWay => {
  const { together, bush, lapped } = fingers;
  const pins = wholePins(joint);
  const gain = 2 * joint.depth * rise(cutterSlope(cutter));
  const alike = joint.tails.every(({ tip: [from, to] }) =>
    pins.every((pin) => isSame(to - from, pin + gain)),
  );
  if (pins.length > 0 && alike) return 'half pitch';
  if (lapped !== undefined && isSame(lapped.channel - together, channelExcess(joint, cutter, fingers)))
    return 'channel';
  return pins.every((pin) => pin + cutter.diameter - bush >= together - SAME_WIDTH) ? 'pairs' : 'none';
};

/** Why there is no such way, and what cuts the sockets instead. */
export const noSocketWay = (joint: Joint, cutter: Cutter, fingers: Fingers): Phrase => {
  const { together, bush, lapped } = fingers;
  const guard = Math.min(...wholePins(joint)) + cutter.diameter - bush;
  const channel =
    lapped === undefined
      ? []
      : say`, and a channel of ${mm(lapped.channel)} is not the ${mm(together + channelExcess(joint, cutter, fingers))} that this depth asks for`;
  return say`the sockets cannot be cut along these fingers: over the pins there is room for ${mm(Math.max(0, guard))}, and a pair takes ${mm(together)}${channel}; the tails' setting stands`;
};
