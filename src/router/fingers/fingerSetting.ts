import type { Joint } from '../../joint/joint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { Cutter } from '../limits/cutter.ts';
import type { Fingers } from './fingers.ts';

/** A pair of fingers where it guards its tail: outer edges, in mm from the corner's reference edge. */
export interface FingerPair {
  readonly from: number;
  readonly to: number;
  /** Width of what is put between its two fingers; 0 where they are pushed together. */
  readonly spacer: number;
}

/** The pairs of one corner from the reference edge up, and how far each is from the next. Lengths in mm. */
export interface FingerSetting {
  readonly pairs: readonly FingerPair[];
  /** One fewer than the pairs: beyond the outermost there is no finger. */
  readonly gaps: readonly number[];
}

/** A spacer thinner than this is none, in mm: it is within what a pair is set to. */
export const LEAST_SPACER = 0.05;

/** The spacer that makes a pair so wide, in mm; 0 where it is none. */
export const spacerOf = (pair: number, { together }: Pick<Fingers, 'together'>): number =>
  pair - together < LEAST_SPACER - EPSILON ? 0 : pair - together;

/**
 * The setting of the fingers for a corner's tails. A bush of diameter B runs between the pairs, a cutter of diameter D in
 * its middle: a pair's edges lie (B - D) / 2 inside its tail's base.
 */
export const fingerSetting = (
  { tails }: Pick<Joint, 'tails'>,
  { diameter }: Pick<Cutter, 'diameter'>,
  fingers: Pick<Fingers, 'together' | 'bush'>,
): FingerSetting => {
  const inside = (fingers.bush - diameter) / 2;
  const pairs = tails.map(({ base }): FingerPair => {
    const [from, to] = [base[0] + inside, base[1] - inside];
    return { from, to, spacer: spacerOf(to - from, fingers) };
  });
  return { pairs, gaps: pairs.slice(1).map(({ from }, i) => from - (pairs[i]?.to ?? from)) };
};
