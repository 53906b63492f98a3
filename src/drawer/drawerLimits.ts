import { halfMark, type Notation } from '../units/notation.ts';
import { MM_PER_INCH, type Unit } from '../units/unit.ts';

/** What can be made and used, in mm: beyond these a drawer is refused. Common practice, but for the ranges of sizes. */
export const SPACE_RANGE = { least: 10, most: 5000 } as const;
export const CLEARANCE_RANGE = { least: 0, most: 1000 } as const;
export const LIP_RANGE = { least: 0, most: 100 } as const;
export const BOTTOM_THICKNESS_RANGE = { least: 1, most: 60 } as const;
export const GROOVE_RANGE = { least: 1, most: 100 } as const;
/** How many equal drawers are made. */
export const COUNT_RANGE = { least: 1, most: 1000 } as const;
/** The least clear width and depth inside a drawer. */
export const LEAST_INSIDE = 20;
/** How much narrower a drawer may be behind than in front, where its back came out short (common practice: no wider, so that it does not bind). */
export const TAPER_RANGE = { least: 0, most: 2 } as const;
/** The least wood behind a groove, or above it. */
export const LEAST_WALL = 2;
/** The least of the bottom that the groove must hold at each side. */
export const LEAST_HELD = 1;
/** Least distance between a groove's edge and its tail's side, so that nothing shows. */
export const GROOVE_SPARE = 1;

/**
 * Tolerance of that distance where a layout is typed back as it was shown: a half pin and a tail, each to half a
 * mark of an inch rule; in mm, to half a thousandth of an inch.
 */
export const spareRounded = (notation: Notation): number =>
  notation === 'mm' ? 0.03 : Math.min(GROOVE_SPARE, Math.max(0.03, 2 * halfMark(notation)));

/** Length cut off with a trial joint beyond the joint itself. */
export const TRIAL_SPARE = 3;
/** Widest saw kerf where a trial joint is cut off (common practice). */
export const SAW_CUT = 1;
/** Extra length of a solid bottom and of a slip at each end, trimmed in fitting (common practice). */
export const TRIM_SPARE: Readonly<Record<Unit, number>> = { mm: 5, in: (MM_PER_INCH * 3) / 16 };

/** Beyond these a drawer is made, with advice. */
export const LOOSE_BOTTOM = 0.5;
export const FAMILY_RATIO = 1.5;

/** How many different spacers a set of drawers may need, and how far those may differ that are told as one. */
export const SPACERS_RANGE = { least: 0, most: 6 } as const;
export const WITHIN_RANGE = { least: 0, most: 10 } as const;
/** The most drawers for which layouts are sought that need few spacers. */
export const MOST_SOUGHT = 16;
/** Spacers that differ by no more are told as one, unless given. */
export const USUAL_WITHIN = 0.1;

/** Range of a set's tail width, in pins (common practice). */
export const TARGET_RANGE_IN_PINS = { least: 2, most: 4 } as const;
