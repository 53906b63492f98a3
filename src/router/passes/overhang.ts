/**
 * Beyond which edges of the pin board the tail board goes on, as a drawer's sides do past its back. A cutter that cleared
 * the half space there would run into wood that stays, so that one is cut by hand.
 */
export interface Overhang {
  readonly lower: boolean;
  readonly upper: boolean;
}

/** Both boards end at the same edges, and a cutter runs out into the air. */
export const NO_OVERHANG: Overhang = { lower: false, upper: false };
