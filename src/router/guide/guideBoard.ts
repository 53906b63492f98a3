import type { Path } from '../../drawing/drawing.ts';
import type { Outline } from '../../drawing/outline.ts';
import type { Interval, Joint } from '../../joint/joint.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON, roundUp } from '../../units/epsilon.ts';
import { atLeast, mm, say, soldAtMost } from '../../units/phrase.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import { checkBush } from '../limits/checkBush.ts';
import type { Cutter } from '../limits/cutter.ts';
import { BUSHES } from '../limits/soldSizes.ts';
import type { RouterCut } from '../passes/routerCut.ts';
import type { StraightPass } from '../passes/straightPasses.ts';
import { type Slot, slotOutline, wallAt } from './slot.ts';

/**
 * A guide for one of the two boards, to be made of sheet material. A guide bush on the router runs in its slots. First
 * coordinate mm from the fence's face, against which the work is laid, growing towards the slots' mouths; second mm from
 * the reference edge. Each board of a corner has its own guide.
 */
export interface GuideBoard {
  readonly board: 'tail' | 'pin';
  /** Upright with its end under the guide and a face against the fence, or flat with its inside face under the guide and its end against the fence. */
  readonly lies: 'upright' | 'flat';
  readonly outline: Outline;
  /** The middle of each slot, and for sloped slots the middle of each wall's run. */
  readonly centreLines: readonly Path[];
  /** Where the fence lies under the guide, and where the part of the work that is cut does. */
  readonly fence: Interval;
  readonly work: Interval;
  /** The work's width, along the second coordinate from 0. */
  readonly width: number;
  /** Outside diameter of the guide bush. */
  readonly bush: number;
  /** What cuts through this guide: the dovetail cutter or the straight one. */
  readonly cutter: {
    readonly kind: 'dovetail' | 'straight';
    readonly diameter: number;
    readonly depth: number;
  };
  /** Half spaces of the tail board that it has no slot for: they are cut by hand. */
  readonly byHand: readonly ('lower' | 'upper')[];
  /** Solid from front to back over these, measured from the reference edge: the guide's ends and its fingers. */
  readonly fingers: readonly Interval[];
}

/**
 * Least and greatest thickness of the sheet material, in mm, by the maker's unit: stiff enough to stay flat, and the
 * cutter reaches through it (common practice). A bush's collar longer than this would meet the work.
 */
export const SHEET: Readonly<Record<Unit, Interval>> = {
  mm: [6, 12],
  in: [MM_PER_INCH / 4, MM_PER_INCH / 2],
};

/** The narrowest finger that a bush may bear on, in mm (common practice for 6 to 12 mm sheet). */
const LEAST_FINGER = 3;

/** How far the cutter's centre runs beyond the work's far face, in mm, so that both sides are cut right through. */
const OVERRUN = 2;

/** The bush enters a slot so far before the cutter meets the work, in mm. */
const LEAD = 3;

/** Width of the fence's batten, in mm. */
const FENCE = 40;

/** Sheet left behind the slots, to clamp and to rest the router on, and beyond the outermost slots; in mm. */
const SPINE = 50;
const LAND = 30;

/** Breadth of the strip along the guide's back, behind the fence, that carries its lettering; in mm. */
export const STRIP = 21;

/**
 * A guide for the passes of one board.
 * @param bush outside diameter of the guide bush: at least the cutter's
 * @param key what the bush is given by
 * @param leastBush the least one to try in its place
 * @returns the guide, or why there is none; the place is that key
 */
export const guideBoard = (
  joint: Joint,
  cutter: Cutter,
  cut: RouterCut,
  board: 'tail' | 'pin',
  bush: number,
  key: 'bush' | 'pinBush' = 'bush',
  leastBush = 0,
): Result<GuideBoard> => {
  const plan = board === 'tail' ? tailPlan(joint, cutter, cut) : pinPlan(joint, cutter, cut);
  const { diameter } = plan.cutter;
  const tight = checkBush(key, bush, plan.cutter.kind, diameter);
  if (tight.length > 0) return refuse(...tight);
  const radius = bush / 2;
  const { slots, mouth, fence, work } = plan;
  const walls = slots.map((slot) => span(slot, radius, mouth));
  const narrow = checkFingers(key, board, bush, Math.max(diameter, leastBush), walls);
  if (narrow.length > 0) return refuse(...narrow);
  const ends = slots.map(({ lower }) => lower.end[0]);
  const back = Math.min(Math.min(...ends) - radius - SPINE, fence[0] - STRIP);
  const from = Math.min(0, walls[0]?.[0] ?? 0) - LAND;
  const to = Math.max(joint.width, walls.at(-1)?.[1] ?? 0) + LAND;
  return accept({
    board,
    lies: plan.lies,
    outline: [
      { at: [back, from] },
      { at: [mouth, from] },
      ...slots.flatMap((slot) => slotOutline(slot, radius, mouth)),
      { at: [mouth, to] },
      { at: [back, to] },
    ],
    centreLines: slots.flatMap((slot) => centreLines(slot, radius, mouth)),
    fence,
    work,
    width: joint.width,
    bush,
    cutter: plan.cutter,
    byHand: board === 'tail' ? byHand(cut) : [],
    fingers: [from, ...walls.flat(), to].flatMap((start, i, edges): Interval[] =>
      i % 2 === 0 ? [[start, edges[i + 1] ?? start]] : [],
    ),
  });
};

