import type { Complaint, Place } from '../complaint.ts';
import { say } from '../units/phrase.ts';
import type { WrittenJoint } from './schema/plan.ts';

/** What the wishes for one corner contradict each other in. */
export const contradictions = ({ kind, lap, tails, pins, graded }: WrittenJoint, at: Place): Complaint[] => {
  const found: Complaint[] = [];
  if (kind === 'through' && lap !== undefined)
    found.push({
      at: [...at, 'lap'],
      says: say`a through joint has no lap`,
      hint: say`kind: lapped, or leaving the lap out`,
    });
  if (Array.isArray(tails) && graded !== undefined)
    found.push({
      at: [...at, 'graded'],
      says: say`the tails are listed width by width, so they cannot be graded too`,
      hint: say`a number of tails, or leaving the grade out`,
    });
  if (!Array.isArray(tails) && pins !== undefined)
    found.push({
      at: [...at, 'pins'],
      says: say`pins are listed, but the tails between them are not`,
      hint: say`listing the tails too, or one width for all pins (pin)`,
    });
  return found;
};
