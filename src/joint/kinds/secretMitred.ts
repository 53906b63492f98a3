import { EPSILON, roundUp } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { gauges } from '../gauges.ts';
import { type Joint, pinLength } from '../joint.ts';
import { LEAST_SOCKET } from '../jointLimits.ts';
import { adviseShortPins, BOTH_LAPPED, checkProud, tailLap } from './closedJoint.ts';
import type { GivenBoards, Kind, OwnLength } from './kind.ts';
import { lap } from './lap.ts';
import { angle, checkMitre, inDegrees, mitreOf } from './mitredShoulder.ts';
import { pinEnd, pinFace, tailEnd, tailFace, withShoulders } from './surfaceMarks.ts';

/** The pin board's lap; one that its board cannot keep is complained of by itself alone. */
const lapKept = (given: GivenBoards): number =>
  Math.min(given.lap ?? lap.usual(given), given.pinBoard - LEAST_SOCKET);

/** As wide as the pin board's lap, so that the laps' mitre is one of 45 degrees. */
const sameLap: OwnLength<'tailLap'> = { ...tailLap, usual: lapKept };

/**
 * Laps on both boards that meet in a mitre, and edges that are mitred right through: closed, it shows no end grain on any
 * outer face (handbooks of joinery, from memory).
 */
export const secretMitred: Kind<'secret-mitred', 'lap' | 'tailLap'> = {
  lengths: [lap, sameLap],
  leastBoard: BOTH_LAPPED,
  sockets: 'closed',
  shoulders: 'always',
  wish: (given) => ({
    kind: 'secret-mitred',
    ...(given.lap !== undefined && { lap: given.lap }),
    ...(given.tailLap !== undefined && { tailLap: given.tailLap }),
  }),
  check: (given) => [
    ...checkProud('secret-mitred', given),
    ...checkMitre(given),
    ...(given.shoulder === undefined || given.shoulder === 'both'
      ? []
      : [
          {
            at: ['shoulder'],
            says: say`a secret-mitred joint has its shoulders at both edges, not only at the ${given.shoulder} one`,
            hint: say`both`,
          },
        ]),
  ],
  shape: (given) => {
    const left = given.lap ?? lap.usual(given);
    const shoulder = given.shoulderWidth ?? left;
    return {
      depth: given.pinBoard - left,
      tailBoard: { thickness: given.tailBoard, lap: given.tailLap ?? sameLap.usual(given) },
      pinBoard: { thickness: given.pinBoard, lap: left },
      shoulder: { lower: shoulder, upper: shoulder },
      setBack: 0,
      mitre: mitreOf(given),
    };
  },
  noDeeper: ({ pinBoard }, depth) => ({
    wish: { kind: 'secret-mitred', pinBoard, lap: roundUp(pinBoard - depth, 10) },
    words: say`make the lap at least ${atLeast(pinBoard - depth)}`,
  }),
  advise: adviseShortPins,
  marks: (joint) => ({
    tail: [
      withShoulders(joint, tailFace(joint, 'inside')),
      withShoulders(joint, { ...tailEnd(joint), rebated: true }),
    ],
    pin: [
      withShoulders(joint, pinFace(joint, 'inside', 'base')),
      withShoulders(joint, { ...pinEnd(joint), rebated: true }),
    ],
  }),
  gauges: (joint) => {
    const { tailBoard, pinBoardFace, pinBoardEnd } = gauges(joint);
    const from = { on: 'inside face', from: 'end' } as const;
    return [
      { name: 'pinBoardFace', board: 'pin', ...from, length: pinBoardFace },
      { name: 'pinBoardEnd', board: 'pin', on: 'end', from: 'inside face', length: pinBoardEnd },
      { name: 'pinBoardRebate', board: 'pin', ...from, line: 'rebate', length: joint.tailBoard.lap },
      { name: 'tailBoard', board: 'tail', ...from, length: tailBoard },
      { name: 'tailBoardEnd', board: 'tail', on: 'end', from: 'inside face', length: pinLength(joint) },
      { name: 'tailBoardRebate', board: 'tail', ...from, line: 'rebate', length: joint.pinBoard.lap },
    ];
  },
  sideView: ({ width }) => ({ reach: 0, tails: [], uprights: [], span: [0, width] }),
  work: (joint, { tail, pin, routed }) => {
    const { tailBoard, pinBoard, shoulder } = joint;
    const atLaps = inDegrees(tailBoard.lap, pinBoard.lap);
    return [
      say`Gauge both inside faces and ends. Knife the mitre on every edge, from the inside corner to the outside corner. Put no line on an outside face.`,
      say`Rebate the ${pin}’s end, ${mm(tailBoard.lap)} long and ${mm(joint.depth)} deep from the inside face; the ${tail}’s, ${mm(pinBoard.lap)} long and ${mm(pinLength(joint))} deep.`,
      ...(rebatesMeetMitre(joint)
        ? []
        : [
            say`Stop both rebates ${mm(shoulder.lower)} short of the edges: the mitres there need that wood. Cut the template away there.`,
          ]),
      ...(routed ? [] : [say`Cut the pins first: saw at a slant to the lines, and chop the sockets.`]),
      say`Stand the pins on the ${tail}’s inside face. Scribe the tails round them, or use the templates. Saw and chop the ${tail}.`,
      say`Saw the shoulders’ mitres, ${mm(shoulder.lower)} in from both edges, a shaving outside the line.`,
      say`Mitre the laps from their inside corner to the outside corner: plane them along a shooting block of ${angle(atLaps)}, fixed at the line. Leave a shaving. Pare the shoulders along ${Math.abs(atLaps - (joint.mitre?.degrees ?? 0)) < 0.01 ? say`the same block` : say`one of ${angle(joint.mitre?.degrees ?? 0)}`}.`,
      say`Fit in three stages: press a third of the way, part the boards, pare what shines, repeat. The closed joint cannot be seen.`,
      say`While a mitre stays open outside, pare inside: relieve the hidden inner edges by a hair. Never touch the outer corner.`,
      say`Hollow every floor by a hair: glue needs room. Size the mitres’ end grain with thin glue first.`,
    ];
  },
  inCarcase: say`In a carcase no lap shows, at the sides or the top. Let the sides carry the tails where it hangs, or bears a load below: the joint parts along the pin board.`,
};

/** Whether the rebates' inside corner lies on the mitre, so that rebates run right through take nothing that it needs. */
const rebatesMeetMitre = ({ tailBoard, pinBoard }: Joint): boolean =>
  Math.abs(tailBoard.lap * pinBoard.thickness - pinBoard.lap * tailBoard.thickness) < EPSILON;
