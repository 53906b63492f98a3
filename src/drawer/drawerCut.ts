import type { Cuts } from '../router/guide/cutCorners.ts';
import type { JointCut } from '../router/guide/cutJoint.ts';
import type { Cutter } from '../router/limits/cutter.ts';
import type { Drawer } from './drawer.ts';

/** How both kinds of a drawer's corners are cut with a router. */
export interface DrawerCut {
  readonly cutter: Cutter;
  readonly front: JointCut;
  readonly back: JointCut;
}

/** How a drawer's left corners are cut, which its right ones mirror unless they differ; nothing where that is by hand. */
export const drawerCut = (
  { spec: { cutter }, front: frontJoint, back: backJoint }: Drawer,
  cuts: Cuts,
): DrawerCut | undefined => {
  const [front, back] = [cuts.get(frontJoint), cuts.get(backJoint)];
  return cutter && front && back && { cutter, front, back };
};
