import { EPSILON } from '../../units/epsilon.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** What keeps a drawer from being deeper, or from going in farther, and what is left free behind it, in mm. */
export interface DepthLimit {
  /**
   * The planned clearance; the cabinet's vent, where that needs more; or what stops the drawer: stops that do not bring its
   * front home, or, where nothing is left, the cabinet's back.
   */
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

/**
 * The same of a drawer that is pushed home against its stops.
 * @param past how far past home the front is when it meets them, in mm; less than 0 where it stands proud
 */
export const limitAtStops = (limit: DepthLimit, past: number): DepthLimit =>
  Math.abs(past) < EPSILON ? limit : { by: 'stop', left: Math.max(0, limit.left - past) };
