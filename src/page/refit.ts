import type { Place } from '../complaint.ts';
import { backJointSpec, frontJointSpec, sizesOf } from '../drawer/sizes.ts';
import type { Cutter } from '../guided/cutter.ts';
import { withCutter } from '../guided/fitToCutter.ts';
import { withDefaults } from '../joint/defaults.ts';
import type { JointSpec } from '../joint/spec.ts';
import type { Plan } from '../plan/plan.ts';
import type { Edit } from './editPlan.ts';
import { listEdits } from './listEdits.ts';
import { locksOf, type Work } from './snapshot.ts';
import { fill, total, type Widths } from './widths.ts';

interface Wish {
  readonly at: Place;
  readonly key: string;
  readonly spec: JointSpec;
}

const wishesOf = ({ drawers, joints }: Plan): Wish[] => [
  ...drawers.flatMap((spec, i): Wish[] => {
    const { height, backHeight } = sizesOf(spec);
    return [
      { at: ['drawers', i, 'joint'], key: `front ${spec.name}`, spec: frontJointSpec(spec, height) },
      {
        at: ['drawers', i, 'back', 'joint'],
        key: `back ${spec.name}`,
        spec: backJointSpec(spec, backHeight),
      },
    ];
  }),
  ...joints.map(({ name, spec }, i) => ({ at: ['joints', i], key: `joint ${name}`, spec })),
];

const wishedWidths = (wish: JointSpec, cutter: Cutter | undefined): Widths | undefined => {
  const { spacing, halfPin, pin } = withDefaults(cutter === undefined ? wish : withCutter(wish, cutter));
  if (spacing.kind !== 'listed') return undefined;
  const { tails, pins } = spacing;
  const inner = tails.flatMap((tail, i) => (i === 0 ? [tail] : [pins?.[i - 1] ?? pin, tail]));
  return [halfPin.lower, ...inner, halfPin.upper];
};

/** What makes listed tails fill their boards again when these have become wider or narrower. */
export const refitEdits = (plan: Plan, work: Work): Edit[] =>
  wishesOf(plan).flatMap(({ at, key, spec }) => {
    const widths = wishedWidths(spec, plan.cutting?.cutter);
    if (widths === undefined || Math.abs(total(widths) - spec.width) < 1e-6) return [];
    const filled = fill(widths, locksOf(work, key), spec.width);
    return filled.ok ? listEdits(at, filled.value, plan.units) : [];
  });
