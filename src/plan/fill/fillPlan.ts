import { type Cutting, checkCutting } from '../../router/limits/cutting.ts';
import type { Complaint, Result } from '../../units/complaint.ts';
import { notationOf } from '../../units/notation.ts';
import { contradictions } from '../check/contradictions.ts';
import type { Plan } from '../plan.ts';
import { formatPlace } from '../read/planComplaint.ts';
import type { EntryIndices } from '../read/validEntries.ts';
import type { WrittenCutter, WrittenPlan } from '../schema/planSchema.ts';
import { fillDrawer } from './fillDrawer.ts';
import { fillJoint } from './fillJoint.ts';

/** The plan with every default filled in; without entries that contradict themselves, each of which is complained of. */
export const fillPlan = (
  written: WrittenPlan,
  given: EntryIndices,
): { plan: Plan; indices: EntryIndices; complaints: readonly Complaint[] } => {
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
  // Fractions beside mm are complained of by checkWhole.
  const asked = notationOf(units, fractions);
  const notation = asked.ok ? asked.value : units;
  const cutting = written.cutter && cuttingOf(written.cutter);
  const onCutter = cutting === undefined ? [] : checkCutting(cutting);
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
    joints.map((joint, i) =>
      fillJoint(written.joint ?? {}, joint, ['joints', given.joints[i] ?? i], notation),
    ),
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
    indices: { drawers: madeDrawers.indices, joints: madeJoints.indices },
    complaints: onceAPlace([...general, ...madeDrawers.complaints, ...madeJoints.complaints]),
  };
};

const cuttingOf = ({ diameter, angle, length, neck, ...rest }: WrittenCutter): Cutting => ({
  cutter: { diameter, angle, length, ...(neck !== undefined && { neck }) },
  ...rest,
});

/** The values, the indices that they have in the plan as given, and the complaints of the others. */
const sift = <T>(results: readonly Result<T>[], given: readonly number[]) => {
  const values: T[] = [];
  const indices: number[] = [];
  const complaints: Complaint[] = [];
  results.forEach((result, i) => {
    if (result.ok) {
      values.push(result.value);
      indices.push(given[i] ?? i);
    } else complaints.push(...result.complaints);
  });
  return { values, indices, complaints };
};

/** A key that the plan lacks for many drawers is complained of once. */
const onceAPlace = (complaints: readonly Complaint[]): readonly Complaint[] => [
  ...new Map(complaints.map((complaint) => [formatPlace(complaint.at), complaint])).values(),
];
