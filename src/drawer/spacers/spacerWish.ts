import type { Range } from '../../units/range.ts';

/** What a set of drawers is asked for where fingers guide the cutter. Lengths in mm. */
export interface SpacerWish {
  /** The most different spacers that its front corners may need; not limited unless given. */
  readonly spacers?: number;
  /** Spacers that differ by no more are told as one; `USUAL_WITHIN` unless given. */
  readonly within?: number;
  /** What half pins may become, within half to twice the wished ones; all of that unless given. */
  readonly halfPins?: Range;
}
