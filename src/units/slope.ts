import { accept, type Result, refuse } from './complaint.ts';
import { say } from './phrase.ts';
import { quote } from './quote.ts';
import { isInRange } from './range.ts';

/** Slope of a tail's side: 1 across for every `run` along. */
export interface Slope {
  readonly run: number;
}

/** Range of a slope's run, from the steepest to the gentlest that is set out; no joint in use lies beyond (common practice). */
export const RUN_RANGE = { least: 2.5, most: 20 } as const;

/** mm across for every mm along: s = 1/n. */
export const rise = (slope: Slope): number => 1 / slope.run;

/** The angle off square, in degrees: atan(1/n). */
export const degrees = (slope: Slope): number => (Math.atan(rise(slope)) * 180) / Math.PI;

/** The slope of an angle off square, in degrees. */
export const slopeOfDegrees = (angle: number): Slope => ({ run: 1 / Math.tan((angle * Math.PI) / 180) });

/** The most that an angle, which is shown to a hundredth of a degree, may miss the slope that it stands for. */
const HALF_HUNDREDTH = 0.005;

/** The slope that is shown as an angle in degrees: one that is shown as the steepest or the gentlest is that. */
const slopeShown = (angle: number): Slope =>
  Object.values(RUN_RANGE)
    .map((run): Slope => ({ run }))
    .find((bound) => Math.abs(degrees(bound) - angle) <= HALF_HUNDREDTH) ?? slopeOfDegrees(angle);

const RATIO = /^1\s*(?::|in|\/)\s*(\d+(?:[.,]\d+)?)$/iu;
const ANGLE = /^(\d+(?:[.,]\d+)?)\s*(?:deg|degrees?|°)$/iu;

/**
 * Reads a slope: `1:7`, `1 in 7`, `1/7`, `8.13deg`, `8.13°`.
 * @returns the slope, or a complaint with an empty place: not a slope, or outside 1:2.5 to 1:20
 * @example
 * ```ts
 * const slope = parseSlope('1 in 7');
 * if (slope.ok) console.log(slope.value); // { run: 7 }
 * ```
 */
export const parseSlope = (text: string): Result<Slope> => {
  const plain = text.trim();
  const ratio = RATIO.exec(plain)?.[1];
  const angle = ANGLE.exec(plain)?.[1];
  const number = Number((ratio ?? angle ?? '').replace(',', '.'));
  if (ratio === undefined && angle === undefined)
    return refuse({
      at: [],
      says: say`${quote(text)} is not a slope; a slope is written 1:7, 1 in 7 or 8.13deg`,
      hint: say`1:7`,
    });
  const slope = ratio === undefined ? slopeShown(number) : { run: number };
  return isInRange(slope.run, RUN_RANGE)
    ? accept(slope)
    : refuse({
        at: [],
        says: say`${quote(text)} is outside what can be cut; a slope must be 1:2.5 to 1:20`,
        hint: say`1:7`,
      });
};

/**
 * A slope for reading: `1:7`, `1:7.12`.
 * @example
 * ```ts
 * console.log(formatSlope({ run: 7 })); // 1:7
 * ```
 */
export const formatSlope = (slope: Slope): string => `1:${Number(slope.run.toFixed(2))}`;
