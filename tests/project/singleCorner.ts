import type { JointSpec } from '../../src/joint/jointSpec.ts';
import type { SingleCorner } from '../../src/project/project.ts';
import { jointOf } from '../joint/told.ts';

/** A corner that can be cut, by its name. */
export const singleCorner = (name: string, spec: JointSpec): SingleCorner => ({
  name,
  spec,
  joint: jointOf(spec),
});
