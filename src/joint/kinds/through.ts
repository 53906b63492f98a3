import { roundDown } from '../../units/epsilon.ts';
import { atMost, say } from '../../units/phrase.ts';
import { gauges } from '../gauges.ts';
import { THICKNESS_RANGE } from '../jointLimits.ts';
import { type Kind, NO_SHOULDER } from './kind.ts';
import { pinEnd, pinFace, tailEnd, tailFace, tailsFromTheSide } from './surfaceMarks.ts';

/** The tails run right through the pin board: their ends show at its outside face. */
export const through: Kind<'through', never> = {
  lengths: [],
  leastBoard: { tail: THICKNESS_RANGE.least, pin: THICKNESS_RANGE.least },
  sockets: 'open',
  mitred: false,
  wish: () => ({ kind: 'through' }),
  check: () => [],
  shape: ({ tailBoard, pinBoard }) => ({
    depth: pinBoard,
    tailBoard: { thickness: tailBoard, lap: 0 },
    pinBoard: { thickness: pinBoard, lap: 0 },
    shoulder: NO_SHOULDER,
    setBack: 0,
  }),
  noDeeper: (_, depth) => ({
    wish: { kind: 'through', pinBoard: roundDown(depth, 10) },
    words: say`take a pin board of at most ${atMost(depth)}`,
  }),
  advise: () => [],
  marks: (joint) => ({
    tail: [tailFace(joint, 'inside'), tailEnd(joint), tailFace(joint, 'outside')],
    pin: [pinFace(joint, 'inside', 'base'), pinEnd(joint), pinFace(joint, 'outside', 'tip')],
  }),
  gauges: (joint) => {
    const { tailBoard, pinBoardFace } = gauges(joint);
    return [
      { name: 'tailBoard', board: 'tail', on: 'all round', from: 'end', length: tailBoard },
      { name: 'pinBoardFace', board: 'pin', on: 'both faces', from: 'end', length: pinBoardFace },
    ];
  },
  sideView: (joint) => {
    const view = tailsFromTheSide(joint, 0);
    return { ...view, uprights: [view.reach] };
  },
  work: () => [],
};
