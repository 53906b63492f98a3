/** What can be cut and holds, in mm: beyond these a layout is refused. Common practice, but for the ranges of stock. */
export const LEAST_BASE = 3;
export const LEAST_PIN = 1;
export const LEAST_LAP = 1;
/** The least width at an edge that is mitred right through. */
export const LEAST_SHOULDER = 1;
/** The least depth of a lapped socket: a lap is at most the pin board's thickness less this. */
export const LEAST_SOCKET = 3;
export const WIDTH_RANGE = { least: 5, most: 5000 } as const;
export const THICKNESS_RANGE = { least: 2, most: 200 } as const;
export const RATIO_RANGE = { least: 0.5, most: 2 } as const;
export const CHISEL_RANGE = { least: 0.5, most: 60 } as const;

/** Beyond these a layout is drawn, with advice. */
export const STEEP_RUN = 5;
export const GENTLE_RUN = 9;
export const WIDE_TAIL_IN_PINS = 6;

/** Usual tail width, in pins: the middle of the customary two to four (common practice). */
export const TARGET_TAIL_IN_PINS = 3;
