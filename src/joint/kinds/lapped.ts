import { EPSILON, roundUp } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { gauges } from '../gauges.ts';
import type { Joint } from '../joint.ts';
import { LEAST_LAP, LEAST_SOCKET, THICKNESS_RANGE } from '../jointLimits.ts';
import type { Kind } from './kind.ts';
import { lap } from './lap.ts';
import { checkShoulders, defaultShoulder, shoulderWork, wishedShoulders } from './mitredShoulder.ts';
import {
  allCutBack,
  pinEnd,
  pinFace,
  tailEnd,
  tailFace,
  tailsFromTheSide,
  withLap,
  withShoulders,
} from './surfaceMarks.ts';

/** The tails end behind a lap of the pin board, and show at the tail board's side only. */
export const lapped: Kind<'lapped', 'lap'> = {
  lengths: [lap],
  leastBoard: { tail: THICKNESS_RANGE.least, pin: LEAST_LAP + LEAST_SOCKET },
  sockets: 'stopped',
  shoulders: 'wished',
  wish: (given) => ({ kind: 'lapped', ...(given.lap !== undefined && { lap: given.lap }) }),
  check: checkShoulders,
  shape: (given) => {
    const left = given.lap ?? lap.usual(given);
    const shoulders = wishedShoulders(given, defaultShoulder(given, left));
    return {
      depth: given.pinBoard - left,
      tailBoard: { thickness: given.tailBoard, lap: 0 },
      pinBoard: { thickness: given.pinBoard, lap: left },
      ...shoulders,
      // A shoulder reaches the outside corner; its tails are cut back to behind the lap.
      setBack: shoulders.mitre === undefined ? left : 0,
    };
  },
  noDeeper: ({ pinBoard }, depth) => ({
    wish: { kind: 'lapped', pinBoard, lap: roundUp(pinBoard - depth, 10) },
    words: say`make the lap at least ${atLeast(pinBoard - depth)}`,
  }),
  advise: ({ tailBoard, pinBoard }) =>
    pinBoard < tailBoard - EPSILON
      ? [
          {
            at: ['pinBoard'],
            says: say`a pin board of ${mm(pinBoard)} is thinner than its tail board of ${mm(tailBoard)}: are the two swapped?`,
          },
        ]
      : [],
  marks: (joint) => ({
    tail: [
      withShoulders(joint, tailFace(joint, 'inside', cutBack(joint))),
      withShoulders(joint, cutBack(joint) > 0 ? allCutBack(joint) : tailEnd(joint)),
      withShoulders(joint, tailFace(joint, 'outside', cutBack(joint))),
    ],
    pin: [
      withShoulders(joint, pinFace(joint, 'inside', 'base')),
      withShoulders(joint, withLap(joint, pinEnd(joint)), joint.pinBoard.thickness),
    ],
  }),
  gauges: (joint) => {
    const { tailBoard, pinBoardFace, pinBoardEnd } = gauges(joint);
    return [
      {
        name: 'tailBoard',
        board: 'tail',
        on: joint.mitre ? 'both faces' : 'all round',
        from: 'end',
        length: tailBoard,
      },
      ...(cutBack(joint) > 0
        ? [
            {
              name: 'tailBoardCutBack',
              board: 'tail',
              on: 'both faces',
              line: 'cut back',
              from: 'end',
              length: cutBack(joint),
            } as const,
          ]
        : []),
      { name: 'pinBoardFace', board: 'pin', on: 'inside face', from: 'end', length: pinBoardFace },
      { name: 'pinBoardEnd', board: 'pin', on: 'end', from: 'inside face', length: pinBoardEnd },
    ];
  },
  sideView: (joint) => {
    const view = tailsFromTheSide(joint, joint.pinBoard.lap);
    return { ...view, uprights: [view.reach, joint.pinBoard.lap] };
  },
  work: (joint, names) =>
    joint.mitre === undefined
      ? []
      : shoulderWork(joint, names, {
          afterGauging: [
            say`Saw the ${names.tail}’s end back ${mm(cutBack(joint))} between the shoulders only: the tails end there, behind the lap.`,
          ],
        }),
  inCarcase: say`In a carcase, tails on the top show above, and the laps face the sides. Tails on the sides show there, and the lap faces up. Let the lap face where it is seen: at the sides of a tall chest, above on a low one.`,
};

/** How far behind the tail board's end its tails end: the lap, where a shoulder makes the board full length. */
const cutBack = ({ pinBoard, setBack }: Joint): number => pinBoard.lap - setBack;
