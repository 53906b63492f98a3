import type { TextMark } from '../../drawing/drawing.ts';
import { textWidth } from '../../drawing/textWidth.ts';
import { type Interval, type Joint, type JointBoard, tailParts } from '../../joint/joint.ts';
import { SMALL } from './lettering.ts';
import type { PlacedBand } from './placedBand.ts';
import { centredWord, WORD_MARGIN, WORD_ROOM, wordInRooms } from './word.ts';

const LAP = textWidth('lap', SMALL, 'regular') + 2 * WORD_MARGIN;

/** Whether a lid is sawn off along a pin, whose lines leave no room for a word. */
const isSawn = ({ sawCut }: Joint, [from, to]: Interval): boolean =>
  sawCut !== undefined && sawCut[0] > from && sawCut[1] < to;

/** Names of the end grain and of the lap between two heights, where they fit; `END` is in a tail or a socket, or else in a pin. */
export const endWords = (joint: Joint, board: JointBoard, end: PlacedBand, part: Interval): TextMark[] => {
  const { band, at } = end;
  const [from, to] = part;
  const lap = band.width - band.reach;
  const inTail = wordInRooms(tailParts(joint, board === 'tail' ? 'tip' : 'base'), 'END', end, part);
  const name =
    inTail.length > 0
      ? inTail
      : wordInRooms(
          joint.pins.map(({ narrow }) => narrow).filter((pin) => !isSawn(joint, pin)),
          'END',
          end,
          part,
        );
  return [
    ...name,
    ...(lap >= WORD_ROOM && to - from >= LAP
      ? [centredWord('lap', 'regular', 90, [at(band.reach + lap / 2), (from + to) / 2])]
      : []),
  ];
};
