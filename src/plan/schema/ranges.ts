import {
  BOTTOM_THICKNESS_RANGE,
  CLEARANCE_RANGE,
  COUNT_RANGE,
  GROOVE_RANGE,
  LIP_RANGE,
  SPACE_RANGE,
  SPACERS_RANGE,
  WITHIN_RANGE,
} from '../../drawer/drawerLimits.ts';
import { CLOSER_RANGE, CLOSER_TAILS_RANGE } from '../../joint/closerSpacing.ts';
import {
  CHISEL_RANGE,
  LEAST_BASE,
  LEAST_LAP,
  LEAST_PIN,
  RATIO_RANGE,
  THICKNESS_RANGE,
  WIDTH_RANGE,
} from '../../joint/jointLimits.ts';
import { BAR_RANGE, PAIRS_RANGE, TOGETHER_RANGE } from '../../router/fingers/fingers.ts';
import { DIAMETER_RANGE } from '../../router/limits/cutter.ts';
import { EDGE_RANGE, ENDS_RANGE, FACE_RANGE, KEEP_RANGE, KERF_RANGE } from '../../stock/usualSawing.ts';

/** The ranges of a plan's values, in mm, as far as they depend on no other value. */
export const WIDTH = WIDTH_RANGE;
export const THICKNESS = THICKNESS_RANGE;
export const BOTTOM_THICKNESS = BOTTOM_THICKNESS_RANGE;
/** Of any part. */
export const BUILT_THICKNESS = {
  least: Math.min(THICKNESS_RANGE.least, BOTTOM_THICKNESS_RANGE.least),
  most: Math.max(THICKNESS_RANGE.most, BOTTOM_THICKNESS_RANGE.most),
};
export const SPACE = SPACE_RANGE;
/** Across an opening, which is at most as wide and as high as `SPACE` lets it be. */
export const DIAGONAL = { least: SPACE_RANGE.least, most: 2 * SPACE_RANGE.most };
export const CLEARANCE = CLEARANCE_RANGE;
export const GROOVE = GROOVE_RANGE;
export const LIP = LIP_RANGE;
export const CHISEL = CHISEL_RANGE;
export const PIN = { least: LEAST_PIN, most: WIDTH_RANGE.most };
export const LAP = { least: LEAST_LAP, most: THICKNESS_RANGE.most };
/** A tail at its tip; how wide it must be for its base to be cut, its layout says. */
export const TAIL = { least: LEAST_BASE, most: WIDTH_RANGE.most };
/** A dovetail cutter at its end; a straight cutter is as thick as may be. */
export const CUTTER = DIAMETER_RANGE;
/** Of a cutter or a bush, as far as it can be judged by itself. */
export const TOOL = { least: 0.5, most: 200 };
/** A pair of fingers, how many there are, and the bar that carries them. */
export const TOGETHER = TOGETHER_RANGE;
export const PAIRS = PAIRS_RANGE;
export const BAR = BAR_RANGE;
/** From each tail to its neighbour. */
export const RATIO = RATIO_RANGE;
export const CLOSER = CLOSER_RANGE;
export const CLOSER_TAILS = CLOSER_TAILS_RANGE;
/** A rail or divider; how much higher a row is than the one above, and heights over each other. */
export const BETWEEN = { least: 0, most: 500 };
/** A rail from front to back, a runner, and a guide's height. */
export const FRAME = { least: 3, most: 1000 };
/** Into wood whose thickness is not known: the cabinet's. */
export const TENON = { least: 0, most: 60 };
export const STEP = { least: -1000, most: 1000 };
export const PROPORTION = { least: 0.1, most: 20 };
/** Holes to drill, and what is fixed over them or let in. */
export const HOLE = { least: 1, most: 60 };
export const FITTING = { least: 1, most: 1000 };
/** How far above the middle of a front its pulls are, and how far from its ends, as shares of it too. */
export const ABOVE = { least: -2500, most: 2500 };
export const ABOVE_SHARE = { least: -0.45, most: 0.45 };
export const FROM_ENDS = { least: 0.02, most: 0.48 };
/** How many of them a drawer has. */
export const PULLS = { least: 0, most: 2 };
export const LOCKS = { least: 0, most: 1 };
/** Equal drawers. */
export const COUNT = COUNT_RANGE;
/** How many different spacers a set may need, and how far those may differ that are told as one. */
export const SPACERS = SPACERS_RANGE;
export const WITHIN = WITHIN_RANGE;
/** How many of these a board has room for, its layout says. */
export const TAILS = { least: 1, most: 10_000 };
/** What is lost between boards and parts. */
export const KERF = KERF_RANGE;
export const EDGE = EDGE_RANGE;
export const ENDS = ENDS_RANGE;
export const FACE = FACE_RANGE;
export const KEEP = KEEP_RANGE;
/** Boards as they are bought; their number is the most that are set out together. */
export const BOARD_LENGTH = { least: 20, most: 20_000 };
export const BOARD_WIDTH = { least: 10, most: 5000 };
export const BOARD_THICKNESS = { least: 1, most: 300 };
export const BOARDS = { least: 1, most: 500 };
/** A place on a board; what hangs over its edge may lie below 0. */
export const PLACE = { least: -20_000, most: 20_000 };
/** The extent of a defect. */
export const DEFECT = { least: 0.1, most: 20_000 };
/** Numbers that an earlier answer gave to what it cut. */
export const SECTION = { least: 0, most: 10_000 };
export const BLANK = { least: 1, most: 10_000 };
/** Second tries of each size. */
export const SPARE = { least: 0, most: 10 };
