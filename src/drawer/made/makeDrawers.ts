import { withDefaults } from '../../joint/defaults.ts';
import { type Joint, meanTail } from '../../joint/joint.ts';
import type { JointSpec } from '../../joint/jointSpec.ts';
import { withCutter } from '../../router/limits/fitToCutter.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import { adviseDrawer } from '../check/adviseDrawer.ts';
import { HANDS, type Hand } from '../cornerLetters.ts';
import { type DrawerDraft, draftDrawer } from '../draftDrawer.ts';
import type { Drawer, Family } from '../drawer.ts';
import { boardsOf } from '../drawerParts.ts';
import { backJointSpec, frontJointSpec, type Sizes, sizesOf } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { familyFronts } from '../familyFronts.ts';
import { adviseBuilt } from './adviseBuilt.ts';
import { builtAt } from './built.ts';
import { type BuiltCopies, builtCopies } from './builtCopies.ts';
import { checkBuilt } from './checkBuilt.ts';
import { heldCorner, heldFront } from './heldCorner.ts';
import { madeSpec } from './madeSpec.ts';

/**
 * What is made of a plan's equal drawers where boards came out other than planned: those that are alike together; undefined where
 * all are as planned.
 *
 * Corners keep what they were planned with, their number of tails, their pins and half pins, their laps, so that they look like
 * the rest of the set; what a thickness or a width changes follows. Each corner is set out over the narrower of its two boards. Where the
 * sides differ, each is set out as that of a drawer with two such sides.
 * @param planned the drawer as planned, whose draft is `draft`
 * @returns complaints in the drawer's entry
 */
export const makeDrawers = (
  draft: DrawerDraft,
  planned: Drawer,
  family: Family,
): Result<readonly Drawer[] | undefined> => {
  if (planned.spec.asBuilt === undefined) return accept(undefined);
  const groups = builtCopies(planned);
  if (groups.every(({ boards }) => boards.length === 0)) return accept(undefined);
  const made = groups.map((group) => makeOf(draft, planned, family, group));
  const wrong = made.flatMap((each) => (each.ok ? [] : each.complaints));
  return wrong.length > 0
    ? refuse(...onceEach(wrong))
    : accept(made.flatMap((each) => (each.ok ? [each.value] : [])));
};

const makeOf = (draft: DrawerDraft, planned: Drawer, family: Family, group: BuiltCopies): Result<Drawer> => {
  const spec = madeSpec(planned, group);
  if (group.boards.length === 0) return accept({ ...planned, spec });
  const wrong = checkBuilt(spec);
  if (wrong.length > 0) return refuse(...wrong);
  const sizes = sizesOf(spec);
  const halves = isAlike(sizes) ? (['left'] as const) : HANDS;
  const laid = halves.map((hand) => layOutHalf(draft, planned, family, halfOf(draft, planned, spec, hand)));
  const [left, right] = laid.map((half, i) =>
    half.ok ? half : refuse(...half.complaints.map((each) => ofBuilt(spec, halves[i] ?? 'left', each))),
  );
  if (left === undefined || !left.ok || (right !== undefined && !right.ok))
    return refuse(...[left, right].flatMap((half) => (half === undefined || half.ok ? [] : half.complaints)));
  return accept({
    spec: { ...spec, joint: left.value.spec.joint, backJoint: left.value.spec.backJoint },
    sizes,
    boards: boardsOf(spec, sizes),
    front: left.value.front,
    back: left.value.back,
    ...(right && { right: { front: right.value.front, back: right.value.back } }),
    choices: left.value.choices,
    advice: [
      ...adviseBuilt(planned.spec, { spec, sizes }),
      ...onceEach([...left.value.advice, ...(right?.value.advice ?? [])]),
    ],
  });
};

const isAlike = ({ wall, sideHeight }: Sizes): boolean =>
  wall.left === wall.right && sideHeight.left === sideHeight.right;

/** A drawer both of whose sides are as one of its sides is, no higher than the lower of that side and the front. */
const halfOf = (draft: DrawerDraft, planned: Drawer, made: DrawerSpec, hand: Hand): DrawerSpec => {
  const { made: built, ...spec } = made;
  const { height, sideHeight } = sizesOf(made);
  const lower = Math.max(0, height - sideHeight[hand]);
  const { space, stock } = spec;
  const thickness = built?.sides[hand].thickness ?? stock.side.thickness;
  const half: DrawerSpec = {
    ...spec,
    stock: { ...stock, side: { ...stock.side, thickness } },
    space:
      space.kind === 'size'
        ? { ...space, size: { ...space.size, height: space.size.height - lower } }
        : { ...space, fit: { ...space.fit, top: space.fit.top + lower } },
    backDrop: Math.max(0, spec.backDrop - lower),
  };
  return withHeldCorners(draft, planned, half);
};

