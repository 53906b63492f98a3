import type { Wanted } from '../../stock/wanted.ts';
import type { PartName } from '../partsList.ts';

/** A blank, and the part or the strip of one that it becomes. */
export interface PartBlank extends Wanted {
  readonly drawer: string;
  readonly part: PartName;
  /** Which of the equal parts, from 1: of sides the odd ones are left; absent for a spare. */
  readonly index?: number;
  /** Which strip of an edge-jointed part, from 1 at the reference edge up. */
  readonly strip?: number;
  /** The part's thickness when finished. */
  readonly finished: number;
}
