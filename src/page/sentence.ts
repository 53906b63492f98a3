import type { Complaint } from '../complaint.ts';
import type { Unit } from '../units/length.ts';
import { speak } from '../units/phrase.ts';

/** What is wrong and what to try, as one sentence. */
export const sentence = ({ says, hint }: Complaint, unit: Unit): string =>
  hint === undefined ? speak(says, unit) : `${speak(says, unit)}; try ${speak(hint, unit)}`;
