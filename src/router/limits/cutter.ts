import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON, roundDown, roundUp } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { checkRange, isInRange, lengthOrNaN } from '../../units/range.ts';
import { degrees, RUN_RANGE, rise, type Slope, slopeOfDegrees } from '../../units/slope.ts';

/** A dovetail cutter: widest at its end, narrowing upward to its neck. Lengths in mm. */
export interface Cutter {
  /** At its end, where it is widest: 3 to 60. */
  readonly diameter: number;
  /** Of its side off its axis, in degrees: that of a slope from 1:20 to 1:2.5. */
  readonly angle: number;
  /** How far up its side it cuts. */
  readonly length: number;
  /** Diameter above the cutting length, where it is known. */
  readonly neck?: number;
}

export const DIAMETER_RANGE = { least: 3, most: 60 } as const;

/** The thinnest waist that a cutter can be ground to and still bear its cut, in mm (common practice). */
const LEAST_WAIST = 1;

const ANGLE_RANGE = {
  least: degrees({ run: RUN_RANGE.most }),
  most: degrees({ run: RUN_RANGE.least }),
} as const;

/** The slope that a cutter leaves on either side of its cut. */
export const cutterSlope = ({ angle }: Pick<Cutter, 'angle'>): Slope => slopeOfDegrees(angle);

/** A cutter's diameter at a height above its end: D - 2 h tan a. */
export const diameterAt = ({ diameter, angle }: Pick<Cutter, 'diameter' | 'angle'>, height: number): number =>
  diameter - 2 * height * rise(cutterSlope({ angle }));

/**
 * The narrow width of the least pin: what one pass at a depth takes away at the tail board's end, where the cutter's
 * cut is narrowest.
 */
export const leastPin = (cutter: Cutter, depth: number): number => diameterAt(cutter, depth);

/** Checks a cutter. Places name its keys: `diameter`, `angle`, `length`, `neck`. */
export const checkCutter = (cutter: Cutter): Result<Cutter> => {
  const { diameter, angle, length, neck } = cutter;
  const wrong: Complaint[] = [
    ...checkRange(['diameter'], "the cutter's diameter", diameter, DIAMETER_RANGE, say`${mm(12.7)}`),
    ...checkAngle(angle),
  ];
  if (!(length > 0 && Number.isFinite(length)))
    wrong.push({
      at: ['length'],
      says: say`the cutter's cutting length is ${lengthOrNaN(length)}; it must be more than ${mm(0)}`,
    });
  // The rest is measured against diameter, angle and length together.
  if (wrong.length > 0) return refuse(...wrong);
  if (diameterAt(cutter, length) < LEAST_WAIST - EPSILON) {
    const most = (diameter - LEAST_WAIST) / (2 * rise(cutterSlope(cutter)));
    wrong.push({
      at: ['length'],
      says: say`a cutter of ${mm(diameter)} at ${angle} degrees runs to a point: its cutting length is ${mm(length)}, but may be at most ${atMost(most)}`,
      hint: say`${atMost(roundDown(most, 10))}`,
    });
  }
  if (neck !== undefined && !(neck >= LEAST_WAIST - EPSILON && neck < diameter))
    wrong.push({
      at: ['neck'],
      says: say`the cutter's neck is ${lengthOrNaN(neck)}; it must be ${atLeast(LEAST_WAIST)} or more and less than the diameter, ${mm(diameter)}`,
    });
  return wrong.length > 0 ? refuse(...wrong) : accept(cutter);
};

/** What is wrong with a cutter's angle, in degrees. The place is `angle`. */
export const checkAngle = (angle: number): Complaint[] =>
  isInRange(angle, ANGLE_RANGE)
    ? []
    : [
        {
          at: ['angle'],
          says: say`the cutter's angle is ${Number.isFinite(angle) ? `${angle} degrees` : 'not a number'}; it must be ${shownAngle(roundUp(ANGLE_RANGE.least, 100))} to ${shownAngle(roundDown(ANGLE_RANGE.most, 100))} degrees off its axis, such as 8 for a slope near 1:7 or 14 for 1:4`,
          hint: say`8 or 14`,
        },
      ];

const shownAngle = (angle: number): string => angle.toFixed(2);
