import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import type { Project } from '../../project/project.ts';
import { type RunningJob, startJob } from './startJob.ts';

/** Where the parts lie on their boards, as far as it is known. */
export interface BoardsState {
  /** The last layout, with the boards and parts that it is of. */
  readonly laid?: BrokenOut;
  /** Whether it is of the boards and parts as they are now. */
  readonly isNew: boolean;
  /** What share of the search for the best one is done, from 0 to 1; 1 where nothing is searched for. */
  readonly share: number;
  /** Whether the search was stopped before its end. */
  readonly isStopped: boolean;
  /** Why it cannot be laid out. */
  readonly fault?: string;
}

/** The pause in editing, in ms, after which boards are laid out. */
const PAUSE = 400;

const NOTHING: BoardsState = { isNew: false, share: 0, isStopped: false };

/**
 * Parts laid out on their boards, beside the page, when editing pauses. The layout before stays until there is a new one.
 * @param show is called when the state has changed
 */
export const readyBoards = (show: () => void) => {
  let state = NOTHING;
  /** The boards and parts that are asked about. */
  let wanted = '';
  let last: Project['work'];
  let asked: (() => void) | undefined;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let running: RunningJob | undefined;

  const end = (): void => {
    clearTimeout(pause);
    running?.stop();
    running = undefined;
  };
  const start = (work: NonNullable<Project['work']>, sawing: Project['sawing']): void => {
    const mine = startJob({ boards: { work, sawing } }, (news) => {
      if (news.is !== 'boards') return;
      const { laid, share } = news;
      state = { ...state, ...(laid && { laid: { ...work, ...laid }, isNew: true }), share, isStopped: false };
      show();
    });
    running = mine;
    void mine.end.then((how) => {
      if (running !== mine) return;
      running = undefined;
      if (how.is === 'failed') state = { ...state, share: 1, fault: how.says };
      show();
    });
  };

  return {
    /** Asks for the layout of a plan, and tells what is known by then. */
    of: ({ work, sawing }: Pick<Project, 'work' | 'sawing'>): BoardsState => {
      if (work === undefined) {
        end();
        [wanted, last, state] = ['', undefined, NOTHING];
        return state;
      }
      if (work === last) return state;
      last = work;
      const key = JSON.stringify([work.planks, work.blanks, work.runs, sawing]);
      if (key !== wanted) {
        end();
        const { laid } = state;
        state = { ...NOTHING, ...(laid && { laid }) };
        wanted = key;
        asked = () => start(work, sawing);
        pause = setTimeout(asked, PAUSE);
      }
      return state;
    },
    /** Stops the search; the layout found so far stays. */
    stop: (): void => {
      end();
      state = { ...state, isStopped: true };
      show();
    },
    /** Searches again after it was stopped. */
    resume: (): void => {
      state = { ...state, share: 0, isStopped: false };
      asked?.();
      show();
    },
  };
};
