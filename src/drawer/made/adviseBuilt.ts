import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { HANDS } from '../cornerLetters.ts';
import type { Drawer } from '../drawer.ts';
import { type Sizes, sidePastFront } from '../drawerSizes.ts';
import type { BuiltMeasure, DrawerSpec } from '../drawerSpec.ts';
import { type BuiltAt, builtAt, longSide } from './built.ts';

/**
 * What boards as they came out leave of the clearances, of the lip and of the slack, and what must be planed; places at a
 * measure of the plan's list.
 * @param plan the drawer as planned
 */
export const adviseBuilt = (
  plan: DrawerSpec,
  { spec, sizes }: Pick<Drawer, 'spec' | 'sizes'>,
): Complaint[] => [
  ...onSpace(plan, spec),
  ...onEdges(spec, sizes),
  ...onBack(spec, sizes),
  ...onBottom(plan, spec),
];

const told = (built: BuiltAt | undefined, measure: BuiltMeasure, says: Phrase): Complaint[] =>
  built?.board[measure] === undefined ? [] : [{ at: [...built.at, measure], says }];

/** What is left, and what was planned, where the two differ. */
const left = (
  built: BuiltAt | undefined,
  measure: BuiltMeasure,
  what: string,
  [now, then]: readonly [number, number],
): Complaint[] =>
  Math.abs(now - then) < EPSILON
    ? []
    : told(built, measure, say`${what} is now ${mm(now)}, where ${mm(then)} was planned`);

const onSpace = (plan: DrawerSpec, spec: DrawerSpec): Complaint[] => {
  const front = builtAt(spec, 'front');
  const lips =
    spec.lip === undefined || plan.lip === undefined
      ? []
      : [
          ...left(front, 'length', 'the lip at each side', [spec.lip.sides, plan.lip.sides]),
          ...left(front, 'width', 'the lip above', [spec.lip.top, plan.lip.top]),
        ];
  if (spec.space.kind === 'size' || plan.space.kind === 'size') return lips;
  const [now, then] = [spec.space.fit, plan.space.fit];
  return [
    ...lips,
    ...left(front, 'length', 'the clearance at each side', [now.side, then.side]),
    ...left(front, 'width', 'the clearance above', [now.top, then.top]),
    ...left(longSide(spec), 'length', 'the clearance behind', [now.behind, then.behind]),
  ];
};

/** Sides whose upper edges do not meet the front's. */
const onEdges = (spec: DrawerSpec, sizes: Sizes): Complaint[] =>
  HANDS.flatMap((hand) => {
    const past = sidePastFront(sizes, hand);
    const built = builtAt(spec, 'side', hand);
    if (Math.abs(past) < EPSILON) return [];
    return told(
      built,
      'width',
      past > 0
        ? say`the ${hand} side stands ${mm(past)} above the front: its front corner is set out over the front's width; plane it level`
        : say`the front stands ${mm(-past)} above the ${hand} side: that corner is set out over the side's width`,
    );
  });

const onBack = (spec: DrawerSpec, { width, backWidth }: Sizes): Complaint[] =>
  Math.abs(width - backWidth) < EPSILON
    ? []
    : told(
        builtAt(spec, 'back'),
        'length',
        say`the drawer is ${mm(width - backWidth)} narrower behind than in front; its bottom is as wide as it is there`,
      );

const onBottom = (plan: DrawerSpec, spec: DrawerSpec): Complaint[] =>
  left(
    builtAt(spec, 'bottom'),
    spec.bottom.kind === 'solid' ? 'length' : 'width',
    "the bottom's slack at each side",
    [spec.bottom.slack, plan.bottom.slack],
  );
