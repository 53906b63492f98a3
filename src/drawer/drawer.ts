import type { Joint } from '../joint/joint.ts';
import type { Complaint } from '../units/complaint.ts';
import type { DrawerParts } from './drawerParts.ts';
import type { Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import type { HidingChoice } from './groove/hidingChoices.ts';
import type { SpacerWish } from './spacers/spacerWish.ts';

/** One kind of drawer, or of box, sized and set out. Lengths in mm. */
export interface Drawer {
  readonly spec: DrawerSpec;
  readonly sizes: Sizes;
  readonly boards: DrawerParts;
  /** The corners A and B, or A alone; the reference edge is the sides' lower edge. */
  readonly front: Joint;
  /** The corners C and D, or D alone; the reference edge is the back's lower edge, `sizes.backFrom` above the sides'. A box's are its front ones where both boards are equally thick. */
  readonly back: Joint;
  /** The corners B and C where the right side is not as the left one; else they mirror A and D. */
  readonly right?: { readonly front: Joint; readonly back: Joint };
  /**
   * What is made of it where boards came out other than planned: those of its equal drawers that are alike together, in the order
   * of the first of each. Absent where all are as planned.
   */
  readonly made?: readonly Drawer[];
  /** Every number of tails that hides the groove at the front; empty where the tails were listed. */
  readonly choices: readonly HidingChoice[];
  /** Advice on this drawer, places in its entry; what its order of work says is not repeated here. */
  readonly advice: readonly Complaint[];
}

/** What makes a set of drawers look alike. */
export interface Family {
  /** The tail width that all drawers are matched to, in mm. */
  readonly target: number;
  /** The set's pin: the one that most of its drawers have, in mm. */
  readonly pin: number;
  /** The mean tip width at each drawer's front corners as they are made, in mm. */
  readonly tips: readonly number[];
  /** The widest of these by the narrowest. */
  readonly spread: number;
}

/** A set of drawers that look alike, and what boxes there are beside them. */
export interface DrawerSet {
  readonly drawers: readonly Drawer[];
  /** Each by itself: they take no part in the drawers' look. Absent where there are none. */
  readonly boxes?: readonly Drawer[];
  /** Absent where there are no drawers. */
  readonly family?: Family;
  /** What was asked of its tails and spacers; absent without fingers. */
  readonly asked?: { readonly target?: number; readonly spacers: SpacerWish };
  /** All advice on the set, that on its joints included, each with its place from the plan's top: `['drawers', 0, 'joint', 'slope']`. */
  readonly advice: readonly Complaint[];
}

/** All that is made of a set: its drawers, then its boxes. */
export const drawersAndBoxes = ({
  drawers,
  boxes = [],
}: Pick<DrawerSet, 'drawers' | 'boxes'>): readonly Drawer[] => [...drawers, ...boxes];

/** What is made of a set: of drawers whose boards came out other than planned, each that differs by itself. */
export const madeOf = (set: Pick<DrawerSet, 'drawers' | 'boxes'>): Drawer[] =>
  drawersAndBoxes(set).flatMap((each) => each.made ?? [each]);
