import { type Cutting, checkCutting } from '../../router/limits/cutting.ts';
import { type Complaint, type Result, under } from '../../units/complaint.ts';
import { notationOf } from '../../units/notation.ts';
import { contradictions } from '../check/contradictions.ts';
import type { Plan } from '../plan.ts';
import { formatPlace } from '../read/planComplaint.ts';
import type { Kept } from '../read/validEntries.ts';
import type { WrittenCutter, WrittenPlan } from '../schema/planSchema.ts';
import { fillDrawer } from './fillDrawer.ts';
import { fillJoint } from './fillJoint.ts';

/** Fills in every default; entries that contradict themselves are complained of and left out. */
export const fillPlan = (
  written: WrittenPlan,
  given: Kept,
): { plan: Plan; kept: Kept; complaints: readonly Complaint[] } => {
  const {
    name = 'Untitled',
    units = 'mm',
    fractions,
    family,
    climate,
    woods,
    drawers = [],
    joints = [],
  } = written;
  // Fractions beside mm are complained of where the plan is judged as a whole.
  const asked = notationOf(units, fractions);
  const notation = asked.ok ? asked.value : units;
  const cutting = written.cutter && cuttingOf(written.cutter);
  const onCutter = cutting === undefined ? [] : under(['cutter'], checkCutting(cutting));
  const general = [
    ...onCutter,
    ...contradictions(written.joint ?? {}, ['joint']),
    ...contradictions(written.back?.joint ?? {}, ['back', 'joint']),
  ];
  const madeDrawers = sift(
    general.length > 0
      ? []
      : drawers.map((drawer, i) =>
          fillDrawer(written, drawer, ['drawers', given.drawers[i] ?? i], notation, cutting?.cutter),
        ),
    given.drawers,
  );
  const madeJoints = sift(
    joints.map((joint, i) => fillJoint(joint, ['joints', given.joints[i] ?? i], notation)),
    given.joints,
  );
  return {
    plan: {
      name,
      units: notation,
      drawers: madeDrawers.values,
      joints: madeJoints.values,
      ...(cutting === undefined || onCutter.length > 0 ? {} : { cutting }),
      ...(climate && { climate }),
      ...(woods && { woods }),
      ...(family?.target === undefined ? {} : { target: family.target }),
    },
    kept: { drawers: madeDrawers.kept, joints: madeJoints.kept },
    complaints: onceAPlace([...general, ...madeDrawers.complaints, ...madeJoints.complaints]),
  };
};

const cuttingOf = ({ diameter, angle, length, neck, ...rest }: WrittenCutter): Cutting => ({
  cutter: { diameter, angle, length, ...(neck !== undefined && { neck }) },
  ...rest,
});

/** Parts the sound from the rest. */
const sift = <T>(results: readonly Result<T>[], given: readonly number[]) => {
  const values: T[] = [];
  const kept: number[] = [];
  const complaints: Complaint[] = [];
  results.forEach((result, i) => {
    if (result.ok) {
      values.push(result.value);
      kept.push(given[i] ?? i);
    } else complaints.push(...result.complaints);
  });
  return { values, kept, complaints };
};

/** What many drawers lack because their plan lacks it is said once. */
const onceAPlace = (complaints: readonly Complaint[]): readonly Complaint[] => [
  ...new Map(complaints.map((complaint) => [formatPlace(complaint.at), complaint])).values(),
];
