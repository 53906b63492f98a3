import type { Interval } from '../../joint/joint.ts';
import { CLEAR_OF_SPLITS } from '../../paper/piece.ts';

/** What each part of a piece leaves for words, from the bottom up: its height, clear of the joins at its ends. */
export const betweenSplits = (splits: readonly number[], height: number): Interval[] => {
  const starts = [0, ...splits.map((y) => y + CLEAR_OF_SPLITS)];
  const ends = [...splits.map((y) => y - CLEAR_OF_SPLITS), height];
  return starts.map((from, i): Interval => [from, ends[i] ?? height]);
};
