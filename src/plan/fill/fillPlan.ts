import { settleFingers } from '../../router/fingers/settleFingers.ts';
import { type Cutting, checkCutting } from '../../router/limits/cutting.ts';
import { USUAL_SAWING } from '../../stock/usualSawing.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { notationOf, unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { contradictions } from '../check/contradictions.ts';
import type { Plan } from '../plan.ts';
import { formatPlace } from '../read/planComplaint.ts';
import type { EntryIndices } from '../read/validEntries.ts';
import type { WrittenPlan } from '../schema/planSchema.ts';
import { fillBoards } from './fillBoards.ts';
import { fillBox } from './fillBox.ts';
import { fillCabinet, type PlacedDrawer } from './fillCabinet.ts';
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
    cabinet,
    drawers: listed = [],
    boxes = [],
    joints = [],
  } = written;
  // Fractions beside mm are complained of by checkWhole.
  const asked = notationOf(units, fractions);
  const notation = asked.ok ? asked.value : units;
  const tools = cuttingOf(written);
  const cutting = tools.ok ? tools.value : undefined;
  const { target, ...spacers } = family ?? {};
  const placed = cabinet && fillCabinet(cabinet, listed, units);
  // What the rows of a faulty cabinet are is not known.
  const boards =
    placed?.ok === false
      ? fillBoards({ ...written, breakout: { ...written.breakout, runThrough: [] } }, given.boards, undefined)
      : fillBoards(written, given.boards, placed?.value.cabinet.openings);
  const drawers: readonly PlacedDrawer[] = placed?.ok ? placed.value.drawers : listed;
  const general = [
    ...(tools.ok ? [] : tools.complaints),
    ...(placed?.ok === false ? placed.complaints : []),
    ...contradictions(written.joint ?? {}, ['joint']),
    ...contradictions(written.back?.joint ?? {}, ['back', 'joint']),
  ];
  const madeDrawers = sift(
    general.length > 0
      ? []
      : drawers.map((drawer, i) =>
          fillDrawer(written, drawer, ['drawers', given.drawers[i] ?? i], notation, cutting),
        ),
    given.drawers,
  );
  const madeBoxes = sift(
    general.length > 0
      ? []
      : boxes.map((box, i) => fillBox(written, box, ['boxes', given.boxes[i] ?? i], notation, cutting)),
    given.boxes,
  );
  const madeJoints = sift(
    joints.map((joint, i) => fillJoint(written, joint, ['joints', given.joints[i] ?? i], notation)),
    given.joints,
  );
  return {
    plan: {
      name,
      units: notation,
      drawers: madeDrawers.values,
      // Lids that are made apart come last, so that each box has its entry's place.
      boxes: [...madeBoxes.values.map(({ box }) => box), ...madeBoxes.values.flatMap(({ lid }) => lid ?? [])],
      joints: madeJoints.values,
      sawing: { ...USUAL_SAWING[unitOf(notation)], ...written.saw },
      ...(boards.ok && boards.value && { boards: boards.value }),
      ...(placed?.ok && { cabinet: placed.value.cabinet }),
      ...(cutting && { cutting }),
      ...(climate && { climate }),
      ...(woods && { woods }),
      ...(target !== undefined && { target }),
      ...(Object.keys(spacers).length > 0 && { spacers }),
    },
    indices: {
      drawers: madeDrawers.indices,
      boxes: [
        ...madeBoxes.indices,
        ...madeBoxes.indices.filter((_, i) => madeBoxes.values[i]?.lid !== undefined),
      ],
      joints: madeJoints.indices,
      boards: given.boards,
    },
    complaints: onceAPlace([
      ...general,
      ...(boards.ok ? [] : boards.complaints),
      ...madeDrawers.complaints,
      ...madeBoxes.complaints,
      ...madeJoints.complaints,
    ]),
  };
};

/** The tools that a plan names, if any, as far as they can be judged before its joints. */
const cuttingOf = ({ cutter: given, fingers }: WrittenPlan): Result<Cutting | undefined> => {
  if (given === undefined)
    return fingers === undefined
      ? accept(undefined)
      : refuse({
          at: ['fingers'],
          says: say`fingers guide a dovetail cutter, and the plan names none`,
          remedy: say`give one: cutter: {diameter: 12.7mm, angle: 8, length: 20mm}, or remove them`,
        });
  const { diameter, angle, length, neck, ...rest } = given;
  const cutter = { diameter, angle, length, ...(neck !== undefined && { neck }) };
  const settled = fingers && settleFingers(fingers, rest.bush);
  const cutting: Cutting = { cutter, ...rest, ...(settled?.ok && { fingers: settled.value }) };
  const wrong = [...checkCutting(cutting), ...(settled?.ok === false ? settled.complaints : [])];
  return wrong.length > 0 ? refuse(...wrong) : accept(cutting);
};

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
