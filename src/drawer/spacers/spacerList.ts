import type { Joint } from '../../joint/joint.ts';
import { fingerSetting } from '../../router/fingers/fingerSetting.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { CornerEnd } from '../cornerLetters.ts';
import type { DrawerSet } from '../drawer.ts';
import { USUAL_WITHIN } from '../drawerLimits.ts';

/** Spacers of one width, at the front corners or at the back corners of a set. */
export interface SpacerGroup {
  /** The least width in the group, in mm. */
  readonly width: number;
  /** As many as the corner needs that needs most of them: one corner is cut at a time. */
  readonly count: number;
  readonly corner: CornerEnd;
  /** The drawers that need them. */
  readonly drawers: readonly string[];
}

/** The spacers of one drawer's corner. */
interface Needed {
  readonly name: string;
  readonly spacers: readonly number[];
}

/** Every spacer of a set, those of the front corners first; none without fingers. */
export const spacerList = (set: DrawerSet): SpacerGroup[] => {
  const within = set.asked?.spacers.within ?? USUAL_WITHIN;
  return (['front', 'back'] as const).flatMap((corner) =>
    grouped(
      set.drawers.map((drawer): Needed => {
        const { name, cutter, fingers } = drawer.spec;
        const joint: Joint = drawer[corner];
        const pairs = cutter && fingers ? fingerSetting(joint, cutter, fingers).pairs : [];
        return { name, spacers: pairs.flatMap(({ spacer }) => (spacer > 0 ? [spacer] : [])) };
      }),
      within,
    ).map(({ width, count, drawers }) => ({ width, count, corner, drawers })),
  );
};

/** From the least up, a spacer joins the group whose least lies no more than `within` below it. */
const grouped = (needed: readonly Needed[], within: number): Omit<SpacerGroup, 'corner'>[] => {
  const leasts: number[] = [];
  for (const spacer of needed.flatMap(({ spacers }) => spacers).sort((a, b) => a - b))
    if (leasts.length === 0 || spacer - (leasts.at(-1) ?? spacer) > within + EPSILON) leasts.push(spacer);
  const counted = (spacers: readonly number[], width: number): number =>
    spacers.filter((spacer) => spacer >= width && spacer <= width + within + EPSILON).length;
  return leasts.map((width) => ({
    width,
    count: Math.max(...needed.map(({ spacers }) => counted(spacers, width))),
    drawers: needed.flatMap(({ name, spacers }) => (counted(spacers, width) > 0 ? [name] : [])),
  }));
};
