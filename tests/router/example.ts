import type { Joint } from '../../src/joint/joint.ts';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import type { Cutter } from '../../src/router/limits/cutter.ts';
import { layOutForCutter } from '../../src/router/limits/layOutForCutter.ts';
import { type RouterCut, routerCut } from '../../src/router/passes/routerCut.ts';
import { value } from '../value.ts';

export const CUTTER: Cutter = { diameter: 12.7, angle: 8, length: 20 };
/** Diameter of the straight cutter for through pins. */
export const STRAIGHT = 8;

export const LAPPED: JointSpec = {
  kind: 'lapped',
  width: 120,
  tailBoard: 14,
  pinBoard: 20,
  lap: 5,
  pin: 10,
  halfPin: { lower: 6, upper: 3 },
  spacing: { kind: 'even', tails: 3 },
};
export const THROUGH: JointSpec = {
  kind: 'through',
  width: 150,
  tailBoard: 14,
  pinBoard: 16,
  pin: 12,
  spacing: { kind: 'even', tails: 3 },
};

export const cutOf = (spec: JointSpec): { joint: Joint; guided: RouterCut } => {
  const laid = value(layOutForCutter(spec, CUTTER));
  return { joint: laid, guided: routerCut(laid, CUTTER, STRAIGHT) };
};
