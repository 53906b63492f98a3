import type { DrawnPage, SheetCounts, SheetJob } from './sheetJob.ts';
import { type RunningJob, startJob } from './startJob.ts';

/** A page that is made, and the address of its picture. */
export interface ReadyPage extends DrawnPage {
  readonly url: string;
}

/** The templates to print, and how far they are. */
export interface SheetsState {
  /** `waiting` until editing pauses. */
  readonly is: 'waiting' | 'making' | 'ready' | 'stopped' | 'refused';
  /** Known from when making has begun. */
  readonly counts?: SheetCounts;
  readonly pages: readonly ReadyPage[];
  /** Why they cannot be made. */
  readonly says: readonly string[];
}

/** The pause in editing, in ms, after which sheets are made without being asked for. */
const PAUSE = 3000;

/** More sheets than these are made only when they are asked for. */
const MOST_UNASKED = 100;

const WAITING: SheetsState = { is: 'waiting', pages: [], says: [] };

/**
 * The templates, made beforehand so that they can be printed at once.
 * @param job that makes them, of the plan and the choice as they are now
 * @param show is called when the state has changed
 */
export const readySheets = (job: () => SheetJob, show: () => void) => {
  let state = WAITING;
  let running: RunningJob | undefined;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let isAsked = false;

  const set = (next: SheetsState): void => {
    state = next;
    show();
  };
  const end = (is: 'waiting' | 'stopped'): void => {
    clearTimeout(pause);
    running?.stop();
    running = undefined;
    isAsked = false;
    for (const { url } of state.pages) URL.revokeObjectURL(url);
    set({ ...WAITING, is });
  };

  const make = (): void => {
    clearTimeout(pause);
    set({ ...WAITING, is: 'making' });
    const mine = startJob(job(), (news) => {
      if (news.is === 'page') {
        const url = URL.createObjectURL(news.page.picture);
        set({ ...state, pages: [...state.pages, { ...news.page, url }] });
      } else if (news.is === 'counts') {
        if (!isAsked && (news.counts.templates ?? 0) > MOST_UNASKED) end('waiting');
        else set({ ...state, counts: { ...state.counts, ...news.counts } });
      } else if (news.is === 'drawn') set({ ...state, is: 'ready' });
    });
    running = mine;
    void mine.end.then((how) => {
      if (running !== mine) return;
      running = undefined;
      if (how.is === 'refused' || how.is === 'failed')
        set({ ...WAITING, is: 'refused', says: [how.says].flat() });
    });
  };

  return {
    state: (): SheetsState => state,
    /** They are asked for: makes them now, unless they are made or in the making. */
    ask: (): void => {
      isAsked = true;
      if (state.is === 'waiting' || state.is === 'stopped') make();
    },
    /** Plan or choice has changed: they are made anew when editing pauses. */
    renew: (): void => {
      end('waiting');
      pause = setTimeout(make, PAUSE);
    },
    stop: (): void => {
      if (state.is === 'making') end('stopped');
    },
  };
};