/** Which half spaces of the tail board are cut by hand. */
export const byHand = ({ passes }: RouterCut): ('lower' | 'upper')[] => [
  ...(passes[0]?.length === 0 ? (['lower'] as const) : []),
  ...(passes.at(-1)?.length === 0 ? (['upper'] as const) : []),
];

/** A guide without what its bush determines. */
interface GuidePlan {
  readonly lies: GuideBoard['lies'];
  readonly slots: readonly Slot[];
  readonly mouth: number;
  readonly fence: Interval;
  readonly work: Interval;
  readonly cutter: GuideBoard['cutter'];
}

/** The fence is behind the work, which is cut from face to face. */
const tailPlan = ({ tailBoard, depth }: Joint, { diameter }: Cutter, { passes }: RouterCut): GuidePlan => ({
  lies: 'upright',
  slots: passes.filter((centres) => centres.length > 0).map((centres) => straightSlot(centres, -OVERRUN)),
  mouth: tailBoard.thickness + diameter / 2 + LEAD,
  fence: [-FENCE, 0],
  work: [0, tailBoard.thickness],
  cutter: { kind: 'dovetail', diameter, depth },
});

const pinPlan = ({ pinBoard, depth }: Joint, { diameter }: Cutter, { pinCut }: RouterCut): GuidePlan => {
  if (pinCut.kind === 'round') {
    // The work lies flat, its end against the back of the fence: the cutter comes through the fence and stops in the work.
    const { stop, length } = pinCut.socket;
    return {
      lies: 'flat',
      slots: pinCut.passes.map((centres) => straightSlot(centres, -stop)),
      mouth: FENCE,
      fence: [0, FENCE],
      work: [-length, 0],
      cutter: { kind: 'dovetail', diameter, depth },
    };
  }
  const { thickness } = pinBoard;
  return {
    lies: 'upright',
    slots: pinCut.passes.map((passes) => slopedSlot(passes, thickness)),
    mouth: thickness + pinCut.diameter / 2 + LEAD,
    fence: [-FENCE, 0],
    work: [0, thickness],
    cutter: { kind: 'straight', diameter: pinCut.diameter, depth: pinCut.depth },
  };
};

const straightSlot = (centres: readonly number[], end: number): Slot => ({
  lower: { end: [end, centres[0] ?? 0], lean: 0 },
  upper: { end: [end, centres.at(-1) ?? 0], lean: 0 },
});

/** The inside face lies at the fence; the outermost passes close in on each other behind it, and end where they meet. */
const slopedSlot = (passes: readonly StraightPass[], thickness: number): Slot => {
  const first = passes[0] ?? { inside: 0, outside: 0 };
  const last = passes.at(-1) ?? first;
  const lean = (last.outside - last.inside) / thickness;
  const end = -Math.min(OVERRUN, (last.inside - first.inside) / (2 * lean));
  return {
    lower: { end: [end, first.inside - lean * end], lean: -lean },
    upper: { end: [end, last.inside + lean * end], lean },
  };
};

/** From wall to wall where a slot is widest: at its mouth or at its closed end. */
const span = ({ lower, upper }: Slot, radius: number, mouth: number): Interval => [
  Math.min(wallAt(lower, -1, radius, mouth), lower.end[1] - radius),
  Math.max(wallAt(upper, 1, radius, mouth), upper.end[1] + radius),
];

const centreLines = ({ lower, upper }: Slot, radius: number, mouth: number): Path[] => {
  const [x] = lower.end;
  const middle = (lower.end[1] + upper.end[1]) / 2;
  const line = (lean: number, at: number): Path => ({
    points: [
      [x - radius - LEAD, at - lean * (radius + LEAD)],
      [mouth + LEAD, at + lean * (mouth + LEAD - x)],
    ],
  });
  return lower.lean === 0 && upper.lean === 0
    ? [line(0, middle)]
    : [line(0, middle), line(lower.lean, lower.end[1]), line(upper.lean, upper.end[1])];
};

/** Whether a bush of this range can be told in inches too: one that is sold, or one at a mark of any rule. */
const canTry = (least: number, most: number): boolean =>
  most - least >= MM_PER_INCH / 16 ||
  BUSHES.in.some((size) => size >= least - EPSILON && size <= most + EPSILON);

const checkFingers = (
  key: 'bush' | 'pinBush',
  board: GuideBoard['board'],
  bush: number,
  least: number,
  walls: readonly Interval[],
): Complaint[] => {
  const narrowest = Math.min(...walls.slice(1).map(([from], i) => from - (walls[i]?.[1] ?? from)));
  if (narrowest >= LEAST_FINGER - EPSILON) return [];
  const lacking = roundUp(LEAST_FINGER - narrowest, 10);
  return [
    {
      at: [key],
      says: say`a guide bush of ${mm(bush)} leaves a finger of ${mm(Math.max(0, narrowest))} between two slots for the ${board}s; it must be ${atLeast(LEAST_FINGER)} or more`,
      ...(canTry(least, bush - lacking) && {
        hint: say`${soldAtMost(bush - lacking, BUSHES, least)}`,
      }),
      remedy: say`make the ${board}s wider by ${mm(lacking)}, or take a cutter of smaller diameter`,
    },
  ];
};
