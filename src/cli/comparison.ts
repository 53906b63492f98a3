import type { Complaint } from '../complaint.ts';
import type { Family } from '../drawer/drawer.ts';
import type { Joint } from '../joint/joint.ts';
import type { Unit } from '../units/unit.ts';

/** The corners to be compared, in the order of the cabinet. */
export interface Comparison {
  readonly title: string;
  readonly units: Unit;
  readonly family: Family;
  readonly rows: readonly { readonly name: string; readonly count: number; readonly joint: Joint }[];
  readonly advice: readonly Complaint[];
}
