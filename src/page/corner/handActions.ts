import { type Handle, handlesOf } from '../model/handles.ts';
import { valueWords } from '../model/movedWords.ts';
import {
  cancel,
  drag,
  drop,
  grab,
  keyTo,
  nudge,
  type Session,
  selectedCorner,
  settle,
} from '../model/session.ts';
import { complaintWords } from '../text/plainWords.ts';
import type { DragActions } from './dragHandle.ts';

/** What the handles need of the page. */
export interface HandHost {
  readonly session: () => Session;
  readonly go: (next: Session) => void;
  /** Tells screen readers. */
  readonly announce: (words: string) => void;
  /** Closes the page's message. */
  readonly clear: () => void;
}

/** What a hand or a key on a handle does to the session. */
export const handActions = ({ session, go, announce, clear }: HandHost): DragActions => {
  /** Shows what a key has made of a handle, and tells its value or what stops it. */
  const keyed = (handle: Handle, next: Session): void => {
    clear();
    go(next);
    const { now, keyed: run } = session();
    const [stop] = run?.stop ?? [];
    const { units } = now.project;
    const moved = handlesOf(selectedCorner(session())).find(({ id }) => id === handle.id);
    if (stop !== undefined) announce(complaintWords(stop, now.project));
    else if (moved !== undefined) announce(valueWords(moved, units));
  };
  return {
    grab: (handle) => go(grab(session(), handle)),
    drag: (by) => go(drag(session(), by)),
    drop: (isKept) => go(drop(session(), isKept)),
    nudge: (handle, steps) => keyed(handle, nudge(session(), handle, steps)),
    limit: (handle, end) => keyed(handle, keyTo(session(), handle, end === 'least' ? 0 : handle.most)),
    settle: () => go(settle(session())),
    cancel: () => {
      if (session().keyed?.isOpen !== true) return false;
      go(cancel(session()));
      announce('put back');
      return true;
    },
  };
};
