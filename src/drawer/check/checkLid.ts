import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { sawCut, sawnApart } from '../box/sawnApart.ts';
import { leastHeight } from '../box/sawnCorner.ts';
import { LEAST_WALL } from '../drawerLimits.ts';
import { grooveTop, type Sizes, wholeCorner } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** What is wrong with where a box's lid is to be sawn off, in a box that `checkSpace` accepts. */
export const checkLid = (spec: DrawerSpec, { height }: Sizes): Complaint[] => {
  const lid = spec.box?.lid;
  if (lid === undefined) return [];
  const corner = wholeCorner(spec);
  const { groove } = spec;
  const apart = sawnApart(corner, lid);
  const isListed = corner.spacing.kind === 'listed';
  const least = isListed ? LEAST_WALL : leastHeight(apart.lid);
  // Above the groove the box keeps some wood; without one, what is left of it has a tail too.
  const below = Math.max(isListed ? LEAST_WALL : leastHeight(apart.box), grooveTop(groove) + LEAST_WALL);
  const most = height - lid.kerf - below;
  if (!(lid.height < least - EPSILON || lid.height > most + EPSILON)) return [];
  const [from, to] = sawCut(height, lid);
  return [
    {
      at: ['lid', 'height'],
      says: say`a lid of ${mm(lid.height)} ${from > 0 ? say`is sawn off ${mm(from)} to ${mm(to)} up` : say`and a saw cut of ${mm(lid.kerf)} leave nothing of`} a box ${mm(height)} high; ${most < least - EPSILON ? say`there is no room for a tail in both, with the groove below` : say`with a tail in both, and the groove below, it must be ${atLeast(least)} to ${atMost(most)}`}`,
      ...(most >= least && { hint: say`${lid.height < least ? atLeast(least) : atMost(most)}` }),
      ...(most < least - EPSILON && { remedy: say`make the box higher, or the pins narrower` }),
    },
  ];
};
