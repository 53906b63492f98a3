import type { Message } from '../dialogs/messages.ts';
import { find, setText } from './dom.ts';
import { canStore, type PlanText, storePlan } from './storage.ts';

/** After a change, in ms, so that dragging is not delayed. */
const MOMENT = 400;

/** Stores the plan in the browser while it is edited. */
export interface Storing {
  /** Stores it a moment from now. */
  readonly soon: () => void;
  readonly now: () => void;
  /** The plan is saved as a file: nothing is lost with the page. */
  readonly saved: () => void;
  /** Whether a plan that another took the place of could be kept. */
  readonly kept: (isKept: boolean) => void;
}

/**
 * Where the browser stores nothing, this says so beside Save for as long as that is so, and asks before the page is left
 * with changes that are in no file.
 * @param before called before another plan that is stored is written over
 */
export const storing = (
  plan: () => PlanText,
  before: () => void,
  say: (message: Message) => void,
): Storing => {
  const note = find('unkept', HTMLElement);
  let inFile = plan().text;
  const isInFile = (): boolean => plan().text === inFile && plan().draft === undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stores = canStore();
  let keeps = true;
  let isWarned = false;
  const tell = (): void =>
    setText(
      note,
      stores
        ? keeps
          ? ''
          : 'This browser keeps no earlier plans: save before you open another.'
        : 'This browser keeps nothing: save before you leave.',
    );
  tell();
  const now = (): void => {
    clearTimeout(timer);
    timer = undefined;
    before();
    stores = storePlan(plan());
    tell();
    if (!stores && !isWarned)
      say({
        kind: 'note',
        title:
          'This browser does not keep your plan: its storage is full or switched off. Save the plan as a file before you leave.',
      });
    isWarned = !stores;
  };
  addEventListener('pagehide', () => {
    if (timer !== undefined) now();
  });
  addEventListener('beforeunload', (event) => {
    if (timer !== undefined) now();
    if (!stores && !isInFile()) event.preventDefault();
  });
  return {
    soon: () => {
      timer ??= setTimeout(now, MOMENT);
    },
    now,
    saved: () => {
      inFile = plan().text;
    },
    kept: (isKept) => {
      keeps = isKept;
      tell();
    },
  };
};
