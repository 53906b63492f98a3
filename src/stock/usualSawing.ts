import { MM_PER_INCH, type Unit } from '../units/unit.ts';
import type { Saw } from './wanted.ts';

/** What a shop loses between a board and its parts, in mm. */
export interface Sawing extends Saw {
  /** Left on each long edge, to plane. */
  readonly edge: number;
  /** Planed off each face. */
  readonly face: number;
}

/** What is lost where a plan does not say; common practice, without a source. */
export const USUAL_SAWING: Readonly<Record<Unit, Sawing>> = {
  mm: { kerf: 3, edge: 3, ends: 25, face: 1, keep: { length: 300, width: 50 } },
  in: {
    kerf: MM_PER_INCH / 8,
    edge: MM_PER_INCH / 8,
    ends: MM_PER_INCH,
    face: MM_PER_INCH / 32,
    keep: { length: 12 * MM_PER_INCH, width: 2 * MM_PER_INCH },
  },
};

/** What can be meant, in mm. */
export const KERF_RANGE = { least: 0, most: 20 } as const;
export const EDGE_RANGE = { least: 0, most: 50 } as const;
export const ENDS_RANGE = { least: 0, most: 500 } as const;
export const FACE_RANGE = { least: 0, most: 20 } as const;
export const KEEP_RANGE = { least: 1, most: 20_000 } as const;
