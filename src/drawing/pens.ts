import type { PenName } from './drawing.ts';

/** A line type: its width and, where it is not continuous, its dashes and gaps, in mm. */
export interface Pen {
  readonly width: number;
  readonly dash?: readonly number[];
}

/** Line widths 0.13, 0.18, 0.25, 0.5 of ISO 128; dashed for what is hidden, long-dash-dot for folds. */
export const PENS: Readonly<Record<PenName, Pen>> = {
  cut: { width: 0.13 },
  saw: { width: 0.18 },
  baseline: { width: 0.25 },
  lap: { width: 0.25, dash: [3, 1] },
  fold: { width: 0.13, dash: [6, 1.2, 0.5, 1.2] },
  edge: { width: 0.5 },
  hatch: { width: 0.13 },
  groove: { width: 0.13, dash: [2, 1] },
  thin: { width: 0.13 },
  medium: { width: 0.25 },
};
