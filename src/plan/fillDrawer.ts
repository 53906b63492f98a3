import { accept, type Complaint, type Place, type Result, refuse } from '../complaint.ts';
import type { BottomSpec, DrawerSpec, JointWish, Stock } from '../drawer/spec.ts';
import type { Cutter } from '../guided/cutter.ts';
import { say } from '../units/phrase.ts';
import { contradictions } from './contradictions.ts';
import { mergeJoint } from './mergeJoint.ts';
import type { WrittenDrawer, WrittenJoint } from './schema/plan.ts';
import { spacingOf } from './spacingOf.ts';

/** What a drawer is given where neither it nor its plan says otherwise, in mm; all of it common practice. */
const FIT = { side: 0.5, top: 1, behind: 10 };
const GROOVE = { offset: 10, width: 5 };
const BACK_DROP = 4;
const SLACK = 0.5;
const INSET = { sides: 0, top: 0, bottom: 0 };

/** Half the side's thickness, down to the half millimetre: what a groove may take of a board. */
const defaultGrooveDepth = (side: number): number => Math.floor(side) / 2;

/** The keys that a plan gives for all its drawers. */
type DrawerDefaults = Pick<WrittenDrawer, 'stock' | 'joint' | 'groove' | 'fit' | 'back' | 'bottom' | 'front'>;

/** A drawer as it is to be made: its own keys, else the plan's, else the defaults. */
export const fillDrawer = (
  plan: DrawerDefaults,
  drawer: WrittenDrawer,
  at: Place,
  cutter: Cutter | undefined,
): Result<DrawerSpec> => {
  const front = { ...plan.stock?.front, ...drawer.stock?.front };
  const side = { ...plan.stock?.side, ...drawer.stock?.side };
  const back = { ...side, ...plan.stock?.back, ...drawer.stock?.back };
  const joint = mergeJoint(plan.joint ?? {}, drawer.joint ?? {});
  const backJoint = mergeJoint(plan.back?.joint ?? {}, drawer.back?.joint ?? {});
  const space = spaceOf(plan, drawer, at);
  const complaints = [
    ...(space.ok ? [] : space.complaints),
    ...(isStock(front) ? [] : [noThickness('front')]),
    ...(isStock(side) ? [] : [noThickness('side')]),
    ...contradictions(joint, [...at, 'joint']),
    ...contradictions(backJoint, [...at, 'back', 'joint']),
  ];
  if (!space.ok || !isStock(front) || !isStock(side) || !isStock(back) || complaints.length > 0)
    return refuse(...complaints);
  const groove = { ...GROOVE, depth: defaultGrooveDepth(side.thickness), ...plan.groove, ...drawer.groove };
  const lip = drawer.front?.lip ?? plan.front?.lip ?? INSET;
  return accept({
    name: drawer.name,
    count: drawer.count ?? 1,
    space: space.value,
    ...(lip.sides + lip.top + lip.bottom === 0 ? {} : { lip }),
    stock: {
      front,
      side,
      back,
      bottom: { thickness: groove.width, ...plan.stock?.bottom, ...drawer.stock?.bottom },
    },
    joint: wishOf(joint),
    backJoint: backWishOf(joint, backJoint),
    groove,
    backDrop: drawer.back?.drop ?? plan.back?.drop ?? BACK_DROP,
    bottom: bottomOf({ ...plan.bottom, ...drawer.bottom }),
    ...(cutter && { cutter }),
  });
};

const isStock = (board: Partial<Stock>): board is Stock => board.thickness !== undefined;

/** Said of the plan, not of each drawer: that is where one thickness serves them all. */
const noThickness = (part: 'front' | 'side'): Complaint => ({
  at: ['stock', part, 'thickness'],
  says: say`the thickness of the ${part}s is missing; without it no drawer can be sized`,
  hint: say`stock: {${part}: {thickness: …}}`,
});

const spaceOf = (plan: DrawerDefaults, drawer: WrittenDrawer, at: Place): Result<DrawerSpec['space']> => {
  const { opening, size } = drawer;
  if (opening !== undefined && size !== undefined)
    return refuse({
      at: [...at, 'size'],
      says: say`the opening is given too, and the size follows from it`,
      hint: say`leaving out one of them`,
    });
  if (opening !== undefined)
    return accept({ kind: 'opening', opening, fit: { ...FIT, ...plan.fit, ...drawer.fit } });
  if (size === undefined)
    return refuse({
      at: [...at, 'opening'],
      says: say`this is missing; a drawer is sized to its opening, or given its own size`,
      hint: say`opening: {width: …, height: …, depth: …}`,
    });
  if (drawer.fit !== undefined)
    return refuse({
      at: [...at, 'fit'],
      says: say`a drawer that is given its own size has no opening to fit`,
      hint: say`opening in place of size, or leaving the fit out`,
    });
  return accept({ kind: 'size', size });
};

const wishOf = (joint: WrittenJoint): JointWish => ({
  kind: joint.kind ?? 'lapped',
  ...(joint.lap === undefined ? {} : { lap: joint.lap }),
  ...sizesOf(joint),
  spacing: spacingOf(joint),
});

/** The back is cut as the front is, but for the number and the widths of its tails: it is not as high. */
const backWishOf = (front: WrittenJoint, back: WrittenJoint): DrawerSpec['backJoint'] => ({
  ...sizesOf(front),
  ...sizesOf(back),
  spacing: spacingOf(back),
});

const sizesOf = ({ kind, lap, tails, pins, graded, ...sizes }: WrittenJoint) => sizes;

const bottomOf = ({
  kind = 'panel',
  slack = SLACK,
  slips,
}: NonNullable<WrittenDrawer['bottom']>): BottomSpec => ({
  kind,
  slack,
  hold: slips === undefined || slips === 'none' ? { kind: 'groove' } : { kind: 'slips', ...slips },
});
