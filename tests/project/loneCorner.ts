import type { JointSpec } from '../../src/joint/jointSpec.ts';
import type { LoneCorner } from '../../src/project/project.ts';
import { jointOf } from '../joint/told.ts';

/** A corner that can be cut, by its name. */
export const loneCorner = (name: string, spec: JointSpec): LoneCorner => ({
  name,
  spec,
  joint: jointOf(spec),
});
