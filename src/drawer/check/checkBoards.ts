import { WIDTH_RANGE } from '../../joint/jointLimits.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { isInRange } from '../../units/range.ts';
import { LEAST_HELD, LEAST_INSIDE, LEAST_WALL } from '../drawerLimits.ts';
import { grooveTop, type Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { checkGroove } from './checkGroove.ts';

/** What is wrong with boards that cannot carry their grooves or hold the bottom, in a drawer that `checkSpace` accepts. */
export const checkBoards = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const { space, stock, joint, backJoint, groove, bottom, lip, backDrop, box } = spec;
  const { height, inside, backFrom, backHeight } = sizes;
  const top = grooveTop(groove);
  const wrong: Complaint[] = [];
  if (lip !== undefined && kindOf(joint).sockets !== 'stopped')
    wrong.push({
      at: ['joint', 'kind'],
      says: say`a front with a lip cannot have ${joint.kind} corners: its lip is the lap of a lapped joint`,
      hint: say`lapped`,
      remedy: say`remove the lip`,
    });
  else if (lip !== undefined && joint.shoulder !== undefined)
    wrong.push({
      at: ['joint', 'shoulder'],
      says: say`a front with a lip cannot have mitred shoulders: its lip extends over the corners`,
      remedy: say`remove the lip, or the shoulder`,
    });
  const proud = joint.proud ?? 0;
  if (Math.abs((backJoint.proud ?? 0) - proud) > EPSILON)
    wrong.push({
      at: ['back', 'joint', 'proud'],
      says: say`the sides stand ${mm(backJoint.proud ?? 0)} proud at the back and ${mm(proud)} at the front; unless both are equal the sides are not parallel`,
      hint: say`${mm(proud)}`,
    });

  const slips = bottom.hold.kind === 'slips' ? bottom.hold : undefined;
  wrong.push(...checkGroove(spec, sizes));
  const mostSlack = groove.depth - LEAST_HELD;
  if (bottom.slack > mostSlack + EPSILON)
    wrong.push({
      at: ['bottom', 'slack'],
      says: say`a slack of ${mm(bottom.slack)} at each side leaves too little of the bottom in grooves ${mm(groove.depth)} deep; at least ${atLeast(LEAST_HELD)} must be held`,
      ...(mostSlack >= 0
        ? { hint: say`${atMost(mostSlack)}` }
        : { remedy: say`make the groove deeper (groove.depth)` }),
    });
  if (stock.bottom.thickness > top + EPSILON)
    wrong.push({
      at: ['stock', 'bottom', 'thickness'],
      says: say`the bottom is ${mm(stock.bottom.thickness)} thick and would hang below the sides: the groove's upper edge lies ${mm(top)} up`,
      hint: say`${atMost(top)}`,
      remedy: say`raise the groove (groove.offset)`,
    });
  if (box === undefined && !isInRange(backHeight, WIDTH_RANGE)) {
    const mostDrop = backHeight + backDrop - WIDTH_RANGE.least;
    wrong.push({
      // Where no drop at all would leave enough, the drawer is too low, whatever its drop.
      at: mostDrop >= 0 ? ['back', 'drop'] : [space.kind, 'height'],
      says: say`no height is left for the back: of the sides' ${mm(height)} the groove takes ${mm(backFrom)} from below and the drop ${mm(backDrop)} from above; the back must be at least ${atLeast(WIDTH_RANGE.least)} high`,
      remedy:
        mostDrop >= 0
          ? say`make the drop smaller, or lower the groove (groove.offset)`
          : say`make the drawer higher, or lower the groove (groove.offset)`,
    });
  }
  if (slips !== undefined) {
    const least = top + LEAST_WALL;
    if (slips.height < least - EPSILON || slips.height > height + EPSILON)
      wrong.push({
        at: ['bottom', 'slips', 'height'],
        says: say`the slips are ${mm(slips.height)} high; above their groove they must keep ${mm(LEAST_WALL)}, and they may not rise above the sides, so it must be ${atLeast(least)} to ${atMost(height)}`,
        ...(least <= height
          ? { hint: say`${atLeast(least)}` }
          : { remedy: say`make the drawer higher, or lower the groove (groove.offset)` }),
      });
    const mostWidth = (inside.width - LEAST_INSIDE) / 2;
    if (slips.width > mostWidth + EPSILON)
      wrong.push({
        at: ['bottom', 'slips', 'width'],
        says: say`slips ${mm(slips.width)} wide leave no width for the bottom between sides ${mm(inside.width)} apart; they may be at most ${atMost(mostWidth)}`,
        ...(mostWidth > 0 ? { hint: say`${atMost(mostWidth)}` } : {}),
      });
  }
  return wrong;
};
