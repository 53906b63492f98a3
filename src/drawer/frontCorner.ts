import { withCutter } from '../guided/fitToCutter.ts';
import { type ResolvedSpec, withDefaults } from '../joint/defaults.ts';
import { frontJointSpec, sizesOf } from './sizes.ts';
import type { DrawerSpec } from './spec.ts';

/** The wish for a drawer's front corners, unchecked: with what its cutter makes of it, and every default filled in. */
export const frontCorner = (spec: DrawerSpec): ResolvedSpec => {
  const wish = frontJointSpec(spec, sizesOf(spec).height);
  return withDefaults(spec.cutter === undefined ? wish : withCutter(wish, spec.cutter));
};
