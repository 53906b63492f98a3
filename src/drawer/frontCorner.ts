import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import { withCutter } from '../router/limits/fitToCutter.ts';
import { frontJointSpec, sizesOf } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** The wish for a drawer's front corners, unchecked: with what its cutter makes of it, and every default filled in. */
export const frontCorner = (spec: DrawerSpec): ResolvedSpec => {
  const wish = frontJointSpec(spec, sizesOf(spec).height);
  return withDefaults(spec.cutter === undefined ? wish : withCutter(wish, spec.cutter));
};
