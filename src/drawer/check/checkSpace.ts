import { WIDTH_RANGE } from '../../joint/jointLimits.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { depthLimit } from '../arrangement/depthLimit.ts';
import { LEAST_INSIDE } from '../drawerLimits.ts';
import type { Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';

/** The clearance that each measure of an opening has. */
const CLEARANCES = { width: 'fit.side', height: 'fit.top', depth: 'fit.behind' } as const;

/** What is wrong with an opening, or a drawer's own size, that is too small; each measure is in its range. */
export const checkSpace = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const { space, stock, lip, box } = spec;
  const wrong: Complaint[] = [];
  const tooSmall = (key: 'width' | 'height' | 'depth', has: number, needs: number, lacks = needs - has) => {
    // What is no number comes from a joint's measure, and is complained of with the joint.
    if (!(has < needs - EPSILON)) return;
    const given = space.kind === 'opening' ? space.opening[key] : space.size[key];
    const least = given + lacks;
    wrong.push({
      at: [space.kind, key],
      says:
        space.kind === 'opening'
          ? say`the opening's ${key} is ${mm(given)}; with the clearances and the boards it must be at least ${atLeast(least)}`
          : say`the ${box === undefined ? 'drawer' : 'box'}'s ${key} is ${mm(given)}; with its boards${lip === undefined ? '' : ' and its lip'} it must be at least ${atLeast(least)}`,
      hint: say`${atLeast(least)}`,
      ...(space.kind === 'opening' && {
        remedy:
          key === 'depth' && depthLimit(space).by === 'vent'
            ? say`make the vent smaller (cabinet.vent)`
            : say`make the clearance smaller (${CLEARANCES[key]})`,
      }),
    });
  };
  tooSmall('width', sizes.width, sizes.wall.left + sizes.wall.right + LEAST_INSIDE);
  // What is high enough for the sides may be too low for the back.
  tooSmall('height', sizes.height, WIDTH_RANGE.least, WIDTH_RANGE.least - sizes.backHeight);
  tooSmall('depth', sizes.depth, stock.front.thickness + stock.back.thickness + LEAST_INSIDE);
  return wrong;
};
