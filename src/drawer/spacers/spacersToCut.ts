import { fingerSetting } from '../../router/fingers/fingerSetting.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type DrawerSet, madeOf } from '../drawer.ts';
import { type SpacerGroup, spacerList } from './spacerList.ts';

/** The most that a spacer's thickness may be off, in mm: a tail is as much wider or narrower (common practice). */
export const SPACER_TOLERANCE = 0.05;

/** Spacers to cut of every thickness, one spare among them. */
export const spacersToCut = (set: DrawerSet): SpacerGroup[] =>
  spacerList(set).map((group) => ({ ...group, count: group.count + 1 }));

/**
 * Width of the block that checks every gap of a set, in mm: the least gap, where none is wider by more than a spacer's
 * tolerance. Undefined where gaps differ, or there are none.
 */
export const gapBlock = (set: DrawerSet): number | undefined => {
  const gaps = madeOf(set).flatMap(({ spec: { cutter, fingers }, front, back, right }) =>
    cutter && fingers
      ? [front, back, ...(right ? [right.front, right.back] : [])].flatMap(
          (joint) => fingerSetting(joint, cutter, fingers).gaps,
        )
      : [],
  );
  const [least, most] = [Math.min(...gaps), Math.max(...gaps)];
  return gaps.length > 0 && most - least <= SPACER_TOLERANCE + EPSILON ? least : undefined;
};
