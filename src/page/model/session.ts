import type { Project } from '../../project/project.ts';
import type { Result } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { type CornerRef, cornerOf, type EditedCorner } from './editedCorner.ts';
import type { Moved } from './edits.ts';
import type { Handle } from './handles.ts';
import { back, forward, type History, push, startHistory } from './history.ts';
import { editWords } from './movedWords.ts';
import { stepOf } from './planNumber.ts';
import { FIRST_SCOPE, type Scope } from './scope.ts';
import { type Snapshot, snapshot } from './snapshot.ts';
import type { ViewState } from './viewState.ts';

/** A drag in progress: its start, and how far it has come. */
interface DragState {
  readonly handle: Handle;
  readonly start: Snapshot;
  readonly corner: EditedCorner;
  readonly to: number;
  readonly moved: Moved;
  /** Its limit in either direction, once reached. */
  readonly limits: Readonly<Partial<Record<'up' | 'down', { readonly to: number; readonly moved: Moved }>>>;
}

/** A run of keys on one handle, which is one step of the history. */
interface KeyedState {
  /** As it was when the run began, and the plan and its history then. */
  readonly handle: Handle;
  readonly start: Snapshot;
  readonly history: History;
  /** What the last key made of the plan. */
  readonly made: string;
  readonly stop: Moved['stop'];
  /** Whether another key still belongs to it. */
  readonly isOpen: boolean;
}

/** The state of the editor: the plan, its history, the selection, and a drag in progress. */
export interface Session {
  readonly history: History;
  readonly now: Snapshot;
  readonly selected: CornerRef;
  readonly scope: Scope;
  readonly dragging?: DragState;
  readonly keyed?: KeyedState;
  /** The result of typing in the plan's text, while nothing else has been changed since. */
  readonly typed?: string;
}

const FIRST_DRAWER: CornerRef = { of: 'drawer', index: 0, end: 'front' };
const FIRST_JOINT: CornerRef = { of: 'joint', index: 0 };

export const startSession = (now: Snapshot): Session => ({
  history: startHistory({ text: now.text, what: '' }),
  now,
  selected: firstCorner(now.project),
  scope: FIRST_SCOPE,
});

const firstCorner = ({ set }: Project): CornerRef => (set.drawers.length > 0 ? FIRST_DRAWER : FIRST_JOINT);

/** The corner that is selected; every plan that can be read has at least one. */
export const selectedCorner = ({ now, selected }: Session): EditedCorner => {
  const corner = cornerOf(now.project, selected) ?? cornerOf(now.project, firstCorner(now.project));
  if (corner === undefined) throw new Error('A plan without corners was let in');
  return corner;
};

export const viewStateOf = (session: Session): ViewState => {
  const { dragging, scope } = session;
  const now = dragging?.moved.snapshot ?? session.now;
  const moving = movingIn(session);
  const corner = selectedCorner({ ...session, now });
  return {
    now,
    corner,
    locked: corner.locked,
    scope,
    ...(moving && { moving }),
  };
};

/** The handle that is moved; the reason that stopped the keys stays until something else is done. */
const movingIn = ({ dragging, keyed }: Session): ViewState['moving'] => {
  if (dragging !== undefined)
    return { handle: dragging.handle.id, from: dragging.handle.value, stop: dragging.moved.stop };
  if (keyed === undefined || !(keyed.isOpen || keyed.stop.length > 0)) return undefined;
  return { handle: keyed.handle.id, from: keyed.handle.value, stop: keyed.stop };
};

const atRest = ({ dragging: _, keyed: __, ...rest }: Session): Session => rest;

export const selectCorner = (session: Session, selected: CornerRef): Session => ({
  ...atRest(session),
  selected,
});

/** Adds the result of an edit to the history. @param what the edit in words, for undo */
export const commit = (session: Session, next: Snapshot, what = ''): Session => {
  const rest = atRest(session);
  const same = next.text === session.now.text;
  return same ? rest : { ...rest, now: next, history: push(session.history, { text: next.text, what }) };
};

/**
 * The same for a text that is being typed: consecutive changes of it are one step of the history.
 */
export const amend = (session: Session, next: Snapshot): Session => {
  const { typed } = session;
  const what = 'the plan as text';
  if (typed !== undefined && typed === session.now.text)
    return {
      ...session,
      now: next,
      history: push(back(session.history), { text: next.text, what }),
      typed: next.text,
    };
  return { ...commit(session, next, what), typed: next.text };
};

