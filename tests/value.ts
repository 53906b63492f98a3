import { type Complaint, type Result, sentence } from '../src/units/complaint.ts';

/** Complaints as a user reads them in mm: `place: what is wrong; try this`. */
export const told = (complaints: readonly Complaint[]): string[] =>
  complaints.map((complaint) => `${complaint.at.join('.')}: ${sentence(complaint, 'mm')}`);

/** The complaints of a result; none where it is a value. */
export const complaintsOf = (result: Result<unknown>): string[] => (result.ok ? [] : told(result.complaints));

/** The value of a result that must be there. */
export const value = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(told(result.complaints).join('\n'));
  return result.value;
};
