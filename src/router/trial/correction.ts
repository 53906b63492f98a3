import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type LengthWord, mm, type Phrase, say } from '../../units/phrase.ts';
import { rise, type Slope } from '../../units/slope.ts';
import type { Measured } from './checkTrial.ts';

/** A change to one setting, in mm, and what to do. */
export interface Move {
  readonly change: number;
  readonly because: Phrase;
}

/** What to do after a trial joint. Lengths in mm. */
export interface Correction {
  /** What was measured of the fit, and what to do for it. */
  readonly because: Phrase;
  /** How much further the pin board's sockets are to reach from its end; less than 0, how much less far. */
  readonly stop?: Move;
  /** How much longer the tails are to be. */
  readonly tails?: Move;
  /** Doubt of what was measured, and what the correction needs that the tools or the board may not have. */
  readonly advice: readonly Complaint[];
  /** What becomes of a setting of fingers; absent without them. */
  readonly fingers?: FingersAfter;
}

/** What is kept of a setting of fingers after a trial joint, and what to move. Lengths in mm. */
export interface FingersAfter {
  readonly because: Phrase;
  /** How much wider every tail is to be, the fingers and their spacers left where they are. */
  readonly tails?: number;
  /** How much thicker every spacer is to be instead, where the plan's tails are kept. */
  readonly spacers?: number;
  /** How far the inside face is to be beyond the mark of tapered fingers. */
  readonly beyond?: number;
}

/**
 * Change of a setting that removes a looseness, in mm: g / (2 s), for each of a tail's two sides moves by s for
 * every mm of the setting. Where one cutter cuts both boards, s is the tangent of its angle, and the change is of its
 * depth: deeper is tighter. Where pins are cut along a sloped guide, the guide moves towards their narrow ends.
 */
export const correction = (looseness: number, slope: Slope): number => {
  const change = looseness / (2 * rise(slope));
  // No negative zero.
  return Math.abs(change) < EPSILON ? 0 : change;
};

/** What to do about boards that do not end flush, by how much, in the words of how the joint was cut. */
export interface SideWords {
  readonly proud: (by: LengthWord) => Phrase;
  /** Below flush. */
  readonly shy: (by: LengthWord) => Phrase;
  /** Tails that end short of their sockets' floors. */
  readonly short: (by: LengthWord) => Phrase;
}

/** The moves for boards that do not end flush; the fit stays as it is. */
export const sideMoves = (
  { proud = 0, short = 0 }: Measured,
  words: SideWords,
): Pick<Correction, 'stop' | 'tails'> => ({
  ...(proud !== 0 && {
    stop: { change: proud, because: proud > 0 ? words.proud(mm(proud)) : words.shy(mm(-proud)) },
  }),
  ...(short !== 0 && { tails: { change: short, because: words.short(mm(short)) } }),
});

/** `Loose by 0.2 mm`, the beginning of a sentence. */
export const measuredFit = (looseness: number): Phrase =>
  looseness > 0 ? say`Loose by ${mm(looseness)}` : say`Tight by ${mm(-looseness)}`;

/** A trial that was set out with care is seldom further off than this; in mm (common practice). */
const USUAL = 0.5;

/** Most measurements that are so far off have lost a decimal point. */
export const doubt = (looseness: number): Complaint[] =>
  Math.abs(looseness) <= USUAL + EPSILON
    ? []
    : [
        {
          at: ['looseness'],
          says: say`measure again: ${mm(Math.abs(looseness))} is more than a trial joint is usually out`,
          hint: say`${mm(Math.abs(looseness) / 10)}, if a decimal point was left out`,
        },
      ];
