import type { Path, TextMark } from './drawing.ts';
import type { Outline } from './outline.ts';

/** Lines of one type for a machine to follow, and texts to read: mm, x to the right and y upward. */
export interface Layer {
  /** Letters, digits and underscores. */
  readonly name: string;
  readonly line: 'CONTINUOUS' | 'HIDDEN' | 'CENTER';
  /** Closed; their arcs stay arcs. */
  readonly outlines?: readonly Outline[];
  readonly paths?: readonly Path[];
  readonly texts?: readonly TextMark[];
}
