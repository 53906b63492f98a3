import type { TextMark } from '../../drawing/drawing.ts';
import type { Interval } from '../../joint/joint.ts';
import type { GrooveMark } from './grooveMark.ts';
import type { PlacedBand } from './placedBand.ts';
import { wordInRooms } from './word.ts';

/** `NO TAIL` on a band below a joint that starts above the reference edge, where the board is whole, clear of the groove. */
export const noTailWord = (
  placed: PlacedBand,
  jointFrom: number,
  groove: GrooveMark | undefined,
  part: Interval,
): TextMark[] => {
  const to = placed.band.name === 'inside' && groove !== undefined ? groove.offset : jointFrom;
  return jointFrom > 0 ? wordInRooms([[0, to]], 'NO TAIL', placed, part) : [];
};