export const attempt = (
  session: Session,
  edit: (now: Snapshot, corner: EditedCorner) => Result<Snapshot>,
  what = '',
): Result<Session> => {
  const result = edit(session.now, selectedCorner(session));
  return result.ok ? { ok: true, value: commit(session, result.value, what) } : result;
};

const goTo = (session: Session, history: History): Session => {
  if (history === session.history) return session;
  const made = snapshot(history.present.text);
  // What has been laid out before can be laid out again.
  return made.ok ? { ...atRest(session), history, now: made.value } : session;
};

export const undo = (session: Session): Session => goTo(session, back(session.history));
export const redo = (session: Session): Session => goTo(session, forward(session.history));

/** The edit in words that undo would take back; undefined where there is none. */
export const undoable = ({ history: { past, present } }: Session): string | undefined =>
  past.length === 0 ? undefined : present.what;
/** The edit in words that redo would bring back; undefined where there is none. */
export const redoable = ({ history: { future } }: Session): string | undefined => future[0]?.what;

export const grab = (session: Session, handle: Handle): Session => {
  const { now } = session;
  return {
    ...atRest(session),
    dragging: {
      handle,
      start: now,
      corner: selectedCorner(session),
      to: handle.value,
      moved: { snapshot: now, stop: [] },
      limits: {},
    },
  };
};

/** @param by mm from where it was grabbed, up or to the right */
export const drag = (session: Session, by: number): Session => {
  const { dragging, scope } = session;
  if (dragging === undefined) return session;
  const { handle, start, corner } = dragging;
  const step = stepOf(unitOf(start.project.units));
  const to = Math.round((handle.value + handle.sense * by) / step) * step;
  if (to === dragging.to) return session;
  const way = to > handle.value ? 'up' : 'down';
  const limit = dragging.limits[way];
  const beyond = limit && (way === 'up' ? to >= limit.to : to <= limit.to);
  const moved = beyond ? limit.moved : handle.move(start, corner, to, scope);
  const limits =
    moved.stop.length > 0 && !beyond ? { ...dragging.limits, [way]: { to, moved } } : dragging.limits;
  return { ...session, dragging: { ...dragging, to, moved, limits } };
};

/** Ends a drag: keeps its result, or restores the state before it. */
export const drop = (session: Session, kept: boolean): Session => {
  const { dragging } = session;
  if (!kept || dragging === undefined) return atRest(session);
  return commit(session, dragging.moved.snapshot, wordsOf(atRest(session), dragging.handle));
};

const wordsOf = (session: Session, handle: Handle): string => editWords(handle, viewStateOf(session));

/** Moves a handle by steps of 0.1 mm or 1/64 in. */
export const nudge = (session: Session, handle: Handle, steps: number): Session =>
  keyTo(session, handle, handle.value + steps * stepOf(unitOf(session.now.project.units)));

/** Moves a handle towards a value, by a key: keys on one handle are one step of the history, until the run is settled. */
export const keyTo = (session: Session, handle: Handle, to: number): Session => {
  const { keyed, now, history, scope } = session;
  const isSameRun = keyed?.isOpen === true && keyed.handle.id === handle.id && keyed.made === now.text;
  const run = isSameRun ? keyed : { handle, start: now, history };
  const moved = handle.move(now, selectedCorner(session), to, scope);
  const next = moved.snapshot.text === run.start.text ? run.start : moved.snapshot;
  return {
    ...atRest(session),
    now: next,
    history:
      next === run.start
        ? run.history
        : push(run.history, { text: next.text, what: wordsOf(session, handle) }),
    keyed: { ...run, made: next.text, stop: moved.stop, isOpen: true },
  };
};

/** Ends a run of keys; another key begins another step. */
export const settle = (session: Session): Session =>
  session.keyed?.isOpen === true ? { ...session, keyed: { ...session.keyed, isOpen: false } } : session;

/** Puts back where it began what is dragged, or what a run of keys has moved. */
export const cancel = (session: Session): Session => {
  const { keyed } = session;
  return keyed?.isOpen === true
    ? { ...atRest(session), now: keyed.start, history: keyed.history }
    : atRest(session);
};
