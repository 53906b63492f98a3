import type { Box, Mark, Point, TextMark } from '../../drawing/drawing.ts';
import { textBox } from '../../drawing/textBox.ts';
import { isClear, obstaclesIn } from '../../paper/labelCollision.ts';
import { CLEAR_OF_SPLITS, type Splits } from '../../paper/piece.ts';
import { centredWord } from '../template/word.ts';

/** Air round a word, and how far from its point and in what steps a place for it is sought, mm. */
const AIR = 0.4;
const FURTHEST = 24;
const STEP = 2;

/**
 * Words on the face of a template, each at the nearest place to its point that is clear of every line, of other words and of splits;
 * without a place near it, a word is left out.
 * @param marks what is drawn there
 */
export const faceWords = (
  words: readonly { readonly text: string; readonly near: Point }[],
  face: Box,
  marks: readonly Mark[],
  { x: splitsX, y: splitsY }: Splits,
): TextMark[] => {
  const set: TextMark[] = [];
  for (const { text, near } of words) {
    const obstacles = obstaclesIn(face, [...marks, ...set]);
    const place = placesRound(near)
      .map((at) => centredWord(text, 'regular', 0, at))
      .find((word) => {
        const { x0, y0, x1, y1 } = textBox(word);
        const box = { x0: x0 - AIR, y0: y0 - AIR, x1: x1 + AIR, y1: y1 + AIR };
        const off = (splits: readonly number[], from: number, to: number): boolean =>
          splits.every((at) => at < from - CLEAR_OF_SPLITS || at > to + CLEAR_OF_SPLITS);
        return (
          box.x0 >= face.x0 &&
          box.x1 <= face.x1 &&
          box.y0 >= face.y0 &&
          box.y1 <= face.y1 &&
          off(splitsX, box.x0, box.x1) &&
          off(splitsY, box.y0, box.y1) &&
          isClear(box, obstacles)
        );
      });
    if (place !== undefined) set.push(place);
  }
  return set;
};

/** Points on a grid round one, the nearest first. */
const placesRound = ([x, y]: Point): Point[] => {
  const steps = Math.floor(FURTHEST / STEP);
  const offsets = Array.from({ length: 2 * steps + 1 }, (_, i) => (i - steps) * STEP);
  return offsets
    .flatMap((dx) => offsets.map((dy): Point => [dx, dy]))
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
    .map(([dx, dy]): Point => [x + dx, y + dy]);
};
