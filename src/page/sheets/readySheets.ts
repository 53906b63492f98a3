import type { DrawnPage, SheetCounts, SheetJob } from './sheetJob.ts';
import { type RunningJob, startJob } from './startJob.ts';

/** The templates to print, and how far they are. */
export interface SheetsState {
  /** `waiting` until editing pauses. */
  readonly is: 'waiting' | 'making' | 'ready' | 'stopped' | 'refused';
  /** Known from when making has begun. */
  readonly counts?: SheetCounts;
  readonly pages: readonly DrawnPage[];
  /** Addresses of small pictures of the pages; the last may not be made yet. */
  readonly pictures: readonly string[];
  /** Why they cannot be made. */
  readonly says: readonly string[];
}

/** The pause in editing, in ms, after which sheets are made without being asked for. */
const PAUSE = 3000;

/** More sheets than these are made only when they are asked for. */
const MOST_UNASKED = 100;

const WAITING: SheetsState = { is: 'waiting', pages: [], pictures: [], says: [] };

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
    for (const url of state.pictures) URL.revokeObjectURL(url);
    set({ ...WAITING, is });
  };

  const make = (): void => {
    clearTimeout(pause);
    set({ ...WAITING, is: 'making' });
    const mine = startJob(job(), (news) => {
      switch (news.is) {
        case 'counts':
          if (!isAsked && (news.counts.templates ?? 0) > MOST_UNASKED) end('waiting');
          else set({ ...state, counts: { ...state.counts, ...news.counts } });
          break;
        case 'page':
          set({ ...state, pages: [...state.pages, news.page] });
          break;
        case 'drawn':
          set({ ...state, is: 'ready' });
          break;
        case 'picture':
          set({ ...state, pictures: [...state.pictures, URL.createObjectURL(news.picture)] });
      }
    });
    running = mine;
    void mine.end.then((how) => {
      if (running !== mine) return;
      running = undefined;
      if (state.is !== 'ready' && (how.is === 'refused' || how.is === 'failed'))
        set({ ...WAITING, is: 'refused', says: [how.says].flat() });
    });
  };

  const renew = (): void => {
    end('waiting');
    pause = setTimeout(make, PAUSE);
  };

  return {
    state: (): SheetsState => state,
    /** They are asked for: makes them now, unless they are made or in the making. */
    ask: (): void => {
      isAsked = true;
      if (state.is === 'waiting' || state.is === 'stopped') make();
    },
    /** Plan or choice has changed: they are made anew when editing pauses. */
    renew,
    /** While a hand moves a line, none are made that are not asked for. */
    hold: (isHeld: boolean): void => {
      if (isAsked || (state.is !== 'waiting' && state.is !== 'making')) return;
      if (isHeld) end('waiting');
      else renew();
    },
    stop: (): void => {
      if (state.is === 'making') end('stopped');
    },
  };
};
