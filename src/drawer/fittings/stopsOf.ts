import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { depthLimit } from '../arrangement/depthLimit.ts';
import type { Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { lengthOf, type StopSpec } from './fittingSpec.ts';
import type { Stops } from './fittings.ts';

/** Space between a stop and what slides past it, in mm (common practice). */
const CLEAR_OF_STOPS = 1;
/** The least that a front runs against, in mm. */
const LEAST_STOP_HEIGHT = 2;
/** The least of a stop from front to back that holds a screw, in mm. */
export const LEAST_STOP_DEPTH = 10;

/** Where stops bring a front flush with the rail, or its lip home: from the rail's front edge back to them, in mm. */
export const homeOf = (
  { stock, lip }: { stock: DrawerSpec['stock']; lip?: DrawerSpec['lip'] | undefined },
  { lap }: Pick<Sizes, 'lap'>,
): number => stock.front.thickness - (lip === undefined ? 0 : lap);

/**
 * Where the stops of a drawer are fixed on the rail under it. A front without a lip runs against them when it is flush with
 * the rail; one with a lip when its lip is home. The drawer's bottom slides over them, its sides past them.
 * @param bottomLevel from the rail up to the underside of the bottom, in mm
 * @returns complaints where a stop would meet the bottom, a side or a slip; places start in the drawer's entry
 */
export const stopsOf = (
  { number, fromSides, width, thickness, depth, behind: wished }: StopSpec,
  { space, stock, bottom, lip }: DrawerSpec,
  { width: box, depth: overall, lap, wall }: Sizes,
  bottomLevel: number,
): Result<Stops> => {
  const wrong: Complaint[] = [];
  const gap = space.kind === 'opening' ? space.fit.side : 0;
  const room = box + 2 * gap;
  const most = bottomLevel - CLEAR_OF_STOPS;
  if (thickness > most + EPSILON)
    wrong.push({
      at: ['stops', 'thickness'],
      says: say`stops that stand ${mm(thickness)} above the rail would meet the bottom and its groove, ${mm(bottomLevel)} above it; they may be at most ${atMost(Math.max(0, most))}`,
      ...(most >= LEAST_STOP_HEIGHT ? { hint: say`${atMost(most)}` } : {}),
      remedy: say`raise the groove (groove.offset)`,
    });
  const slip = bottom.hold.kind === 'slips' ? bottom.hold.width : 0;
  // Between the sides, as they are where the drawer is pushed to either side.
  const clear = 2 * gap + Math.max(wall.left, wall.right) + slip + CLEAR_OF_STOPS;
  const mostWide = (room - 2 * clear) / number;
  const from = number === 1 ? room / 2 : lengthOf(fromSides, room);
  const [least, last] = [clear + width / 2, (room - width) / 2];
  if (width > mostWide + EPSILON)
    wrong.push({
      at: ['stops', 'width'],
      says: say`${number === 1 ? 'a stop' : 'two stops'} of ${mm(width)} would meet the sides${slip > 0 ? ' or slips' : ''}: between them there is ${mm(Math.max(0, room - 2 * clear))}`,
      ...(mostWide > 0 && { hint: say`${atMost(mostWide)}` }),
    });
  else if (number === 2 && (from < least - EPSILON || from > last + EPSILON))
    wrong.push({
      at: ['stops', 'fromSides'],
      says:
        from < least
          ? say`a stop of ${mm(width)}, its middle ${mm(from)} from the side of the opening, would meet the drawer's ${slip > 0 ? 'slip' : 'side'}; it must be ${atLeast(least)} to ${atMost(last)} from there`
          : say`two stops of ${mm(width)}, their middles ${mm(from)} from the sides of the opening, would meet each other; they must be ${atLeast(least)} to ${atMost(last)} from there`,
      hint: from < least ? say`${atLeast(least)}` : say`${atMost(last)}`,
    });
  const home = homeOf({ stock, lip }, { lap });
  const behind = wished ?? home;
  const { rail = Number.POSITIVE_INFINITY } = space.kind === 'opening' ? space : {};
  // The front of a drawer with a lip never goes past home.
  const left =
    space.kind === 'opening' && lip === undefined ? depthLimit(space).left : Number.POSITIVE_INFINITY;
  const mostBehind = Math.min(home + left, rail - LEAST_STOP_DEPTH);
  const isMissed = behind > home + left + EPSILON;
  if (isMissed || behind > rail - EPSILON)
    wrong.push({
      at: ['stops', 'behind'],
      says: isMissed
        ? say`the drawer meets the cabinet's back, ${mm(left)} behind it, before its front meets stops ${mm(behind)} behind the rail's front edge`
        : say`stops ${mm(behind)} behind the rail's front edge would lie behind the rail, which is ${mm(rail)} wide`,
      ...(mostBehind >= 1 && { hint: say`${atMost(mostBehind)}` }),
      ...(home > mostBehind && { remedy: say`make the rail wider (cabinet: rails)` }),
    });
  if (behind + depth > overall + EPSILON)
    wrong.push({
      at: ['stops', 'depth'],
      says: say`stops of ${mm(depth)} from front to back, ${mm(behind)} behind the rail's front edge, would reach past the drawer's back`,
      ...(overall > behind && { hint: say`${atMost(overall - behind)}` }),
    });
  return wrong.length > 0
    ? refuse(...wrong)
    : accept({
        at: number === 1 ? [from] : [from, room - from],
        behind,
        width,
        thickness,
        depth,
        under: bottomLevel - thickness,
      });
};
