import type { Joint } from '../../joint/joint.ts';
import type { Cutter } from '../limits/cutter.ts';
import { tailPasses } from './passes.ts';

/** How far past the joint's edges the dovetail cutter's largest diameter runs as it clears the half spaces, in mm. */
export const pastTheEdges = (
  joint: Joint,
  cutter: Cutter,
): { readonly lower: number; readonly upper: number } => {
  const passes = tailPasses(joint, cutter);
  const radius = cutter.diameter / 2;
  const [first = radius] = passes[0] ?? [];
  const last = passes.at(-1)?.at(-1) ?? joint.width - radius;
  return { lower: radius - first, upper: last + radius - joint.width };
};
