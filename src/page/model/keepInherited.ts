import type { Drawer } from '../../drawer/drawer.ts';
import { backJointSpec, sizesOf, wholeCorner } from '../../drawer/drawerSizes.ts';
import type { DrawerSpec } from '../../drawer/drawerSpec.ts';
import { type ResolvedSpec, withDefaults } from '../../joint/defaults.ts';
import { type Joint, shoulderWidth } from '../../joint/joint.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { hasLength, OWN_LENGTHS } from '../../joint/kinds/kinds.ts';
import type { Project, SingleCorner } from '../../project/project.ts';
import type { Cutter } from '../../router/limits/cutter.ts';
import { withCutter } from '../../router/limits/fitToCutter.ts';
import type { Place } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import type { Unit } from '../../units/unit.ts';
import type { Edit, PlanValue } from '../text/edit.ts';
import { boxesIn } from './editedCorner.ts';
import { planNumber, planSlope } from './planNumber.ts';
import { isWritten, type WrittenPlan } from './writtenPlan.ts';

/** A wish as it is laid out: with its cutter's slope and pins, and every default. */
export const resolvedWish = (wish: JointSpec, cutter: Cutter | undefined): ResolvedSpec =>
  withDefaults(cutter === undefined ? wish : withCutter(wish, cutter));

/** The keys of `joint` that a back corner inherits and the page changes. */
export type BackKey = 'slope' | 'pin' | 'halfPin';

const inheritedValue = ({ slope, pin, halfPin }: ResolvedSpec, key: BackKey, unit: Unit): PlanValue => {
  switch (key) {
    case 'slope':
      return planSlope(slope);
    case 'pin':
      return planNumber(pin, unit);
    case 'halfPin': {
      const [lower, upper] = [planNumber(halfPin.lower, unit), planNumber(halfPin.upper, unit)];
      return lower === upper ? lower : [lower, upper];
    }
  }
};

/** What a drawer's back corners have for a key, as a plan writes it. */
export const backValue = (spec: DrawerSpec, key: BackKey, unit: Unit): PlanValue =>
  inheritedValue(resolvedWish(backJointSpec(spec, sizesOf(spec).backHeight), spec.cutter), key, unit);

/** The edits that write down what back corners inherit from the front of some drawers, before that is changed. */
export const keepBacks = (
  specs: readonly DrawerSpec[],
  plan: WrittenPlan,
  drawers: readonly number[],
  key: BackKey,
  unit: Unit,
): Edit[] => {
  if (isWritten(plan, ['back', 'joint', key])) return [];
  const kept = drawers.flatMap((i): { readonly i: number; readonly value: PlanValue }[] => {
    const spec = specs[i];
    return spec === undefined || isWritten(plan, ['drawers', i, 'back', 'joint', key])
      ? []
      : [{ i, value: backValue(spec, key, unit) }];
  });
  // What most plans have, one value for all, is written once.
  const common = drawers.length === specs.length && specs.length > 1 ? kept[0]?.value : undefined;
  return [
    ...(common === undefined ? [] : [{ at: ['back', 'joint', key], value: common }]),
    ...kept
      .filter(({ value }) => String(value) !== String(common))
      .map(({ i, value }) => ({ at: ['drawers', i, 'back', 'joint', key], value })),
  ];
};

/** The edits that write down what single corners inherit from the plan's `joint`, before that is changed. */
export const keepSingleCorners = (
  { joints, cutting, units }: Project,
  plan: WrittenPlan,
  key: string,
): Edit[] =>
  joints.flatMap((corner, i) => {
    const at = ['joints', i, key];
    const value = isWritten(plan, at) ? undefined : singleValue(corner, cutting?.cutter, key, unitOf(units));
    return value === undefined ? [] : [{ at, value }];
  });

/**
 * The edits that write down what boxes take from what the plan gives for all drawers at a place, before that is changed.
 * Undefined where one has two values there, which it cannot be given: a lap by the thickness of each end.
 */
export const keepBoxes = ({ set, units }: Project, plan: WrittenPlan, place: Place): Edit[] | undefined => {
  const edits = boxesIn(set).map((box, i): Edit[] | undefined => {
    // In a rebate the bottom is as thick as the groove would be wide.
    const inBox =
      box.spec.groove.rebate && place.join('.') === 'groove.width' ? ['stock', 'bottom', 'thickness'] : place;
    const at = ['boxes', i, ...inBox];
    if (isWritten(plan, at)) return [];
    const values = [...new Set(boxValues(box, inBox, unitOf(units)))];
    return values.length > 1 ? undefined : values.map((value) => ({ at, value }));
  });
  return edits.some((each) => each === undefined) ? undefined : edits.flatMap((each) => each ?? []);
};

/** What a box has at a place that it may take from the plan, at one end or at both; none of what it only follows. */
const boxValues = ({ spec, front, back }: Drawer, [group, key, inner]: Place, unit: Unit): PlanValue[] => {
  const { stock, groove, bottom } = spec;
  switch (group) {
    case 'joint': {
      if (isBackKey(key)) return [inheritedValue(wholeCorner(spec), key, unit)];
      const lengths = [front, back].map((joint) => ownLength(joint, String(key), unit));
      return lengths.flatMap((length) => length ?? []);
    }
    case 'groove':
      if (key === 'depth') return [planNumber(groove.depth, unit)];
      return (key === 'offset' || key === 'width') && !groove.rebate ? [planNumber(groove[key], unit)] : [];
    case 'stock':
      return (key === 'front' || key === 'side' || key === 'bottom') && inner === 'thickness'
        ? [planNumber(stock[key].thickness, unit)]
        : [];
    case 'bottom':
      return key === 'kind' ? [bottom.kind] : key === 'slack' ? [planNumber(bottom.slack, unit)] : [];
    default:
      return [];
  }
};

/**
 * Whether single corners follow what the plan gives for all drawers at a place: what is wished of a corner beside its own
 * sizes, which they keep.
 */
export const reachesSingleCorners = ([group, key]: Place): boolean =>
  group === 'joint' && ['shoulder', 'mitre', 'proud', 'chisel'].includes(String(key));

/** Whether boxes do: what single corners follow, and the wood of all but the back. */
export const reachesBoxes = (at: Place): boolean =>
  reachesSingleCorners(at) || (at[0] === 'stock' && at[1] !== 'back' && at[2] === 'species');

const singleValue = (
  { spec, joint }: SingleCorner,
  cutter: Cutter | undefined,
  key: string,
  unit: Unit,
): PlanValue | undefined => {
  if (isBackKey(key)) return inheritedValue(resolvedWish(spec, cutter), key, unit);
  return ownLength(joint, key, unit);
};

/** A length that not every corner has: of a mitred shoulder, or of its kind. */
const ownLength = (joint: Joint, key: string, unit: Unit): PlanValue | undefined => {
  const own = OWN_LENGTHS.find((length) => length.key === key);
  const length =
    key === 'shoulderWidth'
      ? shoulderWidth(joint)
      : own !== undefined && hasLength(joint.kind, own.key)
        ? own.of(joint)
        : undefined;
  return length === undefined ? undefined : planNumber(length, unit);
};

export const isBackKey = (key: unknown): key is BackKey =>
  key === 'slope' || key === 'pin' || key === 'halfPin';
