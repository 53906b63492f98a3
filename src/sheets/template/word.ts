import type { Box, Point, TextMark } from '../../drawing/drawing.ts';
import { PENS } from '../../drawing/pens.ts';
import { textBox } from '../../drawing/textBox.ts';
import { ASCENT, DESCENT, textWidth } from '../../drawing/textWidth.ts';
import type { Interval } from '../../joint/joint.ts';
import { AIR, SMALL } from './lettering.ts';
import type { PlacedBand } from './placedBand.ts';

/** Width kept free at both ends of a word between two lines, mm. */
export const WORD_MARGIN = 0.8;

/** Least height between two lines for a word, mm. */
export const WORD_ROOM = (ASCENT + DESCENT) * SMALL + 2 * AIR;

/** A word of the small size, centred on a point. */
export const centredWord = (
  text: string,
  weight: TextMark['weight'],
  turn: 0 | 90,
  [x, y]: Point,
): TextMark => {
  const drop = ((ASCENT - DESCENT) / 2) * SMALL;
  const at: Point = turn === 0 ? [x, y - drop] : [x + drop, y];
  return { kind: 'text', role: 'label', text, at, size: SMALL, turn, anchor: 'middle', weight };
};

/**
 * A bold word on the joint's part of a band, in one of several rooms between two heights: upright or, where no room is
 * high enough, level; in the room nearest the middle that holds it.
 * @param part heights that the word must stay between, mm
 * @param across distances from the arris that it must stay between, in the middle of which it stands, mm
 */
export const wordInRooms = (
  rooms: readonly Interval[],
  text: string,
  { band: { reach }, at }: PlacedBand,
  [from, to]: Interval,
  [near, far]: Interval = [0, reach],
): TextMark[] => {
  const offMiddle = ([low, high]: Interval) => Math.abs(low + high - from - to);
  const within = rooms
    .map(([low, high]): Interval => [Math.max(low, from), Math.min(high, to)])
    .sort((a, b) => offMiddle(a) - offMiddle(b));
  const length = textWidth(text, SMALL, 'bold') + 2 * WORD_MARGIN;
  const upright = within.find(([low, high]) => far - near >= WORD_ROOM && high - low >= length);
  // The board's edge is a bold line.
  const level = within.find(
    ([low, high]) => far - near >= length && high - low >= WORD_ROOM + (low === 0 ? PENS.edge.width : 0),
  );
  const room = upright ?? level;
  return room === undefined
    ? []
    : [centredWord(text, 'bold', room === upright ? 90 : 0, [at((near + far) / 2), (room[0] + room[1]) / 2])];
};

/** The box of a word and 0.4 mm round it, which hatching leaves free. */
export const hatchFreeBox = (word: TextMark): Box => {
  const { x0, y0, x1, y1 } = textBox(word);
  const air = 0.4;
  return { x0: x0 - air, y0: y0 - air, x1: x1 + air, y1: y1 + air };
};
