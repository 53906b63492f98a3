import { foreignLengths, kindFor } from '../../joint/kinds/kinds.ts';
import { checkSpacingWish } from '../../joint/spacingWish.ts';
import { type Complaint, type Place, under } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { areListed, type WrittenJoint } from '../schema/planSchema.ts';
import { checkLocked } from './checkLocked.ts';

/** Wishes for one corner that contradict each other. */
export const contradictions = (written: WrittenJoint, at: Place): Complaint[] => {
  const { kind, tails, pins, graded } = written;
  const found: Complaint[] = checkLocked(written, at);
  if (kind !== undefined)
    for (const { key, word } of foreignLengths(kind, written))
      found.push({
        at: [...at, key],
        says: say`a ${kind} joint has no ${word}`,
        hint: say`kind: ${kindFor([key])}`,
        remedy: say`remove the ${word}`,
      });
  if (areListed(tails) && graded !== undefined)
    found.push({
      at: [...at, 'graded'],
      says: say`the tails are listed width by width, so they cannot be graded too`,
      remedy: say`give the number of tails, or remove the grade`,
    });
  found.push(...under(at, checkSpacingWish(written, areListed(tails))));
  if (!areListed(tails) && pins !== undefined)
    found.push({
      at: [...at, 'pins'],
      says: say`pins are listed, but the tails between them are not`,
      remedy: say`list the tails too, or give one width for all pins (pin)`,
    });
  return found;
};
