import { gauges } from '../../joint/gauges.ts';
import type { Joint } from '../../joint/joint.ts';
import { type Cutter, diameterAt } from '../limits/cutter.ts';

/** The round that the cutter leaves at the end of a lapped socket, and how the tails are rounded to fit it. In mm. */
export interface RoundSocket {
  /** Along the pin board's inside face, from its end to the middle of the round: what the tail board's thickness fills. */
  readonly length: number;
  /** Where the cutter's centre stops, from the pin board's end; there it runs from side to side of a wide socket. */
  readonly stop: number;
  /** The round at the socket's floor, where it is largest: half the cutter's diameter. */
  readonly radius: number;
  /** To round off both inside arrises of every tail. */
  readonly ease: {
    /** How far from the tail board's inside face the round begins, on the tails' sides. */
    readonly fromFace: number;
    /** How far from the side it ends on the inside face: at the tail's base, where it is a quarter circle, and at its tip. */
    readonly atBase: number;
    readonly atTip: number;
  };
}

/**
 * The cutter is a cone, so its round in the socket shrinks from R at the floor to r = R - L tan a at the inside face. For
 * the tail board to seat, the socket must have its full length at the face, so the centre stops r short of it. At
 * a height where the round's radius is q the tail's side lies q from the centre's line: the round takes from it a
 * corner that begins r from the inside face and is q - √(q² - r²) wide there.
 */
export const roundSocket = (joint: Joint, cutter: Cutter): RoundSocket => {
  const length = gauges(joint).pinBoardFace;
  const radius = cutter.diameter / 2;
  const atFace = diameterAt(cutter, joint.depth) / 2;
  return {
    length,
    stop: length - atFace,
    radius,
    ease: { fromFace: atFace, atBase: atFace, atTip: radius - Math.sqrt(radius ** 2 - atFace ** 2) },
  };
};
