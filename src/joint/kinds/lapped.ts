import { EPSILON, roundUp } from '../../units/epsilon.ts';
import { nearestMark } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { MM_PER_INCH } from '../../units/unit.ts';
import { gauges } from '../gauges.ts';
import { LEAST_LAP, LEAST_SOCKET, THICKNESS_RANGE } from '../jointLimits.ts';
import { type Kind, NO_SHOULDER, type OwnLength } from './kind.ts';
import { pinEnd, pinFace, tailEnd, tailFace, tailsFromTheSide, withLap } from './surfaceMarks.ts';

/** A quarter of the pin board's thickness, to the half millimetre, at least 3; in inches to 1/32, at least 1/8 (common practice). */
export const defaultLap = (pinBoard: number, notation: Notation = 'mm'): number =>
  notation === 'mm'
    ? Math.max(3, Math.round(pinBoard / 2 + EPSILON) / 2)
    : Math.max(MM_PER_INCH / 8, nearestMark(pinBoard / 4, 'in/32'));

/** The pin board's lap. */
export const lap: OwnLength<'lap'> = {
  key: 'lap',
  word: 'lap',
  about: 'wood left in front of a lapped joint',
  on: 'pin',
  places: ['baseline', 'own'],
  usual: ({ pinBoard, notation }) => defaultLap(pinBoard, notation),
  range: ({ pinBoard }) => ({ least: LEAST_LAP, most: pinBoard - LEAST_SOCKET }),
  of: ({ pinBoard }) => pinBoard.lap,
};

/** The tails end behind a lap of the pin board, and show at the tail board's side only. */
export const lapped: Kind<'lapped', 'lap'> = {
  lengths: [lap],
  leastBoard: { tail: THICKNESS_RANGE.least, pin: LEAST_LAP + LEAST_SOCKET },
  sockets: 'stopped',
  mitred: false,
  wish: (given) => ({ kind: 'lapped', ...(given.lap !== undefined && { lap: given.lap }) }),
  check: () => [],
  shape: (given) => {
    const left = given.lap ?? lap.usual(given);
    return {
      depth: given.pinBoard - left,
      tailBoard: { thickness: given.tailBoard, lap: 0 },
      pinBoard: { thickness: given.pinBoard, lap: left },
      shoulder: NO_SHOULDER,
      setBack: left,
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
    tail: [tailFace(joint, 'inside'), tailEnd(joint), tailFace(joint, 'outside')],
    pin: [pinFace(joint, 'inside', 'base'), withLap(joint, pinEnd(joint))],
  }),
  gauges: (joint) => {
    const { tailBoard, pinBoardFace, pinBoardEnd } = gauges(joint);
    return [
      { name: 'tailBoard', board: 'tail', on: 'all round', from: 'end', length: tailBoard },
      { name: 'pinBoardFace', board: 'pin', on: 'inside face', from: 'end', length: pinBoardFace },
      { name: 'pinBoardEnd', board: 'pin', on: 'end', from: 'inside face', length: pinBoardEnd },
    ];
  },
  sideView: (joint) => {
    const view = tailsFromTheSide(joint, joint.pinBoard.lap);
    return { ...view, uprights: [view.reach, joint.pinBoard.lap] };
  },
  work: () => [],
};
