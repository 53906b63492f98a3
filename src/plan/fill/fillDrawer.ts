import {
  type BottomSpec,
  type BoxSpec,
  type DrawerSpec,
  type Fit,
  type JointWish,
  type Movement,
  type Stock,
  USUAL_FRONT,
} from '../../drawer/drawerSpec.ts';
import { topGap } from '../../drawer/gaps.ts';
import { depthUnderLaps } from '../../drawer/groove/depthUnderLaps.ts';
import { comesOut } from '../../drawer/groove/hidingChoices.ts';
import { latestStop } from '../../drawer/groove/latestStop.ts';
import type { CornerWish } from '../../joint/jointSpec.ts';
import { KINDS, withoutKind } from '../../joint/kinds/kinds.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../../units/complaint.ts';
import { roundDown } from '../../units/epsilon.ts';
import { nextMark } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { MM_PER_INCH, type Unit } from '../../units/unit.ts';
import { contradictions } from '../check/contradictions.ts';
import type { WrittenJoint, WrittenPlan } from '../schema/planSchema.ts';
import { GROOVE } from '../schema/ranges.ts';
import { fillBuilt } from './fillBuilt.ts';
import type { PlacedDrawer } from './fillCabinet.ts';
import { fillFittings } from './fillFittings.ts';
import { mergeJoint, spacingOf, withoutSpacing } from './fillJoint.ts';
import { fillMovement } from './fillMovement.ts';

/**
 * Defaults in mm, round in the plan's unit, where neither the drawer nor its plan gives a value; common practice, without a
 * source.
 */
const DEFAULTS = {
  mm: {
    fit: { side: 0.5, top: 1, behind: 10 },
    groove: { offset: 10, width: 5 },
    backDrop: 4,
    slack: 0.5,
  },
  in: {
    fit: { side: MM_PER_INCH / 64, top: MM_PER_INCH / 32, behind: (MM_PER_INCH * 3) / 8 },
    groove: { offset: (MM_PER_INCH * 3) / 8, width: MM_PER_INCH / 4 },
    backDrop: (MM_PER_INCH * 5) / 32,
    slack: MM_PER_INCH / 64,
  },
} as const satisfies Record<Unit, object>;
const INSET = { sides: 0, top: 0, bottom: 0 };

/** Down to the half millimetre or to 1/32 in, in mm. */
const roundedDown = (depth: number, unit: Unit): number =>
  unit === 'mm' ? roundDown(depth, 2) : nextMark(depth, 'below', 'in/32');

/** The keys that a plan gives for all its drawers. */
type DrawerDefaults = Pick<
  WrittenPlan,
  | 'stock'
  | 'joint'
  | 'groove'
  | 'fit'
  | 'back'
  | 'bottom'
  | 'front'
  | 'pulls'
  | 'locks'
  | 'stops'
  | 'climate'
  | 'woods'
>;

/** A drawer as it is written, with its places in a cabinet; or a box in a drawer's keys. */
type WrittenBody = PlacedDrawer & { readonly box?: BoxSpec; readonly isRebated?: boolean };

/** A drawer's spec from its own keys, else the plan's, else the defaults. */
export const fillDrawer = (
  plan: DrawerDefaults,
  drawer: WrittenBody,
  at: Place,
  notation: Notation,
  cutting: Pick<Cutting, 'cutter' | 'fingers'> | undefined,
): Result<DrawerSpec> => {
  const unit = unitOf(notation);
  const defaults = DEFAULTS[unit];
  const front = { ...plan.stock?.front, ...drawer.stock?.front };
  const side = { ...plan.stock?.side, ...drawer.stock?.side };
  const back = { ...(drawer.box === undefined ? side : front), ...plan.stock?.back, ...drawer.stock?.back };
  const joint = { kind: USUAL_FRONT, ...mergeJoint(plan.joint ?? {}, drawer.joint ?? {}) };
  const backJoint = mergeJoint(plan.back?.joint ?? {}, drawer.back?.joint ?? {});
  const bottom = bottomOf({ slack: defaults.slack, ...plan.bottom, ...drawer.bottom });
  const complaints = [
    ...(isStock(front) ? [] : [noThickness('front')]),
    ...(isStock(side) ? [] : [noThickness('side')]),
    ...contradictions(joint, [...at, 'joint']),
    ...contradictions(backJoint, [...at, 'back', 'joint']),
  ];
  if (!isStock(front) || !isStock(side) || !isStock(back))
    return refuse(...complaints, ...wrongOf(spaceOf(plan, drawer, at, defaults.fit, undefined)));
  // Sides that are proud are planed flush after the groove is cut.
  const wall = side.thickness - (joint.proud ?? 0);
  const carrier = bottom.hold.kind === 'slips' ? Math.min(wall, bottom.hold.width) : wall;
  const wish: JointWish = {
    notation,
    ...sizesOf(joint),
    ...spacingOf(joint),
    ...KINDS[joint.kind].wish(joint),
  };
  const { box } = drawer;
  const ends = box === undefined ? [front] : [front, back];
  const underLaps = ends.flatMap((end) => {
    const most = depthUnderLaps({ joint: wish, stock: { front: end, side } });
    return most === undefined ? [] : bottom.hold.kind === 'slips' ? [most.front] : [most.front, most.side];
  });
  const carriers = [carrier, ...(box === undefined ? [] : ends.map(({ thickness }) => thickness))];
  const board = { ...plan.stock?.bottom, ...drawer.stock?.bottom };
  const { stopped, ...grooved } = {
    ...defaults.groove,
    // A thicker bottom has its edges thinned; a thinner one would rattle.
    width: Math.min(defaults.groove.width, board.thickness ?? defaults.groove.width),
    // Half the thinnest board that carries it (common practice), or what laps leave.
    depth: roundedDown(Math.max(GROOVE.least, Math.min(Math.min(...carriers) / 2, ...underLaps)), unit),
    ...plan.groove,
    ...drawer.groove,
  };
  const below = { thickness: grooved.width, ...board };
  const stock = { front, side, back, bottom: below };
  const groove = drawer.isRebated
    ? ({ offset: 0, width: below.thickness, depth: grooved.depth, rebate: true } as const)
    : grooved;
  const movement = fillMovement(plan, stock, bottom.kind, { stock: drawer.stock, at });
  const space = spaceOf(plan, drawer, at, defaults.fit, movement.ok ? movement.value : undefined);
  const count = drawer.count ?? 1;
  const built = fillBuilt(drawer.asBuilt ?? [], count, at);
  if (!movement.ok || !space.ok || !built.ok || complaints.length > 0)
    return refuse(...complaints, ...wrongOf(movement), ...wrongOf(space), ...wrongOf(built));
  const fittings = fillFittings(plan, drawer);
  const lip = drawer.front?.lip ?? plan.front?.lip ?? INSET;
  const spec: DrawerSpec = {
    name: drawer.name,
    count,
    space: space.value,
    ...(lip.sides + lip.top + lip.bottom === 0 ? {} : { lip }),
    stock,
    joint: wish,
    backJoint: { notation, ...backWishOf(joint, backJoint) },
    groove,
    backDrop: box ? 0 : (drawer.back?.drop ?? plan.back?.drop ?? defaults.backDrop),
    bottom,
    ...(fittings && { fittings }),
    ...(box && { box }),
    ...(cutting && { cutter: cutting.cutter }),
    ...(cutting?.fingers && { fingers: cutting.fingers }),
    ...(movement.value && { movement: movement.value }),
    ...(built.value.length > 0 && { asBuilt: built.value }),
  };
  const stop = stopped ?? (box !== undefined && comesOut(spec) ? 'auto' : 'none');
  return accept(
    stop === 'none'
      ? spec
      : { ...spec, groove: { ...groove, stopped: stop === 'auto' ? latestStop(spec) : stop } },
  );
};

