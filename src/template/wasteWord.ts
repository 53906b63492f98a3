import type { TextMark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { textWidth } from '../drawing/textWidth.ts';
import type { Interval } from '../joint/joint.ts';
import { type GrooveMark, grooveZone } from './grooveMark.ts';
import type { Laid } from './laid.ts';
import { SMALL } from './lettering.ts';
import { BESIDE, WORD_ROOM, wordAt } from './word.ts';

const LENGTH = textWidth('WASTE', SMALL, 'bold') + 2 * BESIDE;

/** Across the word; the reference edge is a bold line. */
const BREADTH = WORD_ROOM + PENS.edge.width;

/** Says of the hatching on a face, between two heights, that it is waste: where it has room, nearest the middle. */
export const wasteWord = (
  { band, at }: Laid,
  groove: GrooveMark | undefined,
  [from, to]: Interval,
): TextMark[] => {
  const grooved = band.name === 'inside' && groove !== undefined ? grooveZone(groove) : undefined;
  const middle = (from + to) / 2;
  const rooms = band.waste
    .map((area): Interval => {
      // Between its sides at the narrower of its ends.
      const [, low = 0, high = 0] = area.map(([, u]) => u).sort((a, b) => a - b);
      return [Math.max(low, from), Math.min(high, to)];
    })
    .filter(([low, high]) => grooved === undefined || high <= grooved[0] || low >= grooved[1])
    .sort((a, b) => Math.abs(a[0] + a[1] - 2 * middle) - Math.abs(b[0] + b[1] - 2 * middle));
  const fits = (along: number, across: number) => along >= LENGTH && across >= BREADTH;
  for (const turn of [90, 0] as const)
    for (const [low, high] of rooms) {
      const room = turn === 90 ? fits(high - low, band.reach) : fits(band.reach, high - low);
      if (room) return [wordAt('WASTE', 'bold', turn, [at(band.reach / 2), (low + high) / 2])];
    }
  return [];
};
