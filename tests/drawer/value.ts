import type { Result } from '../../src/complaint.ts';
import { speak } from '../../src/units/phrase.ts';

/** The value of a result that must be there. */
export const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(complaintsOf(result).join('\n'));
  return result.value;
};

/** The complaints of a result as a user reads them: `place: what is wrong; try this`. */
export const complaintsOf = (result: Result<unknown>): string[] =>
  result.ok
    ? []
    : result.complaints.map(
        ({ at, says, hint }) =>
          `${at.join('.')}: ${speak(says, 'mm')}${hint === undefined ? '' : `; try ${speak(hint, 'mm')}`}`,
      );
