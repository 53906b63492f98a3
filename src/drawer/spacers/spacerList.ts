import { fingerSetting } from '../../router/fingers/fingerSetting.ts';
import { EPSILON } from '../../units/epsilon.ts';
import type { CornerEnd } from '../cornerLetters.ts';
import { type DrawerSet, madeOf } from '../drawer.ts';
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

const withinOf = (set: DrawerSet): number => set.asked?.spacers.within ?? USUAL_WITHIN;

/** Every spacer of a set, those of the front corners first; none without fingers. */
export const spacerList = (set: DrawerSet): SpacerGroup[] => {
  return (['front', 'back'] as const).flatMap((corner) =>
    grouped(
      madeOf(set).flatMap((drawer): Needed[] => {
        const { name, cutter, fingers } = drawer.spec;
        if (cutter === undefined || fingers === undefined) return [{ name, spacers: [] }];
        const joints = [drawer[corner], ...(drawer.right ? [drawer.right[corner]] : [])];
        return joints.map((joint) => ({
          name,
          spacers: fingerSetting(joint, cutter, fingers).pairs.flatMap(({ spacer }) =>
            spacer > 0 ? [spacer] : [],
          ),
        }));
      }),
      withinOf(set),
    ).map(({ width, count, drawers }) => ({ width, count, corner, drawers })),
  );
};

/** Tells which spacers of the same corner are told with one of them, itself among them; of no spacer those that are none. */
export const toldWith = (set: DrawerSet, corner: CornerEnd, spacer: number): ((other: number) => boolean) => {
  const within = withinOf(set);
  const group = spacerList(set).find((each) => each.corner === corner && isIn(each.width, spacer, within));
  return (other) => (group === undefined ? other === spacer : isIn(group.width, other, within));
};

/** Whether a spacer is told with those of a group. @param least the group's least, in mm */
const isIn = (least: number, spacer: number, within: number): boolean =>
  spacer >= least && spacer <= least + within + EPSILON;

/** From the least up, a spacer joins the group whose least lies no more than `within` below it. */
const grouped = (needed: readonly Needed[], within: number): Omit<SpacerGroup, 'corner'>[] => {
  const leasts: number[] = [];
  for (const spacer of needed.flatMap(({ spacers }) => spacers).sort((a, b) => a - b))
    if (leasts.length === 0 || spacer - (leasts.at(-1) ?? spacer) > within + EPSILON) leasts.push(spacer);
  const counted = (spacers: readonly number[], width: number): number =>
    spacers.filter((spacer) => isIn(width, spacer, within)).length;
  return leasts.map((width) => ({
    width,
    count: Math.max(...needed.map(({ spacers }) => counted(spacers, width))),
    drawers: [...new Set(needed.flatMap(({ name, spacers }) => (counted(spacers, width) > 0 ? [name] : [])))],
  }));
};
