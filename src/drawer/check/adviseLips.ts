import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { CabinetFront } from '../arrangement/cabinetFront.ts';
import { cabinetOf } from '../arrangement/cabinetOf.ts';
import type { Drawer } from '../drawer.ts';
import type { Fit } from '../drawerSpec.ts';

/**
 * Lips that would meet on a rail or a divider of the planned cabinet; each pair of drawers is told once. A lower drawer may
 * rise by its clearance above, and drawers side by side may each move by theirs.
 */
export const adviseLips = (drawers: readonly Drawer[]): Complaint[] => {
  if (drawers.every(({ spec }) => spec.lip === undefined)) return [];
  const { planned, rows } = cabinetOf(drawers);
  const fronts = planned ? rows.flat() : [];
  const told = new Map<string, Complaint>();
  for (const one of fronts)
    for (const other of fronts) {
      const met = meeting(one, other, drawers);
      if (met !== undefined) told.set(`${one.index} ${other.index} ${met.at.join('.')}`, met);
    }
  return [...told.values()];
};

/** What is said where the first front's lip comes too near the other, which is above it or at its right. */
const meeting = (
  one: CabinetFront,
  other: CabinetFront,
  drawers: readonly Drawer[],
): Complaint | undefined => {
  if (one === other) return undefined;
  const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const up = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  const [mine, theirs] = [fitOf(drawers[one.index]), fitOf(drawers[other.index])];
  if (across > EPSILON && other.y > one.y && -up < mine.top - EPSILON)
    return tooNear(one, other, drawers, { between: 'rail', room: -up, need: mine.top });
  const need = mine.side + theirs.side;
  if (up > EPSILON && other.x > one.x && -across < need - EPSILON)
    return tooNear(one, other, drawers, { between: 'divider', room: -across, need });
  return undefined;
};

const fitOf = (drawer: Drawer | undefined): Fit =>
  drawer?.spec.space.kind === 'opening' ? drawer.spec.space.fit : { side: 0, top: 0, behind: 0 };

const tooNear = (
  one: CabinetFront,
  other: CabinetFront,
  drawers: readonly Drawer[],
  { between, room, need }: { between: 'rail' | 'divider'; room: number; need: number },
): Complaint => {
  const name = ({ index }: CabinetFront) => quote(drawers[index]?.spec.name ?? '');
  return {
    at: ['cabinet', between],
    says:
      room > 0
        ? say`the lips of ${name(one)} and ${name(other)} come within ${mm(room)} of each other on the ${between}, and need ${mm(need)} to move`
        : say`the lips of ${name(one)} and ${name(other)} would run ${mm(-room)} into each other on the ${between}`,
    remedy: say`make the ${between} thicker by ${mm(need - room)}, or the lips narrower`,
  };
};
