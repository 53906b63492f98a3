import type { Complaint } from './complaint.ts';
import { speak } from './phrase.ts';
import type { Unit } from './unit.ts';

/**
 * What is wrong, what is allowed and what to try, on one line.
 * @example
 * ```ts
 * const length = parseLength('18 feet', 'mm');
 * if (!length.ok) for (const complaint of length.complaints) console.error(sentence(complaint, 'mm'));
 * ```
 */
export const sentence = ({ says, hint }: Complaint, unit: Unit): string =>
  hint === undefined ? speak(says, unit) : `${speak(says, unit)}; try ${speak(hint, unit)}`;
