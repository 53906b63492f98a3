import { LEAST_SOCKET } from '../../joint/jointLimits.ts';
import { kindOf } from '../../joint/kinds/kinds.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { checkRange } from '../../units/range.ts';
import { GROOVE_RANGE, LEAST_WALL } from '../drawerLimits.ts';
import { frontCorner, type GroovedEnd, groovedEnds, type Sizes } from '../drawerSizes.ts';
import type { DrawerSpec, Groove } from '../drawerSpec.ts';
import { depthUnderLaps, LEAST_UNDER_LAP } from '../groove/depthUnderLaps.ts';
import { comesOut, isInShoulder } from '../groove/hidingChoices.ts';
import { LEAST_STOP, latestStop } from '../groove/latestStop.ts';

/** What is wrong with a groove that its boards cannot carry, or whose ends would show, in a drawer that `checkSpace` accepts. */
export const checkGroove = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const limits = groovedEnds(spec).map((end) => depthLimit(end, sizes));
  return [...checkDepth(spec.groove, limits), ...checkStop(spec)];
};

/** The most that a groove's depth may be at one end, and what is told of a deeper one. */
interface DepthLimit {
  readonly most: number;
  readonly because: Phrase;
}

const checkDepth = ({ depth }: Groove, limits: readonly DepthLimit[]): Complaint[] => {
  const [least] = limits.toSorted((a, b) => a.most - b.most);
  if (least === undefined || !(depth > least.most + EPSILON)) return [];
  const { most, because } = least;
  return [
    {
      at: ['groove', 'depth'],
      says: say`the groove is ${mm(depth)} deep; ${because}, so it may be at most ${atMost(Math.max(0, most))}`,
      // Less may be less than any mark of a rule in a groove's range.
      ...(most >= 2 * GROOVE_RANGE.least && { hint: say`${atMost(most)}` }),
    },
  ];
};

const depthLimit = ({ spec, end }: GroovedEnd, { wall }: Sizes): DepthLimit => {
  const { stock, groove, bottom, box } = spec;
  const slips = bottom.hold.kind === 'slips' ? bottom.hold : undefined;
  const grooved =
    slips === undefined
      ? { board: 'the sides', thickness: Math.min(wall.left, wall.right) }
      : { board: 'the slips', thickness: slips.width };
  const underLaps = depthUnderLaps(spec);
  const covered = slips === undefined ? underLaps?.side : undefined;
  const mostInSide = covered ?? grooved.thickness - LEAST_WALL;
  const { shape } = frontCorner(spec);
  // What is mitred right through has no lap and no socket.
  const lap = isInShoulder(shape, groove) ? 0 : shape.pinBoard.lap;
  // A lap that leaves no socket is complained of as such.
  const tooThick = lap > stock.front.thickness - LEAST_SOCKET + EPSILON;
  const mostInFront =
    underLaps?.front ?? stock.front.thickness - (tooThick ? LEAST_WALL : Math.max(lap, LEAST_WALL));
  const most = Math.min(mostInSide, mostInFront);
  return {
    most,
    because:
      covered === most || underLaps?.front === most
        ? say`at the ${box === undefined ? 'front ' : ''}corners it must stay ${mm(LEAST_UNDER_LAP)} under the lap of ${covered === most ? 'the sides' : `the ${end}`}`
        : mostInSide <= mostInFront
          ? say`${grooved.board}, ${mm(grooved.thickness)} thick, must keep ${mm(LEAST_WALL)} behind it`
          : lap >= LEAST_WALL
            ? say`at the ${end}'s ends it must stay within the sockets`
            : say`the ${end}, ${mm(stock.front.thickness)} thick, must keep ${mm(LEAST_WALL)} before it`,
  };
};

/** A groove in the sides that stops short of their front ends. */
const checkStop = (spec: DrawerSpec): Complaint[] => {
  const { groove, bottom, joint, box } = spec;
  const at = ['groove', 'stopped'];
  if (groove.stopped === undefined)
    return box === undefined || !comesOut(spec)
      ? []
      : [
          {
            at,
            says: groove.rebate
              ? say`a rebate that runs through the pins of front and back shows at the corners of a ${joint.kind} joint`
              : say`a groove that runs through the sides' tails shows at the corners of a ${joint.kind} joint`,
            hint: say`auto`,
            remedy: say`choose corners with ${groove.rebate ? 'laps on both boards' : 'a lap'}, or a mitred shoulder (joint.shoulder)`,
          },
        ];
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
  if (isInShoulder(frontCorner(spec).shape, groove))
    return [
      {
        at,
        says: say`the mitred shoulder covers the groove's ends: it need not stop short of them`,
        hint: say`none`,
      },
    ];
  const ends =
    box === undefined
      ? "the sides' front ends"
      : groove.rebate
        ? 'the ends of front and back'
        : "the sides' ends";
  const cut = groove.rebate ? 'rebate' : 'groove';
  const most = latestStop(spec);
  return most < LEAST_STOP - EPSILON
    ? [
        {
          at,
          says: say`the ${cut} in the ${groove.rebate ? 'sides' : box === undefined ? 'front' : 'front or the back'}, ${mm(groove.depth)} deep, comes within ${mm(Math.max(0, most))} of ${ends}: theirs cannot stop ${mm(LEAST_STOP)} short of them`,
          ...(box === undefined && { hint: say`none` }),
          remedy: say`make the ${cut} less deep`,
        },
      ]
    : checkRange(at, `from ${ends} to their ${cut}`, groove.stopped, { least: LEAST_STOP, most }, say`auto`);
};
