import { roundUp } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { gauges } from '../gauges.ts';
import { pinLength } from '../joint.ts';
import { adviseShortPins, BOTH_LAPPED, checkProud, tailLap } from './closedJoint.ts';
import type { Given, Kind } from './kind.ts';
import { lap } from './lap.ts';
import { NO_SHOULDER } from './mitredShoulder.ts';
import { pinEnd, pinFace, tailEnd, tailFace, withLap } from './surfaceMarks.ts';

const checkNoShoulder = ({ shoulder }: Given<never>) =>
  shoulder === undefined
    ? []
    : [
        {
          at: ['shoulder'],
          says: say`a double-lapped joint has no mitred shoulder`,
          remedy: say`choose a through or lapped joint, or remove it`,
        },
      ];

/**
 * Tails and pins end behind laps on both boards. The pin board's lap runs past to the tail board's outside face, where a
 * strip of its end grain shows, and nothing else of the joint (handbooks of joinery, from memory).
 */
export const doubleLapped: Kind<'double-lapped', 'lap' | 'tailLap'> = {
  lengths: [lap, tailLap],
  leastBoard: BOTH_LAPPED,
  sockets: 'closed',
  shoulders: 'never',
  wish: (given) => ({
    kind: 'double-lapped',
    ...(given.lap !== undefined && { lap: given.lap }),
    ...(given.tailLap !== undefined && { tailLap: given.tailLap }),
  }),
  check: (given) => [...checkProud('double-lapped', given), ...checkNoShoulder(given)],
  shape: (given) => {
    const left = given.lap ?? lap.usual(given);
    return {
      depth: given.pinBoard - left,
      tailBoard: { thickness: given.tailBoard, lap: given.tailLap ?? tailLap.usual(given) },
      pinBoard: { thickness: given.pinBoard, lap: left },
      shoulder: NO_SHOULDER,
      setBack: left,
    };
  },
  noDeeper: ({ pinBoard }, depth) => ({
    wish: { kind: 'double-lapped', pinBoard, lap: roundUp(pinBoard - depth, 10) },
    words: say`make the lap at least ${atLeast(pinBoard - depth)}`,
  }),
  advise: adviseShortPins,
  marks: (joint) => ({
    tail: [tailFace(joint, 'inside'), withLap(joint, tailEnd(joint))],
    pin: [pinFace(joint, 'inside', 'base'), { ...pinEnd(joint), rebated: true }],
  }),
  gauges: (joint) => {
    const { tailBoard, pinBoardFace, pinBoardEnd } = gauges(joint);
    return [
      { name: 'pinBoardFace', board: 'pin', on: 'inside face', from: 'end', length: pinBoardFace },
      { name: 'pinBoardEnd', board: 'pin', on: 'end', from: 'inside face', length: pinBoardEnd },
      {
        name: 'pinBoardRebate',
        board: 'pin',
        on: 'inside face',
        line: 'rebate',
        from: 'end',
        length: joint.tailBoard.lap,
      },
      { name: 'tailBoard', board: 'tail', on: 'inside face and edges', from: 'end', length: tailBoard },
      { name: 'tailBoardEnd', board: 'tail', on: 'end', from: 'inside face', length: pinLength(joint) },
    ];
  },
  sideView: ({ pinBoard, width }) => ({
    reach: pinBoard.lap,
    tails: [],
    uprights: [pinBoard.lap],
    span: [0, width],
  }),
  work: (joint, { tail, pin, routed }) => [
    say`Gauge the ${pin}. Rebate its end from the inside face, ${mm(joint.tailBoard.lap)} long and ${mm(joint.depth)} deep.`,
    say`Gauge the ${tail}’s inside face, edges and end. Put no line on its outside face.`,
    ...(routed ? [] : [say`Cut the pins first: saw at a slant to the lines, and chop the sockets.`]),
    say`Stand the pins on the ${tail}’s inside face. Scribe the tails round them, or use the templates.`,
    say`Saw the ${tail} at a slant to the line on its end. Chop between the tails, down to its lap.`,
    say`Fit in three stages: press a third of the way, part the boards, pare what shines, repeat. The closed joint cannot be seen.`,
    say`Ease the hidden inner arrises, and hollow every floor by a hair: glue needs room. Leave both laps’ edges sharp.`,
  ],
  inCarcase: say`In a carcase, tails on the sides show the strip of end grain at the sides; tails on the top show it above. Choose the face that is covered, or not seen.`,
};
