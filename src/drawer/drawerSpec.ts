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

/** The kind of a drawer's front corners and of a box's corners unless given, and that of all a drawer's back corners (common practice). */
export const USUAL_FRONT: JointKind = 'lapped';
export const BACK = 'through' satisfies JointKind;
export const USUAL_BOX: JointKind = BACK;

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

/** The groove for the bottom, on the front's and the sides' inside faces; or a box's rebate for it. */
export interface Groove {
  /** From the reference edge to the groove's lower edge. */
  readonly offset: number;
  readonly width: number;
  readonly depth: number;
  /** How far from the sides' front ends the groove in them begins; in a box, from both ends of its sides, or a rebate from both ends of front and back. Absent where it runs through. */
  readonly stopped?: number;
  /** Only of a box: its bottom lies in a rebate along the lower edges, as high as it is thick, and not in a groove. */
  readonly rebate?: true;
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
  /** Space left at each side, in the groove; in a box at front and back too. */
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

/** What a box has that a drawer has not. */
export interface BoxSpec {
  /** Its lid, where that is sawn off when the box is glued up. */
  readonly lid?: SawnLid;
  /** Whether it is itself a lid made apart: upside down, its reference edge above, its bottom the lid's top. */
  readonly isLid?: true;
}

/** What the lid of a box is called that is made apart. */
export const lidName = (box: string): string => `${box} lid`;

/** A lid that is sawn off a box: its height, from the upper edge to the saw cut, and what the saw takes; in mm. */
export interface SawnLid {
  readonly height: number;
  readonly kerf: number;
}

/** One kind of drawer, or of box, as wished, every default of its plan filled in. Lengths in mm. */
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
        /** What is to stay free behind it for air, whatever clearance is planned there. */
        readonly vent?: number;
        /** Width, from front to back, of the rail under it; absent where it stands on none, or no cabinet is planned. */
        readonly rail?: number;
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
  /** Of a drawer's back corners; a box's are made as its front ones. */
  readonly backJoint: CornerWish;
  readonly groove: Groove;
  /** How far the back's upper edge is below the sides'; 0 in a box. */
  readonly backDrop: number;
  readonly bottom: BottomSpec;
  /** Absent where it has none. */
  readonly fittings?: FittingsWish;
  /**
   * Only of a box: its back is as wide as its front and joined as that is, and its bottom lies in grooves on all four sides.
   * Its space is its own size.
   */
  readonly box?: BoxSpec;
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
