import type { Complaint, Place } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../units/phrase.ts';
import { formatSlope, SHALLOWEST_RUN, STEEPEST_RUN } from '../units/slope.ts';
import * as limits from './jointLimits.ts';
import type { JointSpec } from './jointSpec.ts';
import type { OwnLength, Range } from './kinds/kind.ts';
import { KIND_NAMES, KINDS, kindOf, type OwnLengthKey } from './kinds/kinds.ts';

/** Whether a size is in its range; not-a-number never is. */
export const lies = (value: number, { least, most }: Range): boolean =>
  value >= least - EPSILON && value <= most + EPSILON;

/** The complaint about a size outside its range; what is not given is not judged. */
export const within = (at: Place, what: string, value: number | undefined, range: Range): Complaint[] =>
  value === undefined || lies(value, range)
    ? []
    : [
        {
          at,
          says: say`${what} is ${lengthOrNonsense(value)}; it must be ${atLeast(range.least)} to ${atMost(range.most)}`,
        },
      ];

export const lengthOrNonsense = (value: number): Phrase =>
  Number.isFinite(value) ? say`${mm(value)}` : say`not a number`;

/** What a size allows others to be: no more than itself, or than its own most where it is itself wrong. */
const bound = (value: number, range: Range): number => (lies(value, range) ? value : range.most);

/** Everything that is wrong with the sizes of a wish, before any tail is placed; defaults are not blamed on the user. */
export const checkSizes = (wish: JointSpec): Complaint[] => {
  const { width, tailBoard, pinBoard, slope, pin, halfPin, proud, chisel } = wish;
  const { WIDTH_RANGE, THICKNESS_RANGE, CHISEL_RANGE, LEAST_PIN } = limits;
  const pinRange = { least: LEAST_PIN, most: bound(width, WIDTH_RANGE) };
  const wrong = [
    ...within(['width'], "the boards' width", width, WIDTH_RANGE),
    ...within(['tailBoard'], "the tail board's thickness", tailBoard, THICKNESS_RANGE),
    ...within(['pinBoard'], "the pin board's thickness", pinBoard, THICKNESS_RANGE),
    ...within(['chisel'], 'the narrowest chisel', chisel, CHISEL_RANGE),
    ...within(['pin'], "a pin's narrow width", pin, pinRange),
    ...within(['halfPin'], "the lower half pin's narrow width", halfPin?.lower, pinRange),
    ...within(['halfPin'], "the upper half pin's narrow width", halfPin?.upper, pinRange),
    ...within(['proud'], 'the amount to stand proud', proud, {
      least: 0,
      most: bound(tailBoard, THICKNESS_RANGE) / 4,
    }),
  ];
  if (slope !== undefined && !lies(slope.run, { least: STEEPEST_RUN, most: SHALLOWEST_RUN }))
    wrong.push({
      at: ['slope'],
      says: say`the slope is ${formatSlope(slope)}; it must be 1:2.5 to 1:20`,
      hint: say`1:7`,
    });
  const { leastPinBoard, lengths } = kindOf(wish);
  if (!lies(pinBoard, THICKNESS_RANGE) || pinBoard >= leastPinBoard - EPSILON)
    return [...wrong, ...lengths.flatMap((length) => checkOwn(wish, length))];
  const thinner = KIND_NAMES.filter((name) => KINDS[name].leastPinBoard <= pinBoard + EPSILON);
  return [
    ...wrong,
    {
      at: ['pinBoard'],
      says: say`the pin board is ${mm(pinBoard)} thick; a ${wish.kind} joint needs at least ${atLeast(leastPinBoard)}`,
      hint: say`a ${thinner.join(' or ')} joint`,
    },
  ];
};

/** A length of the kind's own; where its board is wrong in itself, only what is given is judged. */
const checkOwn = (wish: JointSpec, { key, word, on, usual, range }: OwnLength<OwnLengthKey>): Complaint[] => {
  const { THICKNESS_RANGE } = limits;
  const { tailBoard, pinBoard } = wish;
  const sound = lies(on === 'tail' ? tailBoard : pinBoard, THICKNESS_RANGE);
  return within(
    [key],
    `the ${word}`,
    wish[key] ?? (sound ? usual(wish) : undefined),
    range({ tailBoard: bound(tailBoard, THICKNESS_RANGE), pinBoard: bound(pinBoard, THICKNESS_RANGE) }),
  );
};
