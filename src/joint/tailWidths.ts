import { accept, type Complaint, type Result, refuse } from '../complaint.ts';
import { mm, say } from '../units/phrase.ts';
import { lengthOrNonsense } from './checkSizes.ts';
import type { ResolvedSpec } from './defaults.ts';
import { DUST } from './dust.ts';
import type { Count } from './joint.ts';
import * as limits from './limits.ts';
import { chooseTails, leastTip, meanTip, mostTails, type Shared, shares, tailRoom } from './spacing.ts';
import type { Spacing } from './spec.ts';

/** How far listed widths may miss the board's width, in mm: what rounding to the hundredth leaves. */
const LIST_TOLERANCE = 0.05;

/** The widths at the tip level, from the reference edge up. */
export interface Widths {
  readonly tips: readonly number[];
  /** The whole pins between the tails. */
  readonly pins: readonly number[];
  readonly alternatives: readonly Count[];
}

/** How wide each tail and each whole pin is, by the wished spacing. */
export const tailWidths = (spec: ResolvedSpec): Result<Widths> =>
  spec.spacing.kind === 'listed' ? listedWidths(spec, spec.spacing) : sharedWidths(spec, spec.spacing);

const sharedWidths = (spec: ResolvedSpec, spacing: Shared): Result<Widths> => {
  if (spacing.kind === 'graded') {
    const { least, most } = limits.RATIO_RANGE;
    if (!(spacing.ratio >= least && spacing.ratio <= most))
      return refuse({
        at: ['graded'],
        says: say`the ratio from tail to tail is ${spacing.ratio}; it must be ${least} to ${most}`,
        hint: say`0.9`,
      });
  }
  const most = mostTails(spec, spacing);
  if (most === 0) return refuse(noRoom(spec));
  const { tails } = spacing;
  if (tails !== undefined && !(Number.isInteger(tails) && tails >= 1))
    return refuse({
      at: ['tails'],
      says: say`${tails} is no number of tails; it must be a whole number, 1 to ${most} here`,
      hint: say`${chooseTails(spec, most)}`,
    });
  if (tails !== undefined && tails > most) return refuse(tooMany(spec, tails, most));
  const count = tails ?? chooseTails(spec, most);
  const room = tailRoom(spec, count);
  return accept({
    tips: shares(spacing, count).map((share) => share * room),
    pins: new Array<number>(count - 1).fill(spec.pin),
    alternatives: [count - 1, count + 1]
      .filter((other) => other >= 1 && other <= most)
      .map((other) => ({ tails: other, tip: meanTip(spec, other) })),
  });
};

const noRoom = (spec: ResolvedSpec): Complaint => {
  const { width, halfPin } = spec;
  return {
    at: ['width'],
    says: say`half pins of ${mm(halfPin.lower)} and ${mm(halfPin.upper)} leave ${mm(Math.max(0, tailRoom(spec, 1)))} of ${mm(width)}; one tail needs ${mm(leastTip(spec))} at its tip for a base of ${mm(limits.LEAST_BASE)}`,
    hint: say`narrower half pins, a gentler slope, or a wider board`,
  };
};

const tooMany = (spec: ResolvedSpec, tails: number, most: number): Complaint => ({
  at: ['tails'],
  says: say`${tails} tails are too many for ${mm(spec.width)}: each base must be at least ${mm(limits.LEAST_BASE)}, so there may be 1 to ${most}`,
  hint: say`${chooseTails(spec, most)}`,
});

const listedWidths = (
  spec: ResolvedSpec,
  { tails, pins: given }: Extract<Spacing, { kind: 'listed' }>,
): Result<Widths> => {
  if (tails.length === 0)
    return refuse({ at: ['tails'], says: say`no tails are listed; list at least one width` });
  const pins = given ?? new Array<number>(tails.length - 1).fill(spec.pin);
  if (pins.length !== tails.length - 1)
    return refuse({
      at: ['pins'],
      says: say`${pins.length} pins are listed between ${tails.length} tails; there must be ${tails.length - 1} (the half pins are given apart)`,
    });
  const needed = leastTip(spec);
  const wrong: Complaint[] = [
    ...tails.flatMap((tip, i) =>
      tip >= needed - DUST
        ? []
        : [
            {
              at: ['tails', i],
              says: say`tail ${i + 1} is ${lengthOrNonsense(tip)} at its tip; it must be at least ${mm(needed)} for a base of ${mm(limits.LEAST_BASE)}`,
            },
          ],
    ),
    ...pins.flatMap((pin, i) =>
      pin >= limits.LEAST_PIN - DUST
        ? []
        : [
            {
              at: ['pins', i],
              says: say`pin ${i + 1} is ${lengthOrNonsense(pin)}; it must be at least ${mm(limits.LEAST_PIN)}`,
            },
          ],
    ),
  ];
  if (wrong.length > 0) return refuse(...wrong);
  const { width, halfPin } = spec;
  const sum = [...tails, ...pins, halfPin.lower, halfPin.upper].reduce((a, b) => a + b, 0);
  const over = sum - width;
  if (Math.abs(over) > LIST_TOLERANCE)
    return refuse({
      at: ['tails'],
      says: say`tails, pins and half pins together are ${mm(sum)}, ${mm(Math.abs(over))} ${over > 0 ? 'more' : 'less'} than the board's ${mm(width)}`,
      hint: say`half pins of ${mm(Math.max(limits.LEAST_PIN, (halfPin.lower + halfPin.upper - over) / 2))}, or other widths that fill it`,
    });
  return accept({ tips: tails, pins, alternatives: [] });
};
