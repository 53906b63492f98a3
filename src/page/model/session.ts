import type { Project } from '../../project/project.ts';
import type { Result } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import type { Scope } from './adjust.ts';
import { type CornerRef, cornerKey, cornerOf, type EditedCorner } from './editedCorner.ts';
import type { Moved } from './edits.ts';
import type { Handle } from './handles.ts';
import { begin, goOn, type History, stepBack, stepForward } from './history.ts';
import { stepOf } from './planNumber.ts';
import { locksOf, type Snapshot, snapshot, type Work } from './snapshot.ts';
import type { ViewState } from './viewState.ts';

/** Something that is held and moved: from where it started to where it has come. */
interface Hold {
  readonly handle: Handle;
  readonly start: Snapshot;
  readonly corner: EditedCorner;
  readonly to: number;
  readonly moved: Moved;
  /** How far it can go either way, once that has been found out. */
  readonly limits: Readonly<Partial<Record<'up' | 'down', { readonly to: number; readonly moved: Moved }>>>;
}

/** The work in hand: what it is now, what it was, and what is being done to it. */
export interface Session {
  readonly history: History<Work>;
  readonly now: Snapshot;
  readonly selected: CornerRef;
  readonly scope: Scope;
  readonly hold?: Hold;
  /** What was last moved by keys and could go no further. */
  readonly stopped?: NonNullable<ViewState['moving']>;
  /** What came of typing in the plan's text, as long as nothing else has happened since. */
  readonly typed?: Work;
}

const FIRST_DRAWER: CornerRef = { of: 'drawer', index: 0, end: 'front' };
const FIRST_JOINT: CornerRef = { of: 'joint', index: 0 };

export const startSession = (now: Snapshot): Session => ({
  history: begin(now.work),
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
  const { hold, stopped, scope } = session;
  const now = hold?.moved.snapshot ?? session.now;
  const moving = hold === undefined ? stopped : { handle: hold.handle.id, stop: hold.moved.stop };
  const corner = selectedCorner({ ...session, now });
  return {
    now,
    corner,
    locked: locksOf(now.work, cornerKey(corner)),
    scope,
    ...(moving && { moving }),
  };
};

const atRest = ({ hold: _, stopped: __, ...rest }: Session): Session => rest;

export const choose = (session: Session, selected: CornerRef): Session => ({ ...atRest(session), selected });

/** Goes on with what came of an edit. */
export const commit = (session: Session, next: Snapshot): Session => {
  const rest = atRest(session);
  const same = next.work === session.now.work;
  return same ? rest : { ...rest, now: next, history: goOn(session.history, next.work) };
};

/**
 * Goes on with a text that is being typed: what is typed in one go is one step, so while it goes on the step before
 * stays the same.
 */
export const amend = (session: Session, next: Snapshot): Session => {
  const { typed } = session;
  if (typed !== undefined && typed === session.now.work)
    return { ...session, now: next, history: { ...session.history, present: next.work }, typed: next.work };
  return { ...commit(session, next), typed: next.work };
};

export const attempt = (
  session: Session,
  edit: (now: Snapshot, corner: EditedCorner) => Result<Snapshot>,
): Result<Session> => {
  const result = edit(session.now, selectedCorner(session));
  return result.ok ? { ok: true, value: commit(session, result.value) } : result;
};

const goTo = (session: Session, history: History<Work>): Session => {
  if (history === session.history) return session;
  const made = snapshot(history.present);
  // What was once shown can be shown again.
  return made.ok ? { ...atRest(session), history, now: made.value } : session;
};

export const undo = (session: Session): Session => goTo(session, stepBack(session.history));
export const redo = (session: Session): Session => goTo(session, stepForward(session.history));

export const grab = (session: Session, handle: Handle): Session => {
  const { now } = session;
  return {
    ...atRest(session),
    hold: {
      handle,
      start: now,
      corner: selectedCorner(session),
      to: handle.value,
      moved: { snapshot: now, stop: [] },
      limits: {},
    },
  };
};

/** @param by mm from where it was taken hold of, up or to the right */
export const drag = (session: Session, by: number): Session => {
  const { hold, scope } = session;
  if (hold === undefined) return session;
  const { handle, start, corner } = hold;
  const step = stepOf(unitOf(start.project.units));
  const to = Math.round((handle.value + handle.sense * by) / step) * step;
  if (to === hold.to) return session;
  const way = to > handle.value ? 'up' : 'down';
  const limit = hold.limits[way];
  const beyond = limit && (way === 'up' ? to >= limit.to : to <= limit.to);
  const moved = beyond ? limit.moved : handle.move(start, corner, to, scope);
  const limits = moved.stop.length > 0 && !beyond ? { ...hold.limits, [way]: { to, moved } } : hold.limits;
  return { ...session, hold: { ...hold, to, moved, limits } };
};

/** Keeps what came of it, or lets everything be as it was. */
export const drop = (session: Session, kept: boolean): Session =>
  kept && session.hold !== undefined ? commit(session, session.hold.moved.snapshot) : atRest(session);

/** Moves a handle by steps of 0.1 mm or 1/64 in. */
export const nudge = (session: Session, handle: Handle, steps: number): Session => {
  const to = handle.value + steps * stepOf(unitOf(session.now.project.units));
  const { snapshot: next, stop } = handle.move(session.now, selectedCorner(session), to, session.scope);
  const moved = commit(session, next);
  return stop.length === 0 ? moved : { ...moved, stopped: { handle: handle.id, stop } };
};
