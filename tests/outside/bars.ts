import type { Point } from '../../src/drawing/drawing.ts';
import type { Stroke } from './readPdf.ts';

/** A line with a tick at each end and at even steps between, to lay a rule against. */
export interface Bar {
  readonly from: Point;
  readonly to: Point;
  /** From the middle of the first tick to the middle of the last, in mm. */
  readonly length: number;
}

/** No tick is longer, in mm. */
const LONGEST_TICK = 3;
/** How exactly a tick stands on its line. */
const NEAR = 0.02;

const lengthOf = ({ from, to }: Stroke): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** Every bar among the lines of a page, however it is turned. */
export const barsOf = (strokes: readonly Stroke[]): Bar[] => {
  const ticks = strokes.filter((stroke) => lengthOf(stroke) <= LONGEST_TICK);
  return strokes.flatMap((stroke): Bar[] => {
    const length = lengthOf(stroke);
    if (length < 2 * LONGEST_TICK) return [];
    const { from, to } = stroke;
    const [dx, dy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const feet = ticks
      .filter((tick) => {
        const along = (tick.to[0] - tick.from[0]) * dx + (tick.to[1] - tick.from[1]) * dy;
        const aside = (tick.from[1] - from[1]) * dx - (tick.from[0] - from[0]) * dy;
        return Math.abs(along) < 0.05 * lengthOf(tick) && Math.abs(aside) < NEAR;
      })
      .map(({ from: [x, y] }) => (x - from[0]) * dx + (y - from[1]) * dy)
      .filter((at) => at > -NEAR && at < length + NEAR)
      .sort((a, b) => a - b);
    const [first, last] = [feet[0] ?? Number.NaN, feet.at(-1) ?? Number.NaN];
    const even = feet.every(
      (at, i) => Math.abs(at - (first + ((last - first) * i) / (feet.length - 1))) < 2 * NEAR,
    );
    const whole = first < NEAR && last > length - NEAR;
    return feet.length >= 3 && even && whole ? [{ from, to, length: last - first }] : [];
  });
};
