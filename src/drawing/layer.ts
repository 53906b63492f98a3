import type { Path } from './drawing.ts';
import type { Outline } from './outline.ts';

/** What a machine is to follow with one line type: outlines and lines in mm, x to the right and y upward. */
export interface Layer {
  /** Letters, digits and underscores. */
  readonly name: string;
  readonly line: 'CONTINUOUS' | 'HIDDEN' | 'CENTER';
  /** Closed; their arcs stay arcs. */
  readonly outlines?: readonly Outline[];
  readonly paths?: readonly Path[];
}
