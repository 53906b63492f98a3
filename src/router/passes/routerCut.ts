import { gauges } from '../../joint/gauges.ts';
import { isPlainEnd, type Joint } from '../../joint/joint.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import { type Cutter, leastPin } from '../limits/cutter.ts';
import { socketPasses, tailPasses } from './passes.ts';
import { type RoundSocket, roundSocket } from './roundSocket.ts';
import { type StraightPass, straightPasses } from './straightPasses.ts';

/** How the pin board of a corner is cut. */
export type PinCut =
  | {
      /** One cutter in both boards. */
      readonly kind: 'round';
      /** Its centres for each socket, from the reference edge. */
      readonly passes: readonly (readonly number[])[];
      readonly socket: RoundSocket;
    }
  | {
      readonly kind: 'straight';
      readonly diameter: number;
      /** How deep the straight cutter is set, from the pin board's end. */
      readonly depth: number;
      readonly passes: readonly (readonly StraightPass[])[];
    };

/** How to cut one corner with a router. Lengths in mm. */
export interface RouterCut {
  /**
   * The dovetail cutter's centres for each space of the tail board, from the reference edge, the half spaces included;
   * none for a half space that is cut by hand, beyond the pin board or at a mitred shoulder, and none at all where the spaces
   * stop before the outside face, or the tails before the board's end.
   */
  readonly passes: readonly (readonly number[])[];
  /** How deep the dovetail cutter is set. */
  readonly depth: number;
  /** The round left in a stopped socket, at its floor; 0 where sockets run out at both faces. */
  readonly socketRadius: number;
  /** The least narrow width of a pin at this depth. */
  readonly leastPin: number;
  readonly pinCut: PinCut;
}

/** Whether no space of the tail board is left to the cutter. */
export const tailsByHand = ({ passes }: RouterCut): boolean => passes.every(({ length }) => length === 0);

/**
 * The passes for a joint that was laid out for a cutter.
 * @param straight diameter of the straight cutter for through pins, which `checkStraight` accepts
 * @param overhang where the tail board is wider than the pin board
 */
export const routerCut = (
  joint: Joint,
  cutter: Cutter,
  straight: number,
  overhang: Overhang = NO_OVERHANG,
): RouterCut => {
  const socket = roundSocket(joint, cutter);
  const stopped = kindOf(joint).sockets !== 'open';
  const { lower, upper } = joint.shoulder;
  const byHand = { lower: overhang.lower || lower > 0, upper: overhang.upper || upper > 0 };
  return {
    passes: tailPasses(joint, cutter).map((centres, i, { length }) =>
      !isPlainEnd(joint) || (i === 0 && byHand.lower) || (i === length - 1 && byHand.upper) ? [] : centres,
    ),
    depth: joint.depth,
    socketRadius: stopped ? socket.radius : 0,
    leastPin: leastPin(cutter, joint.depth),
    pinCut: stopped
      ? { kind: 'round', passes: socketPasses(joint, cutter), socket }
      : {
          kind: 'straight',
          diameter: straight,
          depth: gauges(joint).pinBoardFace,
          passes: straightPasses(joint, straight),
        },
  };
};

/**
 * Beyond which edges of the pin board the tail board extends, as a drawer's sides do beyond its back. A cutter that cleared
 * the half space there would run into wood that stays, so that one is cut by hand.
 */
export interface Overhang {
  readonly lower: boolean;
  readonly upper: boolean;
}

/** Both boards end at the same edges: a cutter runs out of the wood there. */
export const NO_OVERHANG: Overhang = { lower: false, upper: false };
