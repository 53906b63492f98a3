import { rise } from '../units/slope.ts';
import type { Joint } from './joint.ts';

const TAIL = '█';
const PIN = '░';
const ROWS = 4;

/**
 * A small block drawing of the tail board's face, its end at the top, the reference edge at the left.
 * @param columns how many characters the board's width takes
 */
export const blockPicture = (joint: Joint, columns: number): string[] =>
  Array.from({ length: ROWS }, (_, row) => {
    // Each row shows the joint as it is half way down the row.
    const below = joint.depth * ((row + 0.5) / ROWS);
    const loss = below * rise(joint.slope);
    const isCut = (u: number): boolean =>
      joint.smallPins?.some(
        ({ narrow: [from, to], depth }) => below < depth && u >= from - loss && u <= to + loss,
      ) === true;
    return Array.from({ length: columns }, (_, column) => {
      const u = ((column + 0.5) * joint.width) / columns;
      return joint.tails.some(({ tip: [from, to] }) => u > from + loss && u < to - loss) && !isCut(u)
        ? TAIL
        : PIN;
    }).join('');
  });
