import type { JointOptions } from './jointOptions.ts';
import type { PaperOptions } from './paperOptions.ts';

/** The options of `compare`, as typed. */
export interface CompareOptions extends JointOptions, PaperOptions {
  readonly widths?: string;
  readonly json?: boolean;
  readonly out?: string;
  readonly force?: boolean;
}
