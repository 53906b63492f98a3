import { accept, type Result } from '../complaint.ts';
import { rise } from '../units/slope.ts';
import { advise } from './advise.ts';
import { checkSizes } from './checkSizes.ts';
import { checkSpacing } from './checkSpacing.ts';
import { type ResolvedSpec, withDefaults } from './defaults.ts';
import { DUST } from './dust.ts';
import type { Interval, Joint, Pin, Tail } from './joint.ts';
import { LEAST_BASE } from './limits.ts';
import { leastTip } from './spacing.ts';
import type { JointSpec } from './spec.ts';
import { tailWidths, type Widths } from './tailWidths.ts';

/**
 * Sets out one corner.
 * @returns the joint with its advice, or every reason why it cannot be cut; places name the options
 */
export const layOut = (spec: JointSpec): Result<Joint> => {
  const resolved = withDefaults(spec);
  const sizes = checkSizes(spec, resolved);
  // A tail's least width leans on the sizes; where they are wrong, only what holds for any size is asked of it.
  const needed = sizes.length === 0 ? leastTip(resolved) : LEAST_BASE;
  const wrong = [...sizes, ...checkSpacing(resolved.spacing, needed)];
  if (wrong.length > 0) return { ok: false, complaints: wrong };
  const widths = tailWidths(resolved);
  return widths.ok ? accept(jointOf(resolved, widths.value)) : widths;
};

const jointOf = (spec: ResolvedSpec, { tips, pins, alternatives }: Widths): Joint => {
  const { kind, width, depth, slope, tailBoard, pinBoard, lap, halfPin, proud } = spec;
  const loss = depth * rise(slope);
  const tails: Tail[] = [];
  let mark = halfPin.lower;
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
    tailBoard: { thickness: tailBoard },
    pinBoard: { thickness: pinBoard, lap },
    proud,
    tails,
    pins: pinsBetween(tails, width),
    even: allEqual(tips) && allEqual(pins),
    alternatives,
    advice: advise(spec, tips, [halfPin.lower, ...pins, halfPin.upper]),
  };
};

/** The pins are what the tails leave of the board. */
const pinsBetween = (tails: readonly Tail[], width: number): Pin[] => {
  const gaps = (level: 'tip' | 'base'): Interval[] => {
    const edges = [0, ...tails.flatMap((tail) => tail[level]), width];
    return Array.from({ length: tails.length + 1 }, (_, i) => [edges[2 * i] ?? 0, edges[2 * i + 1] ?? width]);
  };
  const wide = gaps('base');
  return gaps('tip').map((narrow, i) => ({
    narrow,
    wide: wide[i] ?? narrow,
    half: i === 0 || i === tails.length,
  }));
};

const allEqual = (widths: readonly number[]): boolean =>
  widths.every((width) => Math.abs(width - (widths[0] ?? width)) < DUST);
