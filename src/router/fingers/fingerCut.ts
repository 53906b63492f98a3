import type { Interval, Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import type { Cutter } from '../limits/cutter.ts';
import { type FingerSetting, fingerSetting } from './fingerSetting.ts';
import type { Fingers } from './fingers.ts';
import { pinsBeyond } from './pinsBeyond.ts';
import { type SocketWay, socketChannels, socketWay } from './socketWay.ts';

/** How one corner is cut along fingers. Lengths in mm. */
export interface FingerCut {
  readonly setting: FingerSetting;
  readonly pins:
    | {
        /** One cutter in both boards. */
        readonly kind: 'round';
        /** The bush's channel over each socket. */
        readonly channels: readonly Interval[];
        readonly way: SocketWay;
      }
    | {
        readonly kind: 'straight';
        /** Outside diameter of the straight cutter's bush. */
        readonly bush: number;
        /** Of the inside face from the mark of tapered fingers; absent without those. */
        readonly beyond?: number;
      };
}

/**
 * The setting for a joint that was laid out for fingers.
 * @param straight diameter of the straight cutter for through pins
 * @param pinBush outside diameter of its bush
 */
export const fingerCut = (
  joint: Joint,
  cutter: Cutter,
  fingers: Fingers,
  straight: number,
  pinBush = fingers.bush,
): FingerCut => {
  const setting = fingerSetting(joint, cutter, fingers);
  if (kindOf(joint).sockets !== 'open')
    return {
      setting,
      pins: {
        kind: 'round',
        channels: socketChannels(joint, cutter, fingers),
        way: socketWay(joint, cutter, fingers),
      },
    };
  const beyond = pinsBeyond(fingers, cutter, straight, pinBush);
  return { setting, pins: { kind: 'straight', bush: pinBush, ...(beyond !== undefined && { beyond }) } };
};

/** Whether the pairs of a corner are within the bar. The place is `fingers.bar`. */
export const checkBar = ({ pairs }: FingerSetting, { bar }: Fingers): Complaint[] => {
  const span = (pairs.at(-1)?.to ?? 0) - (pairs[0]?.from ?? 0);
  return bar === undefined || span <= bar + EPSILON
    ? []
    : [
        {
          at: ['fingers', 'bar'],
          says: say`from the first pair's outer edge to the last's there are ${mm(span)}, more than the bar's ${mm(bar)}`,
          hint: say`${atLeast(span)}`,
        },
      ];
};
