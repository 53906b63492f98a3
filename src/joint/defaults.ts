import type { Slope } from '../units/slope.ts';
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
}

export const DEFAULT_SLOPE: Slope = { run: 8 };
const DEFAULT_CHISEL = 3;

/** Half the tail board's thickness, at least 3 (common practice). */
export const defaultPin = (tailBoard: number): number => Math.max(3, tailBoard / 2);

export const withDefaults = (spec: JointSpec): ResolvedSpec => {
  const shape = KINDS[spec.kind].shape(spec);
  const pin = spec.pin ?? defaultPin(spec.tailBoard);
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
    chisel: spec.chisel ?? DEFAULT_CHISEL,
    spacing: spec.spacing,
  };
};
