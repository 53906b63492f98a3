import type { OpeningShape } from '../cabinet/measuredOpening.ts';
import type { CabinetOpening } from '../cabinet/openings.ts';
import type { CornerWish } from '../joint/jointSpec.ts';
import type { JointKind, KindWish } from '../joint/kinds/kinds.ts';
import type { Fingers } from '../router/fingers/fingers.ts';
import type { Cutter } from '../router/limits/cutter.ts';
import type { BottomStock } from '../wood/bottomSeason.ts';
import type { Climate } from '../wood/climate.ts';
import type { Cut, SawnWood } from '../wood/movement.ts';
import type { Hand } from './cornerLetters.ts';
import type { FittingsWish } from './fittings/fittingSpec.ts';

/** The wood that one kind of part is made of. */
export interface Stock {
  readonly thickness: number;
  readonly species?: string;
  /** How the boards were cut from the log: which way they move most. */
  readonly grain?: Cut;
}

/** The kind of a drawer's front corners unless given, and that of all its back corners (common practice). */
export const USUAL_FRONT: JointKind = 'lapped';
export const BACK = 'through' satisfies JointKind;

/** What is wished of a drawer's front corners; what is absent has the joint's own defaults. */
export type JointWish = CornerWish & KindWish;

/** The clear hole that a drawer slides into. */
export interface Opening {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
}

/** Clearances round a drawer in its opening. */
export interface Fit {
  /** On each side. */
  readonly side: number;
  readonly top: number;
  readonly behind: number;
}

/** How far a front overlaps its opening's edges. */
export interface Lip {
  /** On the left and on the right, each. */
  readonly sides: number;
  readonly top: number;
  readonly bottom: number;
}

/** The groove for the bottom, on the front's and the sides' inside faces. */
export interface Groove {
  /** From the reference edge to the groove's lower edge. */
  readonly offset: number;
  readonly width: number;
  readonly depth: number;
  /** How far from the sides' front ends the groove in them begins; absent where it runs through. */
  readonly stopped?: number;
}

/** What holds the bottom along the sides. */
export type BottomHold =
  | { readonly kind: 'groove' }
  /** Strips as high as `height` and as wide as `width`, glued inside the sides, which carry the groove instead. */
  | { readonly kind: 'slips'; readonly width: number; readonly height: number };

/** What is wished of a drawer's bottom. Lengths in mm. */
export interface BottomSpec {
  /** A panel that does not move, or solid wood with its grain running from side to side. */
  readonly kind: 'panel' | 'solid';
  /** Space left at each side, in the groove. */
  readonly slack: number;
  /** From front to back, where it came out other than planned. */
  readonly depth?: number;
  readonly hold: BottomHold;
}

/** What a drawer's parts are made of, and the climate that moves them. */
export interface Movement {
  readonly climate: Climate;
  readonly front: SawnWood;
  /** Of slips too. */
  readonly side: SawnWood;
  readonly back: SawnWood;
  readonly bottom: BottomStock;
}

/** What the left side has, and what the right. */
export type Handed<T> = Readonly<Record<Hand, T>>;

/** A side: its thickness, and its width where that is not the front's. */
export interface SideSize {
  readonly thickness: number;
  readonly height?: number;
}

/** The parts of a drawer that may come out other than planned. */
export const BUILT_PARTS = ['front', 'side', 'back', 'bottom'] as const;
export const BUILT_MEASURES = ['thickness', 'width', 'length'] as const;
export type BuiltMeasure = (typeof BUILT_MEASURES)[number];

/** A board as it came out: its finished measures in mm, as planned where they are not given. */
export type BuiltBoard = (
  | { readonly part: Exclude<(typeof BUILT_PARTS)[number], 'side'> }
  | { readonly part: 'side'; readonly hand: Hand }
) & {
  /** Which of the equal drawers it is of, from 1; only where there are several. */
  readonly index?: number;
} & { readonly [Measure in BuiltMeasure]?: number };

/** One kind of drawer, as wished, every default of its plan filled in. Lengths in mm. */
export interface DrawerSpec {
  readonly name: string;
  /** How many equal ones are made: a whole number, 1 to 1000. */
  readonly count: number;
  /** Sized to its opening, or by its outside size, lip included: the front's length and width, the depth overall. */
  readonly space:
    | {
        readonly kind: 'opening';
        readonly opening: Opening;
        readonly fit: Fit;
        /** How a measured opening lies round the box that `opening` gives. */
        readonly shape?: OpeningShape;
        /** Where each stands in a planned cabinet. */
        readonly places?: readonly CabinetOpening[];
      }
    | { readonly kind: 'size'; readonly size: Opening };
  /** Absent for an inset front. */
  readonly lip?: Lip;
  readonly stock: {
    readonly front: Stock;
    readonly side: Stock;
    readonly back: Stock;
    readonly bottom: Stock;
  };
  readonly joint: JointWish;
  readonly backJoint: CornerWish;
  readonly groove: Groove;
  /** How far the back's upper edge is below the sides'. */
  readonly backDrop: number;
  readonly bottom: BottomSpec;
  /** Absent where it has none. */
  readonly fittings?: FittingsWish;
  /** What its corners are cut with, where that is not by hand. */
  readonly cutter?: Cutter;
  /** What guides the cutter, where that moves on a bar; only beside a cutter. */
  readonly fingers?: Fingers;
  /** Absent where no climate is given: then nothing is known of how the wood will move. Sizes are those on the day of making. */
  readonly movement?: Movement;
  /** Boards that came out other than planned, or were measured; in their order in the plan. */
  readonly asBuilt?: readonly BuiltBoard[];
  /** Where its boards are as they came out; absent for a drawer as planned. */
  readonly made?: MadeOf;
}

/** Drawers whose boards are as they came out. */
export interface MadeOf {
  /** The name that the plan gives them. */
  readonly name: string;
  /** Which of the equal drawers they are, from 1. */
  readonly copies: readonly number[];
  /** What came out: `boards[i]` is entry `entries[i]` of the plan's list. */
  readonly boards: readonly BuiltBoard[];
  readonly entries: readonly number[];
  readonly sides: Handed<SideSize>;
  /** How much shorter the back is than the drawer is wide in front, in mm. */
  readonly taper: number;
}
