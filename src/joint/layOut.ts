import { accept, type Complaint, type Result } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { rise } from '../units/slope.ts';
import { adviseJoint } from './adviseJoint.ts';
import { checkSizes } from './checkSizes.ts';
import { checkSpacing } from './checkSpacing.ts';
import { type ResolvedSpec, withDefaults } from './defaults.ts';
import { keptBeside, smallPinIn } from './houndsTooth.ts';
import { type Interval, type Joint, jointSpan, type Pin, type Tail } from './joint.ts';
import { LEAST_BASE } from './jointLimits.ts';
import type { JointSpec } from './jointSpec.ts';
import { leastTip } from './spacing.ts';
import { type TailWidths, tailWidths } from './tailWidths.ts';

/**
 * Sets out one corner.
 * @returns the joint with its advice, or every reason why it cannot be cut; places name the options
 * @example
 * ```ts
 * const corner = layOut({ kind: 'lapped', width: 96, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } });
 * if (corner.ok) console.log(corner.value.tails.length); // 4
 * ```
 */
export const layOut = (spec: JointSpec): Result<Joint> => {
  const resolved = withDefaults(spec);
  const wrong = checkWish(spec, resolved);
  return wrong.length > 0 ? { ok: false, complaints: wrong } : setOut(resolved);
};

/** Sets out a corner that `checkWish` accepts; there may still be no room for its tails. */
export const setOut = (resolved: ResolvedSpec): Result<Joint> => {
  const widths = tailWidths(resolved);
  return widths.ok ? accept(jointOf(resolved, widths.value)) : widths;
};

/** Everything that is wrong with a wish before any tail is placed. */
export const checkWish = (spec: JointSpec, resolved: ResolvedSpec): Complaint[] => {
  const sizes = checkSizes(spec);
  // A tail's least width depends on the sizes; where they are wrong, only what holds for any size is asked of it.
  const [needed, kept] = sizes.length === 0 ? [leastTip(resolved), keptBeside(resolved)] : [LEAST_BASE];
  return [...sizes, ...checkSpacing(resolved.spacing, needed, kept)];
};

const jointOf = (spec: ResolvedSpec, { tips, pins, alternatives }: TailWidths): Joint => {
  const { kind, width, depth, slope, shape, halfPin, proud, smallPin, sawCut } = spec;
  const loss = depth * rise(slope);
  const tails: Tail[] = [];
  let mark = shape.shoulder.lower + halfPin.lower;
  tips.forEach((tip, i) => {
    const end = mark + tip;
    tails.push({ tip: [mark, end], base: [mark + loss, end - loss] });
    mark = end + (pins[i] ?? 0);
  });
  return {
    kind,
    width,
    depth,
    slope,
    tailBoard: shape.tailBoard,
    pinBoard: shape.pinBoard,
    shoulder: shape.shoulder,
    setBack: shape.setBack,
    ...(shape.mitre && { mitre: shape.mitre }),
    proud,
    tails,
    pins: pinsBetween(tails, jointSpan({ width, shoulder: shape.shoulder })),
    ...(smallPin !== undefined && {
      smallPins: tails.map(({ tip }) => smallPinIn(tip, smallPin, spec)),
    }),
    ...(sawCut && { sawCut }),
    even: allEqual(tips) && allEqual(pins),
    alternatives,
    advice: adviseJoint(spec, tips, [halfPin.lower, ...pins, halfPin.upper]),
  };
};

/** The pins are what the tails leave of the joint. */
const pinsBetween = (tails: readonly Tail[], [from, to]: Interval): Pin[] => {
  const pins: Pin[] = [];
  let below: Tail | undefined;
  for (const above of [...tails, undefined]) {
    pins.push({
      narrow: [below?.tip[1] ?? from, above?.tip[0] ?? to],
      wide: [below?.base[1] ?? from, above?.base[0] ?? to],
      half: below === undefined || above === undefined,
    });
    below = above;
  }
  return pins;
};

const allEqual = (widths: readonly number[]): boolean =>
  widths.every((width) => Math.abs(width - (widths[0] ?? width)) < EPSILON);
