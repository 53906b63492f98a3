import type { Point, TextMark } from '../../drawing/drawing.ts';
import type { Interval } from '../../joint/joint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { type GrooveMark, grooveZone } from './grooveMark.ts';
import type { PlacedBand } from './placedBand.ts';
import { wordInRooms } from './word.ts';

/**
 * `WASTE` in the hatching of a face between two heights, across the middle of the waste that reaches furthest from the arris,
 * as what is cut off along an end does not: in the one nearest the board's middle that holds the word.
 */
export const wasteWord = (face: PlacedBand, groove: GrooveMark | undefined, part: Interval): TextMark[] => {
  const { band } = face;
  const grooved = band.name === 'inside' && groove !== undefined ? grooveZone(groove) : undefined;
  const areas = band.waste.map((area) => ({ area, across: reachOf(area) }));
  const longest = Math.max(...areas.map(({ across: [near, far] }) => far - near));
  const deep = areas.filter(({ across: [near, far] }) => far - near > longest - EPSILON);
  const rooms = deep
    .map(({ area }): Interval => {
      // The room between the sides of the area at its narrower end.
      const [, low = 0, high = 0] = area.map(([, u]) => u).sort((a, b) => a - b);
      return [low, high];
    })
    .filter(([low, high]) => grooved === undefined || high <= grooved[0] || low >= grooved[1]);
  return wordInRooms(rooms, 'WASTE', face, part, deep[0]?.across);
};

/** How near an area comes to the arris, and how far it reaches from it, in mm. */
const reachOf = (area: readonly Point[]): Interval => {
  const fromArris = area.map(([d]) => d);
  return [Math.min(...fromArris), Math.max(...fromArris)];
};
