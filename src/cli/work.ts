import type { Complaint } from '../complaint.ts';
import type { DrawerSet } from '../drawer/drawer.ts';
import { Failure, refuseOptions, WRONG_INPUT } from '../files/failure.ts';
import { readInput } from '../files/readInput.ts';
import { type Cuts, cutCorners } from '../guided/cutCorners.ts';
import type { Cutting } from '../guided/cutting.ts';
import { layOutWith, type Tooling } from '../guided/layOutWith.ts';
import { OWN_LENGTH_KEYS } from '../joint/kinds/kinds.ts';
import type { LaidJoint } from '../plan/layOutPlan.ts';
import { namedCorners } from '../plan/namedCorners.ts';
import type { PlanComplaint } from '../plan/planComplaint.ts';
import { inchesMeant } from '../units/inchesMeant.ts';
import type { Unit } from '../units/unit.ts';
import type { Climate } from '../wood/climate.ts';
import { atCutterOption, changeTools } from './cutterOptions.ts';
import { type JointOptions, optionsOfJoint, readJointOptions } from './jointOptions.ts';

/** What a command has been given to work on, set out. */
export interface Work {
  readonly title: string;
  readonly units: Unit;
  readonly set: DrawerSet;
  /** Absent where a plan gives none. */
  readonly climate?: Climate;
  /** Corners that belong to no drawer. */
  readonly joints: readonly LaidJoint[];
  /** What every corner is cut with, where that is not by hand. */
  readonly cutting?: Cutting;
  /** How each corner's joint is cut; none without a cutter. */
  readonly cuts: Cuts;
}

const NO_DRAWERS: DrawerSet = { drawers: [], advice: [] };

/** Reads a plan, or the options of one corner, and sets everything out. Throws a Failure with all that is wrong. */
export const loadWork = async (plan: string | undefined, options: JointOptions): Promise<Work> =>
  plan === undefined ? workOfOptions(options) : workOfPlan(plan, options);

const workOfOptions = (options: JointOptions): Work => {
  const { name, units, spec, cutting, pitch, complaints } = readJointOptions(options);
  const joint = spec && layOutWith(spec, toolingOf(cutting, pitch));
  if (joint?.ok !== true || complaints.length > 0) {
    // An option that could not be read is not blamed a second time for what its default does.
    const blamed = new Set(complaints.map(({ at }) => at[0]));
    const more =
      joint?.ok === false
        ? joint.complaints.map((each) => atOption(each, pitch)).filter(({ at }) => !blamed.has(at[0] ?? ''))
        : [];
    return refuseOptions(
      [...complaints, ...more].map((each) => withInches(each, options, units)),
      units,
    );
  }
  const work = { title: name, units, set: NO_DRAWERS, joints: [{ name, joint: joint.value }] };
  const cuts = cutCorners(work.joints, cutting);
  if (!cuts.ok) return refuseOptions(cuts.complaints.map(atCutterOption), units);
  return { ...work, ...(cutting && { cutting }), cuts: cuts.value };
};

/** Options that are one length each. */
const LENGTHS: readonly unknown[] = ['width', 'tailBoard', 'pinBoard', 'pin', 'chisel', ...OWN_LENGTH_KEYS];

/** A bare fraction that comes out too small as mm was meant in inches. */
const withInches = (complaint: Complaint, options: JointOptions, unit: Unit): Complaint => {
  const [, typed] = Object.entries(options).find(([name]) => name === complaint.at[0]) ?? [];
  const meant = LENGTHS.includes(complaint.at[0]) ? inchesMeant(typed, unit) : undefined;
  return meant === undefined ? complaint : { ...complaint, hint: meant };
};

export const toolingOf = (cutting: Cutting | undefined, pitch: number | undefined): Tooling => ({
  ...(cutting && { cutter: cutting.cutter }),
  ...(pitch !== undefined && { pitch }),
});

/** A joint's complaint at the option that can put it right: with a pitch there is no other for tails and half pins. */
export const atOption = (complaint: Complaint, pitch: number | undefined): Complaint =>
  pitch !== undefined && ['tails', 'pins', 'halfPin'].includes(String(complaint.at[0]))
    ? { ...complaint, at: ['pitch'] }
    : atCutterOption(complaint);

const workOfPlan = async (file: string, options: JointOptions): Promise<Work> => {
  const beside = optionsOfJoint(options);
  if (beside.length > 0)
    throw new Failure(
      beside.map((option) => `${option}: a plan says this itself; leave out the option, or the plan`),
      WRONG_INPUT,
    );
  const bytes = await readInput(file, 'a plan; try halfpin start to begin one');
  // Reading plans takes a parser and a checker that a single corner has no need of.
  const [{ layOutPlan }, { formatPlanComplaint }] = await Promise.all([
    import('../plan/layOutPlan.ts'),
    import('../plan/planComplaint.ts'),
  ]);
  const reading = layOutPlan(bytes);
  const planned = reading.ok ? reading.value.plan.units : reading.units;
  const units = options.units === 'in' || options.units === 'mm' ? options.units : planned;
  const refusePlan = (complaints: readonly PlanComplaint[]): never => {
    throw new Failure(
      complaints.map((complaint) => formatPlanComplaint(file, complaint, units)),
      WRONG_INPUT,
    );
  };
  if (!reading.ok) return refusePlan(reading.complaints);

  const { plan, set, joints, locate } = reading.value;
  const cutting = changeTools(plan.cutting, options, units);
  if (!cutting.ok) return refuseOptions(cutting.complaints, units);
  const cuts = cutCorners(namedCorners({ set, joints }), cutting.value);
  if (!cuts.ok) {
    // A tool that was typed is blamed where it was typed.
    const typed = cuts.complaints.map(atCutterOption).filter(({ at }) => isTyped(options, at[0]));
    return typed.length > 0 ? refuseOptions(typed, units) : refusePlan(cuts.complaints.map(locate));
  }
  const { climate } = plan;
  return {
    title: plan.name,
    units,
    set,
    ...(climate && { climate }),
    joints,
    ...(cutting.value && { cutting: cutting.value }),
    cuts: cuts.value,
  };
};

const isTyped = (options: JointOptions, key: string | number | undefined): boolean =>
  key !== undefined && Object.entries(options).some(([name, text]) => name === key && text !== undefined);
