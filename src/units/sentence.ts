import type { Complaint } from './complaint.ts';
import type { Notation } from './notation.ts';
import { speak } from './phrase.ts';

/**
 * What is wrong, what is allowed and what to try, on one line.
 * @example
 * ```ts
 * const length = parseLength('18 feet', 'mm');
 * if (!length.ok) for (const complaint of length.complaints) console.error(sentence(complaint, 'mm'));
 * ```
 */
export const sentence = ({ says, hint }: Complaint, notation: Notation): string =>
  hint === undefined ? speak(says, notation) : `${speak(says, notation)}; try ${speak(hint, notation)}`;
