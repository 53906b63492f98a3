import { accept, type Result, refuse } from '../../units/complaint.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { checkMeasured, checkSideMoves, type Measured } from './checkTrial.ts';
import { type Correction, doubt, measuredFit, type SideWords, sideMoves } from './correction.ts';

/** What to do by hand: no tool holds a setting. Lengths in mm. */
export interface HandCorrection extends Correction {
  /** How much to pare off each side of every pin, where the joint is tight; less than 0, by how much each was cut too far. */
  readonly pare: number;
}

/**
 * What a person does after a trial joint sawn and chopped by hand (common practice): pare the pins of a tight joint, shim
 * a loose one, and scribe and gauge the next corner accordingly.
 * @param depth the joint's depth, where it is known: no move can be larger
 * @returns what to do, or what is wrong: places are `looseness`, `proud` and `short`
 * @example
 * ```ts
 * const next = correctByHand({ looseness: -0.2 });
 * if (next.ok) console.log(next.value.pare); // 0.1
 * ```
 */
export const correctByHand = (measured: Measured, depth?: number): Result<HandCorrection> => {
  const wrong = checkMeasured(measured);
  if (wrong.length === 0 && depth !== undefined) wrong.push(...checkSideMoves(measured, depth));
  if (wrong.length > 0) return refuse(...wrong);
  const { looseness } = measured;
  const pare = looseness === 0 ? 0 : -looseness / 2;
  return accept({
    pare,
    because: because(looseness),
    advice: doubt(looseness),
    ...sideMoves(measured, SIDE_WORDS),
  });
};

const because = (looseness: number): Phrase => {
  const half = mm(Math.abs(looseness) / 2);
  if (looseness === 0) return say`The fit is right: scribe and saw the next corner the same way.`;
  return looseness < 0
    ? say`${measuredFit(looseness)}: rub pencil on the tails, and pare the pins where it marks them, ${half} off each side. Saw the next pins ${half} nearer to their lines.`
    : say`${measuredFit(looseness)}: glue a shaving ${mm(looseness)} thick into each socket, at one side of the tail. Scribe the next pins from their own tails, and saw them ${half} further into the waste.`;
};

const SIDE_WORDS = {
  proud: (by) =>
    say`The tail board is ${by} proud: chop the sockets ${by} further from the end, and gauge the next sockets ${by} longer.`,
  shy: (by) =>
    say`The tail board is ${by} below flush: plane the pins' ends flush, and gauge the next sockets ${by} shorter.`,
  short: (by) => say`The tails end ${by} short: gauge the next tail board ${by} further from its end.`,
} satisfies SideWords;
