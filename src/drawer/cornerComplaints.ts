import { type Complaint, type Place, under } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { hasEqualEnds } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** A joint's complaints as its drawer's: at the keys of the drawer's entry, and saying which corners are meant. */
export const cornerComplaints = (
  spec: DrawerSpec,
  end: 'front' | 'back',
  complaints: readonly Complaint[],
): Complaint[] => {
  const joint: Place = end === 'front' || spec.box !== undefined ? ['joint'] : ['back', 'joint'];
  const corners = hasEqualEnds(spec) ? 'corners' : `${end} corners`;
  /** What a joint takes from the drawer's boards. */
  const boards = new Map<unknown, Place>([
    ['width', end === 'front' || spec.box !== undefined ? [spec.space.kind, 'height'] : ['back', 'drop']],
    ['tailBoard', ['stock', 'side', 'thickness']],
    ['pinBoard', ['stock', end, 'thickness']],
  ]);
  return complaints.flatMap((complaint) => {
    const at = boards.get(complaint.at[0]);
    const told = { ...complaint, says: say`${corners}: ${complaint.says}` };
    return at === undefined ? under(joint, [told]) : { ...told, at };
  });
};