const withHeldCorners = (
  { front: { resolved } }: DrawerDraft,
  planned: Drawer,
  half: DrawerSpec,
): DrawerSpec => {
  const { spec, sizes, front, back } = planned;
  const backPin = withDefaults(cut(half, backJointSpec(spec, sizes.backHeight))).pin;
  const joint = heldFront(spec.joint, front, resolved.pin);
  const backJoint = heldCorner(spec.backJoint, back, backPin);
  const now = sizesOf(half);
  const held: DrawerSpec = { ...half, joint, backJoint };
  return {
    ...held,
    joint: { ...joint, ...fitted(held, frontJointSpec(held, now.height), front) },
    backJoint: { ...backJoint, ...fitted(held, backJointSpec(held, now.backHeight), back) },
  };
};

const cut = ({ cutter }: DrawerSpec, wish: JointSpec): JointSpec =>
  cutter === undefined ? wish : withCutter(wish, cutter);

/**
 * What of a held corner must give way: a pin, to what the cutter takes at the depth that came out; and where the tails are listed, the
 * upper half pin, to the boards' width.
 */
const fitted = (spec: DrawerSpec, wish: JointSpec, planned: Joint): Pick<JointSpec, 'pin' | 'halfPin'> => {
  const { halfPin, spacing } = wish;
  return {
    pin: withDefaults(cut(spec, wish)).pin,
    ...(halfPin && {
      halfPin:
        spacing.kind === 'listed'
          ? { ...halfPin, upper: halfPin.upper + wish.width - planned.width }
          : halfPin,
    }),
  };
};

/** A half of a made drawer, set out as a drawer by itself. */
const layOutHalf = (
  { front: { possible, resolved } }: DrawerDraft,
  planned: Drawer,
  family: Family,
  half: DrawerSpec,
): Result<Pick<Drawer, 'spec' | 'front' | 'back' | 'choices' | 'advice'>> => {
  const draft = draftDrawer(half);
  if (!draft.ok) return draft;
  const laid = familyFronts([draft.value], family.target);
  if (laid === undefined || !('fronts' in laid))
    return refuse(...(laid ?? []).flatMap(({ complaints }) => complaints));
  const [front = planned.front] = laid.fronts;
  const { spacing } = planned.spec.joint;
  const isFree = spacing.kind !== 'listed' && spacing.tails === undefined;
  const { pin } = draft.value.front.resolved;
  const like: Family = {
    ...family,
    // A number of tails that is held, and was chosen, is no wish that breaks the family; nor is a pin that the cutter sets.
    ...(isFree && { target: meanTail(front) }),
    ...(Math.abs(pin - resolved.pin) > EPSILON && { pin }),
  };
  return accept({
    spec: half,
    front,
    back: draft.value.back,
    choices: possible,
    advice: [
      ...(like.pin === family.pin ? [] : [advisePin(pin, resolved.pin)]),
      ...adviseDrawer(asWished(draft.value, planned), front, like),
    ],
  });
};

const advisePin = (pin: number, planned: number): Complaint => ({
  at: ['joint', 'pin'],
  says: say`front corners: pins are ${mm(pin)} wide, as the cutter takes at the depth that came out, where ${mm(planned)} was planned`,
});

/** A half's draft with the half pins that its plan wishes for, which those that it has are told beside. */
const asWished = (draft: DrawerDraft, { spec: { joint } }: Drawer): DrawerDraft => {
  const { halfPin: _, ...held } = draft.spec.joint;
  const { halfPin } = joint;
  return { ...draft, spec: { ...draft.spec, joint: { ...held, ...(halfPin && { halfPin }) } } };
};

/** A complaint about a half, at the board as it came out where it is about its thickness. */
const ofBuilt = (spec: DrawerSpec, hand: Hand, complaint: Complaint): Complaint => {
  const [group, part, measure] = complaint.at;
  const boards = ['front', 'side', 'back', 'bottom'] as const;
  const named = boards.find((each) => each === part);
  const built =
    group === 'stock' && measure === 'thickness' && named ? builtAt(spec, named, hand) : undefined;
  return {
    ...complaint,
    ...(built?.board.thickness !== undefined && { at: [...built.at, 'thickness'] }),
    says: say`with its boards as they came out, ${complaint.says}`,
  };
};

const onceEach = (complaints: readonly Complaint[]): Complaint[] => [
  ...new Map(complaints.map((each) => [JSON.stringify(each), each])).values(),
];
