import type { Point, TextMark } from '../../drawing/drawing.ts';
import type { Interval } from '../../joint/joint.ts';
import { type GrooveMark, grooveZone } from './grooveMark.ts';
import type { PlacedBand } from './placedBand.ts';
import { WORD_ROOM, wordInRooms } from './word.ts';

/**
 * `WASTE` in the hatching of a face between two heights, across the middle of the joint's part of it: in the waste nearest
 * the board's middle that holds the word.
 */
export const wasteWord = (face: PlacedBand, groove: GrooveMark | undefined, part: Interval): TextMark[] => {
  const { band } = face;
  const grooved = band.name === 'inside' && groove !== undefined ? grooveZone(groove) : undefined;
  const rooms = band.waste
    .filter((area) => liesAcross(area, band.reach / 2))
    .map((area): Interval => {
      // The room between the sides of the area at its narrower end.
      const [, low = 0, high = 0] = area.map(([, u]) => u).sort((a, b) => a - b);
      return [low, high];
    })
    .filter(([low, high]) => grooved === undefined || high <= grooved[0] || low >= grooved[1]);
  return wordInRooms(rooms, 'WASTE', face, part);
};

/** Whether an area holds a word's height at a distance from the arris, mm: what is cut off along an end does not. */
const liesAcross = (area: readonly Point[], middle: number): boolean => {
  const fromArris = area.map(([d]) => d);
  return Math.min(...fromArris) <= middle - WORD_ROOM / 2 && Math.max(...fromArris) >= middle + WORD_ROOM / 2;
};
