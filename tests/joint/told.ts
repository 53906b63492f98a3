import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { layOut } from '../../src/joint/layOut.ts';
import { complaintsOf, told, value } from '../value.ts';

/** What stands against a wish; nothing where it can be cut. */
export const against = (spec: JointSpec): string[] => complaintsOf(layOut(spec));

/** The joint of a wish that can be cut. */
export const jointOf = (spec: JointSpec): Joint => value(layOut(spec));

export const adviceFor = (spec: JointSpec): string[] => told(jointOf(spec).advice);
