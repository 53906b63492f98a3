import type { Complaint } from '../complaint.ts';
import type { ComparedSet } from '../project/sheetsOf.ts';

/** The corners to be compared, and what is advised on them. */
export interface Comparison extends ComparedSet {
  readonly advice: readonly Complaint[];
}
