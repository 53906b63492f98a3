import type { DrawerSpec } from '../drawer/drawerSpec.ts';
import type { JointSpec } from '../joint/jointSpec.ts';
import type { Cutting } from '../router/limits/cutting.ts';
import type { Notation } from '../units/notation.ts';
import type { Climate } from '../wood/climate.ts';
import type { Wood } from '../wood/species.ts';

/** A corner that belongs to no drawer. */
export interface NamedJoint {
  readonly name: string;
  readonly spec: JointSpec;
}

/** A plan that has been read whole and checked: lengths in mm, every default filled in. */
export interface Plan {
  readonly name: string;
  /** The unit that the maker reads in. */
  readonly units: Notation;
  readonly drawers: readonly DrawerSpec[];
  readonly joints: readonly NamedJoint[];
  /** What every corner is cut with, where that is not by hand. */
  readonly cutting?: Cutting;
  /** Where the drawers are made and kept; absent, nothing is known of how they will move. */
  readonly climate?: Climate;
  /** Woods of the maker's own, which go before those that are known. */
  readonly woods?: readonly Wood[];
  /** The tail width that the set should keep to; absent, the family rule finds it. */
  readonly target?: number;
}
