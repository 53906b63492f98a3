import { nearestMark } from '../units/formatLength.ts';
import { type Notation, unitOf } from '../units/notation.ts';
import type { Slope } from '../units/slope.ts';
import { MM_PER_INCH } from '../units/unit.ts';
import { defaultSmallPin } from './houndsTooth.ts';
import type { Interval } from './joint.ts';
import type { HalfPins, JointSpec } from './jointSpec.ts';
import type { JointShape } from './kinds/kind.ts';
import { KINDS } from './kinds/kinds.ts';

/** A wish with every default filled in. */
export interface ResolvedSpec {
  readonly kind: JointSpec['kind'];
  readonly width: number;
  readonly tailBoard: number;
  readonly pinBoard: number;
  /** What the kind makes of both boards. */
  readonly shape: JointShape;
  /** The tails' length. */
  readonly depth: number;
  readonly slope: Slope;
  readonly pin: number;
  readonly halfPin: HalfPins;
  readonly proud: number;
  readonly chisel: number;
  readonly spacing: JointSpec['spacing'];
  /** Narrow width of a hound's tooth's small pins; absent where there are none. */
  readonly smallPin?: number;
  /** Where the boards are sawn apart, a pin lying over the cut; absent where they are not. */
  readonly sawCut?: Interval;
  readonly notation: Notation;
}

const DEFAULT_SLOPE: Slope = { run: 8 };
const DEFAULT_CHISEL = { mm: 3, in: MM_PER_INCH / 8 } as const;

/** Half the tail board's thickness, at least 3; in inches to 1/32, at least 1/8 (common practice). */
export const defaultPin = (tailBoard: number, notation: Notation = 'mm'): number =>
  notation === 'mm'
    ? Math.max(3, tailBoard / 2)
    : Math.max(MM_PER_INCH / 8, nearestMark(tailBoard / 2, 'in/32'));

export const withDefaults = (spec: JointSpec): ResolvedSpec => {
  const { notation = 'mm' } = spec;
  const shape = KINDS[spec.kind].shape(spec);
  const pin = spec.pin ?? defaultPin(spec.tailBoard, notation);
  const chisel = spec.chisel ?? DEFAULT_CHISEL[unitOf(notation)];
  return {
    kind: spec.kind,
    width: spec.width,
    tailBoard: spec.tailBoard,
    pinBoard: spec.pinBoard,
    shape,
    depth: shape.depth,
    slope: spec.slope ?? DEFAULT_SLOPE,
    pin,
    halfPin: spec.halfPin ?? { lower: pin, upper: pin },
    proud: spec.proud ?? 0,
    chisel,
    spacing: spec.spacing,
    ...(spec.houndsTooth && {
      smallPin: spec.houndsTooth.smallPin ?? defaultSmallPin(pin, chisel, notation),
    }),
    notation,
  };
};
