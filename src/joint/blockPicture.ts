import { rise } from '../units/slope.ts';
import { besideSmallPin, type Interval, type Joint } from './joint.ts';

const TAIL = '█';
const PIN = '░';
const ROWS = 4;

/**
 * A small block drawing of the tail board's face, its end at the top, the reference edge at the left. Where a wide board has
 * pins or tails narrower than a column, each takes one all the same, at the cost of the others' scale; nothing where there are
 * more of them than columns.
 * @param columns how many characters the board's width takes
 */
export const blockPicture = (joint: Joint, columns: number): string[] => {
  // Each row shows the joint as it is half way down the row.
  const rows = Array.from({ length: ROWS }, (_, row) => tailsAt(joint, joint.depth * ((row + 0.5) / ROWS)));
  const drawn = rows.map((parts) => toScale(parts, joint.width, columns));
  const showsAll = rows.every((parts, i) => drawn[i]?.match(/█+|░+/gu)?.length === 2 * parts.length + 1);
  if (showsAll) return drawn;
  const hasRoom = rows.every((parts) => 2 * parts.length < columns);
  return hasRoom ? rows.map((parts) => withAll(parts, joint.width, columns)) : [];
};

const toScale = (parts: readonly Interval[], width: number, columns: number): string =>
  Array.from({ length: columns }, (_, column) => {
    const u = ((column + 0.5) * width) / columns;
    return parts.some(([from, to]) => u > from && u < to) ? TAIL : PIN;
  }).join('');

/** Every line at the column nearest to it that leaves one for each pin and tail. */
const withAll = (parts: readonly Interval[], width: number, columns: number): string => {
  const lines = [...parts.flat(), width];
  let last = 0;
  const ends = lines.map((line, i) => {
    const most = columns - (lines.length - 1 - i);
    last = Math.min(Math.max(Math.round((line * columns) / width), last + 1), most);
    return last;
  });
  return ends.map((end, i) => (i % 2 === 0 ? PIN : TAIL).repeat(end - (ends[i - 1] ?? 0))).join('');
};

/** What stands of the tails so far below their ends, in mm. */
const tailsAt = ({ tails, smallPins, slope }: Joint, below: number): Interval[] => {
  const loss = below * rise(slope);
  return tails.flatMap(({ tip: [from, to] }, i) => {
    const small = smallPins?.[i];
    const cut: Interval | undefined =
      small === undefined || below >= small.depth
        ? undefined
        : [small.narrow[0] - loss, small.narrow[1] + loss];
    return besideSmallPin([from + loss, to - loss], cut);
  });
};
