import type { TextMark } from '../../drawing/drawing.ts';
import type { Interval } from '../../joint/joint.ts';
import { type GrooveMark, grooveZone } from './grooveMark.ts';
import type { PlacedBand } from './placedBand.ts';
import { wordInRooms } from './word.ts';

/** `WASTE` in the hatching of a face between two heights: in the waste nearest the middle that holds the word. */
export const wasteWord = (face: PlacedBand, groove: GrooveMark | undefined, part: Interval): TextMark[] => {
  const { band } = face;
  const grooved = band.name === 'inside' && groove !== undefined ? grooveZone(groove) : undefined;
  const rooms = band.waste
    .map((area): Interval => {
      // The room between the sides of the area at its narrower end.
      const [, low = 0, high = 0] = area.map(([, u]) => u).sort((a, b) => a - b);
      return [low, high];
    })
    .filter(([low, high]) => grooved === undefined || high <= grooved[0] || low >= grooved[1]);
  return wordInRooms(rooms, 'WASTE', face, part);
};