const wrongOf = (result: Result<unknown>): readonly Complaint[] => (result.ok ? [] : result.complaints);

const isStock = (board: Partial<Stock>): board is Stock => board.thickness !== undefined;

/** Placed in the plan, not in each drawer: one thickness there serves them all. */
const noThickness = (part: 'front' | 'side'): Complaint => ({
  at: ['stock', part, 'thickness'],
  says: say`the thickness of the ${part}s is missing; without it no drawer can be sized`,
  remedy: say`add it under stock: ${part}: {thickness: ${part === 'front' ? '20mm' : '11mm'}}`,
});

const spaceOf = (
  plan: DrawerDefaults,
  drawer: PlacedDrawer,
  at: Place,
  usual: Fit,
  movement: Movement | undefined,
): Result<DrawerSpec['space']> => {
  const { opening, size, places, vent, rail } = drawer;
  if (opening !== undefined && size !== undefined)
    return refuse({
      at: [...at, 'size'],
      says: say`the opening is given too, and the size follows from it`,
      remedy: say`remove one of them`,
    });
  if (opening !== undefined) {
    const fit = { ...usual, ...plan.fit, ...drawer.fit };
    if (fit.top === 'auto' && plan.climate === undefined)
      return refuse(noClimate(drawer.fit?.top === undefined ? [] : at));
    // Woods that are missing are complained of by themselves.
    const found = movement === undefined ? usual.top : topGap(opening.height, movement);
    const { shape, ...box } = opening;
    return accept({
      kind: 'opening',
      opening: box,
      fit: { ...fit, top: fit.top === 'auto' ? found : fit.top },
      ...(shape && { shape }),
      ...(places && { places }),
      ...(vent !== undefined && { vent }),
      ...(rail !== undefined && { rail }),
    });
  }
  if (size === undefined)
    return refuse({
      at: [...at, 'opening'],
      says: say`this is missing; a drawer is sized to its opening, or given its own size`,
      hint: say`opening: {width: 280mm, height: 76mm, depth: 420mm}`,
    });
  if (drawer.fit !== undefined)
    return refuse({
      at: [...at, 'fit'],
      says: say`a drawer that is given its own size has no opening to fit`,
      remedy: say`give opening in place of size, or remove the fit`,
    });
  return accept({ kind: 'size', size });
};

const noClimate = (at: Place): Complaint => ({
  at: [...at, 'fit', 'top'],
  says: say`the gap above a drawer can be found only where a climate is given`,
  hint: say`1mm`,
  remedy: say`give a climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}`,
});

/** The back's wishes are the front's, except the number and widths of its tails, as it is not as high, and its shoulders. */
const backWishOf = ({ shoulder, shoulderWidth, ...front }: WrittenJoint, back: WrittenJoint): CornerWish => ({
  ...sizesOf(front),
  ...sizesOf(back),
  ...spacingOf(back),
});

const sizesOf = (joint: WrittenJoint) => withoutSpacing(withoutKind(joint));

const bottomOf = ({
  kind = 'panel',
  slack,
  slips,
}: NonNullable<PlacedDrawer['bottom']> & { readonly slack: number }): BottomSpec => ({
  kind,
  slack,
  hold: slips === undefined || slips === 'none' ? { kind: 'groove' } : { kind: 'slips', ...slips },
});
