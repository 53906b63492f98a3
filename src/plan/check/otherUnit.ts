import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';

/** Fewer lengths than this that are wrong in one unit and right in the other are typing errors. */
const MANY = 3;

/**
 * The complaints about a plan whose bare numbers are in the other unit: one in place of one at every length. Undefined
 * where the other unit would remove only a few.
 * @param wrong in the unit that the plan says
 * @param inOther what would be wrong if they were in the other
 */
export const inOtherUnit = (
  unit: Unit,
  wrong: readonly Complaint[],
  inOther: readonly Complaint[],
): Complaint[] | undefined => {
  const gone = wrong.length - inOther.length;
  const other = unit === 'mm' ? 'in' : 'mm';
  const called = { mm: 'mm', in: 'inches' };
  return gone < MANY
    ? undefined
    : [
        {
          at: ['units'],
          says: say`${gone} lengths of this plan are out of range in ${called[unit]} and right in ${called[other]}: these look like ${called[other]}`,
          hint: say`units: ${other}`,
        },
        ...inOther,
      ];
};
