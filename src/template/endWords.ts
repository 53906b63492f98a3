import type { TextMark } from '../drawing/drawing.ts';
import { textWidth } from '../drawing/textWidth.ts';
import type { Interval, Joint } from '../joint/joint.ts';
import type { Board } from './band.ts';
import type { Laid } from './laid.ts';
import { SMALL } from './lettering.ts';
import { BESIDE, WORD_ROOM, wordAt } from './word.ts';

/** Words on a board's end between two heights, where they have room: its name, in a tail or a socket, and the lap's. */
export const endWords = (
  { tails }: Joint,
  board: Board,
  { band, at }: Laid,
  [from, to]: Interval,
): TextMark[] => {
  const middle = (from + to) / 2;
  const lap = band.width - band.reach;
  const name = middles(
    tails.map(({ tip, base }): Interval => {
      const [a, b] = board === 'tail' ? tip : base;
      return [Math.max(a, from), Math.min(b, to)];
    }),
    lengthOf('END', 'bold'),
  ).sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
  return [
    ...(name === undefined || band.reach < WORD_ROOM
      ? []
      : [wordAt('END', 'bold', 90, [at(band.reach / 2), name])]),
    ...(lap < WORD_ROOM
      ? []
      : middles([[from, to]], lengthOf('lap', 'regular')).map((y) =>
          wordAt('lap', 'regular', 90, [at(band.reach + lap / 2), y]),
        )),
  ];
};

const lengthOf = (text: string, weight: TextMark['weight']): number =>
  textWidth(text, SMALL, weight) + 2 * BESIDE;

/** The middles of those rooms that are long enough. */
const middles = (rooms: readonly Interval[], length: number): number[] =>
  rooms.filter(([a, b]) => b - a >= length).map(([a, b]) => (a + b) / 2);
