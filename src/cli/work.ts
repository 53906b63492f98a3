import type { Joint } from '../joint/joint.ts';
import { layOut } from '../joint/layOut.ts';
import type { Unit } from '../units/length.ts';
import { Failure, refuseOptions, WRONG_INPUT } from './failure.ts';
import { type JointOptions, readJointOptions } from './jointOptions.ts';

/** A corner that has been set out, and what it belongs to. */
export interface WorkCorner {
  readonly name: string;
  readonly joint: Joint;
}

/** What a command has been given to work on, set out. */
export interface Work {
  readonly title: string;
  readonly units: Unit;
  readonly corners: readonly WorkCorner[];
}

/** Options that may stand beside a plan. */
const BESIDE_PLAN: ReadonlySet<string> = new Set(['name', 'units']);

/** Reads a plan, or the options of one corner, and sets everything out. Throws a Failure with all that is wrong. */
export const loadWork = async (plan: string | undefined, options: JointOptions): Promise<Work> => {
  if (plan === undefined) return workOfOptions(options);
  throw new Failure(['no plans yet'], WRONG_INPUT);
};

const workOfOptions = (options: JointOptions): Work => {
  const { name, units, spec, complaints } = readJointOptions(options);
  const joint = spec && layOut(spec);
  if (joint?.ok !== true || complaints.length > 0) {
    // An option that could not be read is not blamed a second time for what its default does.
    const blamed = new Set(complaints.map(({ at }) => at[0]));
    const more = joint?.ok === false ? joint.complaints.filter(({ at }) => !blamed.has(at[0] ?? '')) : [];
    return refuseOptions([...complaints, ...more], units);
  }
  return { title: name, units, corners: [{ name, joint: joint.value }] };
};
