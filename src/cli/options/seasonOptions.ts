import type { NotationOptions } from '../units.ts';
import type { PaperOptions } from './paperOptions.ts';

/** The options of `season`, as typed. */
export interface SeasonOptions extends PaperOptions, NotationOptions {
  readonly species?: string;
  readonly shrinkage?: string;
  readonly coefficient?: string;
  readonly grain?: string;
  readonly size?: string;
  readonly from?: string;
  readonly to?: string;
  readonly json?: boolean;
  readonly out?: string;
  readonly force?: boolean;
  readonly woods?: boolean;
}
