import { LEAST_SOCKET, WIDTH_RANGE } from '../../joint/jointLimits.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { checkRange, isInRange } from '../../units/range.ts';
import { GROOVE_RANGE, LEAST_HELD, LEAST_INSIDE, LEAST_WALL } from '../drawerLimits.ts';
import { frontCorner, type Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { depthUnderLaps, LEAST_UNDER_LAP } from '../groove/depthUnderLaps.ts';
import { isInShoulder } from '../groove/hidingChoices.ts';
import { LEAST_STOP, latestStop } from '../groove/latestStop.ts';

/** What is wrong with boards that cannot carry their grooves or hold the bottom, in a drawer that `checkSpace` accepts. */
export const checkBoards = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const { space, stock, joint, backJoint, groove, bottom, lip, backDrop } = spec;
  const { height, inside, backFrom, backHeight } = sizes;
  const wall = Math.min(sizes.wall.left, sizes.wall.right);
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
  const grooved =
    slips === undefined
      ? { board: 'the sides', thickness: wall }
      : { board: 'the slips', thickness: slips.width };
  const underLaps = depthUnderLaps(spec);
  const covered = slips === undefined ? underLaps?.side : undefined;
  const mostInSide = covered ?? grooved.thickness - LEAST_WALL;
  const { shape } = frontCorner(spec, sizes);
  // What is mitred right through has no lap and no socket.
  const lap = isInShoulder(shape, groove) ? 0 : shape.pinBoard.lap;
  // A lap that leaves no socket is complained of as such.
  const tooThick = lap > stock.front.thickness - LEAST_SOCKET + EPSILON;
  const mostInFront =
    underLaps?.front ?? stock.front.thickness - (tooThick ? LEAST_WALL : Math.max(lap, LEAST_WALL));
  const mostDepth = Math.min(mostInSide, mostInFront);
  if (groove.depth > mostDepth + EPSILON)
    wrong.push({
      at: ['groove', 'depth'],
      says:
        covered === mostDepth || underLaps?.front === mostDepth
          ? say`the groove is ${mm(groove.depth)} deep; at the front corners it must stay ${mm(LEAST_UNDER_LAP)} under the lap of ${covered === mostDepth ? 'the sides' : 'the front'}, so it may be at most ${atMost(Math.max(0, mostDepth))}`
          : mostInSide <= mostInFront
            ? say`the groove is ${mm(groove.depth)} deep; ${grooved.board}, ${mm(grooved.thickness)} thick, must keep ${mm(LEAST_WALL)} behind it, so it may be at most ${atMost(Math.max(0, mostInSide))}`
            : lap >= LEAST_WALL
              ? say`the groove is ${mm(groove.depth)} deep; at the front's ends it must stay within the sockets, so it may be at most ${atMost(Math.max(0, mostInFront))}`
              : say`the groove is ${mm(groove.depth)} deep; the front, ${mm(stock.front.thickness)} thick, must keep ${mm(LEAST_WALL)} before it, so it may be at most ${atMost(Math.max(0, mostInFront))}`,
      // Less may be less than any mark of a rule in a groove's range.
      ...(mostDepth >= 2 * GROOVE_RANGE.least && { hint: say`${atMost(mostDepth)}` }),
    });
  wrong.push(...checkStop(spec, sizes));
  const mostSlack = groove.depth - LEAST_HELD;
  if (bottom.slack > mostSlack + EPSILON)
    wrong.push({
      at: ['bottom', 'slack'],
      says: say`a slack of ${mm(bottom.slack)} at each side leaves too little of the bottom in grooves ${mm(groove.depth)} deep; at least ${atLeast(LEAST_HELD)} must be held`,
      ...(mostSlack >= 0
        ? { hint: say`${atMost(mostSlack)}` }
        : { remedy: say`make the groove deeper (groove.depth)` }),
    });
  if (stock.bottom.thickness > backFrom + EPSILON)
    wrong.push({
      at: ['stock', 'bottom', 'thickness'],
      says: say`the bottom is ${mm(stock.bottom.thickness)} thick and would hang below the sides: the groove's upper edge lies ${mm(backFrom)} up`,
      hint: say`${atMost(backFrom)}`,
      remedy: say`raise the groove (groove.offset)`,
    });
  if (!isInRange(backHeight, WIDTH_RANGE)) {
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
    const least = backFrom + LEAST_WALL;
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

/** A groove in the sides that stops short of their front ends. */
const checkStop = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const { groove, bottom, joint } = spec;
  const at = ['groove', 'stopped'];
  if (groove.stopped === undefined) return [];
  if (bottom.hold.kind === 'slips')
    return [
      {
        at,
        says: say`slips carry the groove, and end at the front's inside face: no groove reaches the sides' ends`,
        hint: say`none`,
      },
    ];
  if (kindOf(joint).sockets === 'closed')
    return [
      {
        at,
        says: say`the laps of a ${joint.kind} joint cover the groove's ends: it need not stop short of them`,
        hint: say`none`,
      },
    ];
  if (isInShoulder(frontCorner(spec, sizes).shape, groove))
    return [
      {
        at,
        says: say`the mitred shoulder covers the groove's ends: it need not stop short of them`,
        hint: say`none`,
      },
    ];
  const most = latestStop(spec, sizes.lap);
  return most < LEAST_STOP - EPSILON
    ? [
        {
          at,
          says: say`the front's groove, ${mm(groove.depth)} deep, comes within ${mm(Math.max(0, most))} of the sides' front ends: theirs cannot stop ${mm(LEAST_STOP)} short of them`,
          hint: say`none`,
          remedy: say`make the groove less deep`,
        },
      ]
    : checkRange(
        at,
        "from the sides' front ends to their groove",
        groove.stopped,
        { least: LEAST_STOP, most },
        say`auto`,
      );
};
