import type { ComparedSet } from '../../project/sheetsOf.ts';
import type { Complaint } from '../../units/complaint.ts';

/** The corners to be compared, and what is advised on them. */
export interface Comparison extends ComparedSet {
  readonly advice: readonly Complaint[];
}
