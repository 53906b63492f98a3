import type { Project } from '../../project/project.ts';
import type { Result } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import type { Scope } from './adjust.ts';
import { type CornerRef, cornerOf, type EditedCorner } from './editedCorner.ts';
import type { Moved } from './edits.ts';
import type { Handle } from './handles.ts';
import { back, forward, type History, push, startHistory } from './history.ts';
import { stepOf } from './planNumber.ts';
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

/** The state of the editor: the plan, its history, the selection, and a drag in progress. */
export interface Session {
  readonly history: History<string>;
  readonly now: Snapshot;
  readonly selected: CornerRef;
  readonly scope: Scope;
  readonly dragging?: DragState;
  /** The last move by keys, where it reached a limit. */
  readonly stopped?: NonNullable<ViewState['moving']>;
  /** The result of typing in the plan's text, while nothing else has been changed since. */
  readonly typed?: string;
}

const FIRST_DRAWER: CornerRef = { of: 'drawer', index: 0, end: 'front' };
const FIRST_JOINT: CornerRef = { of: 'joint', index: 0 };

export const startSession = (now: Snapshot): Session => ({
  history: startHistory(now.text),
  now,
  selected: firstCorner(now.project),
  scope: 'set',
});

const firstCorner = ({ set }: Project): CornerRef => (set.drawers.length > 0 ? FIRST_DRAWER : FIRST_JOINT);

/** The corner that is selected; every plan that can be read has at least one. */
export const selectedCorner = ({ now, selected }: Session): EditedCorner => {
  const corner = cornerOf(now.project, selected) ?? cornerOf(now.project, firstCorner(now.project));
  if (corner === undefined) throw new Error('A plan without corners was let in');
  return corner;
};

export const viewStateOf = (session: Session): ViewState => {
  const { dragging, stopped, scope } = session;
  const now = dragging?.moved.snapshot ?? session.now;
  const moving = dragging === undefined ? stopped : { handle: dragging.handle.id, stop: dragging.moved.stop };
  const corner = selectedCorner({ ...session, now });
  return {
    now,
    corner,
    locked: corner.locked,
    scope,
    ...(moving && { moving }),
  };
};

const atRest = ({ dragging: _, stopped: __, ...rest }: Session): Session => rest;

export const selectCorner = (session: Session, selected: CornerRef): Session => ({
  ...atRest(session),
  selected,
});

/** Adds the result of an edit to the history. */
export const commit = (session: Session, next: Snapshot): Session => {
  const rest = atRest(session);
  const same = next.text === session.now.text;
  return same ? rest : { ...rest, now: next, history: push(session.history, next.text) };
};

/**
 * The same for a text that is being typed: consecutive changes of it are one step of the history.
 */
export const amend = (session: Session, next: Snapshot): Session => {
  const { typed } = session;
  if (typed !== undefined && typed === session.now.text)
    return {
      ...session,
      now: next,
      history: { ...session.history, present: next.text },
      typed: next.text,
    };
  return { ...commit(session, next), typed: next.text };
};

export const attempt = (
  session: Session,
  edit: (now: Snapshot, corner: EditedCorner) => Result<Snapshot>,
): Result<Session> => {
  const result = edit(session.now, selectedCorner(session));
  return result.ok ? { ok: true, value: commit(session, result.value) } : result;
};

const goTo = (session: Session, history: History<string>): Session => {
  if (history === session.history) return session;
  const made = snapshot(history.present);
  // What has been laid out before can be laid out again.
  return made.ok ? { ...atRest(session), history, now: made.value } : session;
};

export const undo = (session: Session): Session => goTo(session, back(session.history));
export const redo = (session: Session): Session => goTo(session, forward(session.history));

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
export const drop = (session: Session, kept: boolean): Session =>
  kept && session.dragging !== undefined ? commit(session, session.dragging.moved.snapshot) : atRest(session);

/** Moves a handle by steps of 0.1 mm or 1/64 in. */
export const nudge = (session: Session, handle: Handle, steps: number): Session => {
  const to = handle.value + steps * stepOf(unitOf(session.now.project.units));
  const { snapshot: next, stop } = handle.move(session.now, selectedCorner(session), to, session.scope);
  const moved = commit(session, next);
  return stop.length === 0 ? moved : { ...moved, stopped: { handle: handle.id, stop } };
};
