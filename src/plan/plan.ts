import type { PlannedCabinet } from '../cabinet/frameSpec.ts';
import type { BoardsSpec } from '../drawer/blanks/boardSpec.ts';
import type { DrawerSpec } from '../drawer/drawerSpec.ts';
import type { SpacerWish } from '../drawer/spacers/spacerWish.ts';
import type { JointSpec } from '../joint/jointSpec.ts';
import type { TopRail } from '../joint/topRail.ts';
import type { Cutting } from '../router/limits/cutting.ts';
import type { Sawing } from '../stock/usualSawing.ts';
import type { Notation } from '../units/notation.ts';
import type { Climate } from '../wood/climate.ts';
import type { Wood } from '../wood/species.ts';

/** A single corner: it belongs to no drawer. */
export interface SingleCornerSpec {
  readonly name: string;
  readonly spec: JointSpec;
  /** What its tail board is, where that is a rail over the drawers. */
  readonly rail?: TopRail;
}

/** A plan that has been read and checked: lengths in mm, every default filled in. */
export interface Plan {
  readonly name: string;
  /** How lengths are shown. */
  readonly units: Notation;
  readonly drawers: readonly DrawerSpec[];
  /** Each with what a box has that a drawer has not. */
  readonly boxes: readonly DrawerSpec[];
  readonly joints: readonly SingleCornerSpec[];
  /** The cabinet that drawers stand in; absent where none is planned. */
  readonly cabinet?: PlannedCabinet;
  /** What is lost between boards and parts. */
  readonly sawing: Sawing;
  /** The boards that the parts come out of; absent where none are listed. */
  readonly boards?: BoardsSpec;
  /** The tools that every corner is cut with; absent for work by hand. */
  readonly cutting?: Cutting;
  /** Moisture contents where the drawers are made and kept; without it no movement is calculated. */
  readonly climate?: Climate;
  /** Woods that the plan defines; they take precedence over the built-in ones. */
  readonly woods?: readonly Wood[];
  /** The tail width to match the set to, in mm; found by the family rule unless given. */
  readonly target?: number;
  /** What is asked of the spacers of fingers. */
  readonly spacers?: SpacerWish;
}
