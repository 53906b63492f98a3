import { under } from '../complaint.ts';
import type { DrawerSet } from '../drawer/drawer.ts';
import { Failure, refuseOptions, WRONG_INPUT } from '../files/failure.ts';
import { readInput } from '../files/readInput.ts';
import type { Joint } from '../joint/joint.ts';
import { layOut } from '../joint/layOut.ts';
import type { Unit } from '../units/length.ts';
import { adviseClimate, type Climate } from '../wood/climate.ts';
import { type JointOptions, optionsOfJoint, readJointOptions } from './jointOptions.ts';

/** What a command has been given to work on, set out. */
export interface Work {
  readonly title: string;
  readonly units: Unit;
  readonly set: DrawerSet;
  /** Absent where a plan gives none. */
  readonly climate?: Climate;
  /** Corners that belong to no drawer. */
  readonly joints: readonly { readonly name: string; readonly joint: Joint }[];
}

const NO_DRAWERS: DrawerSet = { drawers: [], advice: [] };

/** Reads a plan, or the options of one corner, and sets everything out. Throws a Failure with all that is wrong. */
export const loadWork = async (plan: string | undefined, options: JointOptions): Promise<Work> =>
  plan === undefined ? workOfOptions(options) : workOfPlan(plan, options);

const workOfOptions = (options: JointOptions): Work => {
  const { name, units, spec, complaints } = readJointOptions(options);
  const joint = spec && layOut(spec);
  if (joint?.ok !== true || complaints.length > 0) {
    // An option that could not be read is not blamed a second time for what its default does.
    const blamed = new Set(complaints.map(({ at }) => at[0]));
    const more = joint?.ok === false ? joint.complaints.filter(({ at }) => !blamed.has(at[0] ?? '')) : [];
    return refuseOptions([...complaints, ...more], units);
  }
  return { title: name, units, set: NO_DRAWERS, joints: [{ name, joint: joint.value }] };
};

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
  const unitOf = (planned: Unit): Unit =>
    options.units === 'in' || options.units === 'mm' ? options.units : planned;
  if (!reading.ok)
    throw new Failure(
      reading.complaints.map((complaint) => formatPlanComplaint(file, complaint, unitOf(reading.units))),
      WRONG_INPUT,
    );
  const { plan, set, joints } = reading.value;
  const { climate } = plan;
  return {
    title: plan.name,
    units: unitOf(plan.units),
    set: climate ? { ...set, advice: [...under(['climate'], adviseClimate(climate)), ...set.advice] } : set,
    ...(climate && { climate }),
    joints,
  };
};
