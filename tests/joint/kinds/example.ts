import type { Joint } from '../../../src/joint/joint.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { jointOf } from '../told.ts';

/** Two tails 33 wide between pins of 10; 15 deep at 1:5, they lose 3 on either side. The sides stand 1 proud. */
const common = {
  width: 96,
  tailBoard: 11,
  slope: { run: 5 },
  pin: 10,
  proud: 1,
  spacing: { kind: 'even', tails: 2 },
} as const;

export const lappedSpec: JointSpec = { kind: 'lapped', ...common, pinBoard: 20, lap: 5 };
export const throughSpec: JointSpec = { kind: 'through', ...common, pinBoard: 15 };
export const doubleSpec: JointSpec = {
  ...common,
  kind: 'double-lapped',
  proud: 0,
  pinBoard: 20,
  lap: 5,
  tailLap: 4,
};
export const secretSpec: JointSpec = {
  ...common,
  kind: 'secret-mitred',
  width: 106,
  proud: 0,
  tailBoard: 20,
  pinBoard: 20,
  lap: 5,
};
export const secretJoint: Joint = jointOf(secretSpec);
export const doubleJoint: Joint = jointOf(doubleSpec);
export const lappedJoint: Joint = jointOf(lappedSpec);
export const throughJoint: Joint = jointOf(throughSpec);
