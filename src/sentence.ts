import type { Complaint } from './complaint.ts';
import { speak } from './units/phrase.ts';
import type { Unit } from './units/unit.ts';

/** What is wrong, what is allowed and what to try, on one line. */
export const sentence = ({ says, hint }: Complaint, unit: Unit): string =>
  hint === undefined ? speak(says, unit) : `${speak(says, unit)}; try ${speak(hint, unit)}`;
