import { roundDown } from '../../units/epsilon.ts';
import { atMost, say } from '../../units/phrase.ts';
import { gauges } from '../gauges.ts';
import { THICKNESS_RANGE } from '../jointLimits.ts';
import type { Kind } from './kind.ts';
import { checkShoulders, defaultShoulder, shoulderWork, wishedShoulders } from './mitredShoulder.ts';
import { smallPinGauges, smallPinWork, withSmallPins, withSmallSockets } from './smallPinMarks.ts';
import { pinEnd, pinFace, tailEnd, tailFace, tailsFromTheSide, withShoulders } from './surfaceMarks.ts';

/** The tails run right through the pin board: their ends show at its outside face. */
export const through: Kind<'through', never> = {
  lengths: [],
  leastBoard: { tail: THICKNESS_RANGE.least, pin: THICKNESS_RANGE.least },
  sockets: 'open',
  shoulders: 'wished',
  wish: () => ({ kind: 'through' }),
  check: checkShoulders,
  shape: (given) => ({
    depth: given.pinBoard,
    tailBoard: { thickness: given.tailBoard, lap: 0 },
    pinBoard: { thickness: given.pinBoard, lap: 0 },
    ...wishedShoulders(given, defaultShoulder(given)),
    setBack: 0,
  }),
  noDeeper: (_, depth) => ({
    wish: { kind: 'through', pinBoard: roundDown(depth, 10) },
    words: say`take a pin board of at most ${atMost(depth)}`,
  }),
  advise: () => [],
  marks: (joint) => ({
    tail: [tailFace(joint, 'inside'), tailEnd(joint), tailFace(joint, 'outside')].map((marks) =>
      withShoulders(joint, withSmallSockets(joint, marks)),
    ),
    pin: [pinFace(joint, 'inside', 'base'), pinEnd(joint), pinFace(joint, 'outside', 'tip')].map((marks) =>
      withShoulders(joint, withSmallPins(joint, marks)),
    ),
  }),
  gauges: (joint) => {
    const { tailBoard, pinBoardFace } = gauges(joint);
    return [
      {
        name: 'tailBoard',
        board: 'tail',
        on: joint.mitre ? 'both faces' : 'all round',
        from: 'end',
        length: tailBoard,
      },
      { name: 'pinBoardFace', board: 'pin', on: 'both faces', from: 'end', length: pinBoardFace },
      ...smallPinGauges(joint),
    ];
  },
  sideView: (joint) => {
    const view = tailsFromTheSide(joint, 0);
    return { ...view, uprights: [view.reach] };
  },
  work: (joint, names) => shoulderWork(joint, names, smallPinWork(joint, names)),
};
