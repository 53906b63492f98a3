import type { PriceRow } from '../model/fingers/priceTable.ts';
import { type RunningJob, startJob } from './startJob.ts';

/** What few spacers cost, as far as it is known. */
export interface PricesState {
  /** The last table that was worked out. */
  readonly rows: readonly PriceRow[];
  /** Whether that is of the plan as it is now; another is being worked out where it is not. */
  readonly isNew: boolean;
  /** Why it cannot be worked out. */
  readonly fault?: string;
}

/** The pause in editing, in ms, after which prices are worked out. */
const PAUSE = 400;

/**
 * The prices of spacers, worked out beside the page when editing pauses.
 * @param show is called when they have changed
 * @returns asks for those of a plan, and tells what is known by then
 */
export const readyPrices = (show: () => void): ((plan: string) => PricesState) => {
  let rows: readonly PriceRow[] = [];
  let fault: string | undefined;
  /** The plan that the rows, or the fault, are of. */
  let known: string | undefined;
  let wanted: string | undefined;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let running: RunningJob | undefined;

  const settle = (plan: string, why?: string): void => {
    [known, fault, running] = [plan, why, undefined];
    show();
  };
  const start = (plan: string): void => {
    const mine = startJob({ prices: plan }, (news) => {
      if (news.is === 'prices') rows = news.rows;
    });
    running = mine;
    void mine.end.then((how) => {
      if (running !== mine) return;
      settle(plan, how.is === 'failed' ? how.says : undefined);
    });
  };

  return (plan) => {
    if (plan !== wanted) {
      clearTimeout(pause);
      running?.stop();
      running = undefined;
      wanted = plan;
      if (plan !== known) pause = setTimeout(start, PAUSE, plan);
    }
    return { rows, isNew: plan === known, ...(fault !== undefined && plan === known && { fault }) };
  };
};
