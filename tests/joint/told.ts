import type { Complaint } from '../../src/complaint.ts';
import type { Joint } from '../../src/joint/joint.ts';
import { layOut } from '../../src/joint/layOut.ts';
import type { JointSpec } from '../../src/joint/spec.ts';
import { speak } from '../../src/units/phrase.ts';

/** Complaints as a user reads them in mm: `place: what is wrong; try this`. */
export const told = (complaints: readonly Complaint[]): string[] =>
  complaints.map(
    ({ at, says, hint }) =>
      `${at.join('.')}: ${speak(says, 'mm')}${hint === undefined ? '' : `; try ${speak(hint, 'mm')}`}`,
  );

/** What stands against a wish; nothing where it can be cut. */
export const against = (spec: JointSpec): string[] => {
  const result = layOut(spec);
  return result.ok ? [] : told(result.complaints);
};

/** The joint of a wish that can be cut. */
export const jointOf = (spec: JointSpec): Joint => {
  const result = layOut(spec);
  if (!result.ok) throw new Error(told(result.complaints).join('\n'));
  return result.value;
};

export const adviceFor = (spec: JointSpec): string[] => told(jointOf(spec).advice);
