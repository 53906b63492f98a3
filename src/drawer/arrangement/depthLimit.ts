import type { DrawerSpec } from '../drawerSpec.ts';

/** What keeps a drawer from being deeper, and what is left free behind it, in mm. */
export interface DepthLimit {
  /** The planned clearance; the cabinet's vent, where that needs more; or, where neither leaves anything, the cabinet's back, which stops it. */
  readonly by: 'behind' | 'vent' | 'stop';
  readonly left: number;
}

/** What limits the depth of a drawer in its opening. */
export const depthLimit = ({
  fit: { behind },
  vent = 0,
}: Pick<Extract<DrawerSpec['space'], { kind: 'opening' }>, 'fit' | 'vent'>): DepthLimit => {
  const left = Math.max(behind, vent);
  return { by: left === 0 ? 'stop' : vent > behind ? 'vent' : 'behind', left };
};
