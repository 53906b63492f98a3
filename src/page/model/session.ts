import type { PlanComplaint } from '../../plan/read/planComplaint.ts';
import type { Project } from '../../project/project.ts';
import { type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { readProject } from '../text/planReader.ts';
import { type CornerRef, cornerOf, type EditedCorner } from './editedCorner.ts';
import { type Moved, type Preview, previewOf } from './edits.ts';
import type { Handle } from './handles.ts';
import { back, forward, type History, push, startHistory } from './history.ts';
import { editWords } from './movedWords.ts';
import { stepOf } from './planNumber.ts';
import { FIRST_SCOPE, type Scope } from './scope.ts';
import type { Snapshot } from './snapshot.ts';
import type { ViewState } from './viewState.ts';

/** A drag in progress: its start, and how far it has come. The plan is changed when the hand is still, or lets go. */
interface DragState {
  readonly handle: Handle;
  readonly start: Snapshot;
  readonly corner: EditedCorner;
  readonly to: number;
  readonly preview: Preview;
  readonly isStill: boolean;
  /** Its limit in either direction, once reached. */
  readonly limits: Readonly<
    Partial<Record<'up' | 'down', { readonly to: number; readonly preview: Preview }>>
  >;
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

/** Text that is typed and no valid plan yet: the last step of the history, after that of the plan which is drawn meanwhile. */
export interface Draft {
  readonly text: string;
  /** From the top of the text down. */
  readonly faults: readonly PlanComplaint[];
  readonly units: Notation;
}

/** The state of the editor: the plan, its history, the selection, and a drag in progress. */
export interface Session {
  readonly history: History;
  readonly now: Snapshot;
  /** While there is one, nothing else is edited. */
  readonly draft?: Draft;
  readonly selected: CornerRef;
  readonly scope: Scope;
  readonly dragging?: DragState;
  readonly keyed?: KeyedState;
  /** What was typed last in the plan's text, and the history before that: what is typed next belongs to the same step. */
  readonly typing?: { readonly made: string; readonly before: History };
  /** Edits that are one step of the history: a name that they share, what the last made, and the history before them. */
  readonly run?: { readonly name: string; readonly made: string; readonly before: History };
}

/** What is in the way of every edit: text that is typed and not valid yet. */
const inTheWay = ({ draft }: Session): Complaint[] =>
  draft === undefined
    ? []
    : [
        {
          at: [],
          says: say`${faultIn(draft)}, so nothing else can be changed`,
          remedy: say`put it right, or take it back by Undo`,
        },
      ];

/** Where a draft is at fault: `The plan’s text has a fault in line 12`. */
export const faultIn = ({ faults: [first] }: Draft): string =>
  `The plan’s text has a fault in line ${first?.line ?? 1}`;

const FIRST_DRAWER: CornerRef = { of: 'drawer', index: 0, end: 'front' };
const FIRST_BOX: CornerRef = { ...FIRST_DRAWER, of: 'box' };
const FIRST_JOINT: CornerRef = { of: 'joint', index: 0 };

export const startSession = (now: Snapshot): Session => ({
  history: startHistory({ text: now.text, what: '' }),
  now,
  selected: firstCorner(now.project),
  scope: FIRST_SCOPE,
});

const firstCorner = ({ set }: Project): CornerRef =>
  set.drawers.length > 0 ? FIRST_DRAWER : set.boxes ? FIRST_BOX : FIRST_JOINT;

/** The corner that is selected; every plan that can be read has at least one. */
export const selectedCorner = ({ now, selected }: Session): EditedCorner => {
  const corner = cornerOf(now.project, selected) ?? cornerOf(now.project, firstCorner(now.project));
  if (corner === undefined) throw new Error('A plan without corners was let in');
  return corner;
};

export const viewStateOf = (session: Session): ViewState => {
  const { dragging, scope } = session;
  const now = dragging?.preview.moved?.snapshot ?? session.now;
  const moving = movingIn(session);
  const corner = dragging?.preview.corner ?? selectedCorner(session);
  return {
    now,
    corner,
    locked: corner.locked,
    scope,
    isPreview: dragging?.isStill === false,
    ...(moving && { moving }),
  };
};

/** The handle that is moved; the reason that stopped the keys stays until something else is done. */
const movingIn = ({ dragging, keyed, selected }: Session): ViewState['moving'] => {
  if (dragging !== undefined) {
    const { handle, corner, preview } = dragging;
    return { handle: handle.id, from: handle.value, before: corner, stop: preview.stop };
  }
  if (keyed === undefined || !(keyed.isOpen || keyed.stop.length > 0)) return undefined;
  const { handle, start, stop } = keyed;
  return { handle: handle.id, from: handle.value, before: cornerOf(start.project, selected), stop };
};

const atRest = ({ dragging: _, keyed: __, ...rest }: Session): Session => rest;

export const selectCorner = (session: Session, selected: CornerRef): Session => ({
  ...atRest(session),
  selected,
});

/** Adds the result of an edit to the history. @param what the edit in words, for undo */
export const commit = (session: Session, next: Snapshot, what = ''): Session => {
  const { draft: _, typing: __, ...rest } = atRest(session);
  const same = next.text === session.history.present.text;
  return same
    ? atRest(session)
    : { ...rest, now: next, history: push(session.history, { text: next.text, what }) };
};

/**
 * Types over the plan's text; consecutive typing is one step of the history. While the text is no valid plan it is a draft,
 * a step of its own, and the last plan that was valid stays.
 */
export const type = (session: Session, text: string): Session => {
  const { typing, history, draft: before, ...rest } = atRest(session);
  const start =
    typing?.made === history.present.text ? typing.before : before === undefined ? history : back(history);
  const { draft, now = session.now } = read(text);
  const planned =
    now.text === start.present.text ? start : push(start, { text: now.text, what: 'the plan as text' });
  return {
    ...rest,
    now,
    history: draft === undefined ? planned : push(planned, { text, what: 'text that is no plan yet' }),
    typing: { made: text, before: start },
    ...(draft && { draft }),
  };
};

/** A text as a plan, or as a draft of one. */
const read = (text: string): { readonly now?: Snapshot; readonly draft?: Draft } => {
  const reading = readProject(text);
  return reading.ok
    ? { now: { text, project: reading.value } }
    : { draft: { text, faults: reading.complaints, units: reading.units } };
};

/** The same plan read again, where what reads it has changed. */
export const readAgain = (session: Session): Session => {
  const { draft, now = session.now } = read(session.now.text);
  return { ...session, now, ...(session.draft === undefined && draft && { draft }) };
};

export const attempt = (
  session: Session,
  edit: (now: Snapshot, corner: EditedCorner) => Result<Snapshot>,
  what = '',
): Result<Session> => {
  if (session.draft !== undefined) return refuse(...inTheWay(session));
  const result = edit(session.now, selectedCorner(session));
  return result.ok ? { ok: true, value: commit(session, result.value, what) } : result;
};

/** An edit that belongs to the same step of the history as those before it of one name, where nothing came between. */
export const attemptInRun = (
  session: Session,
  edit: (now: Snapshot, corner: EditedCorner) => Result<Snapshot>,
  what: string,
  name: string,
): Result<Session> => {
  const { run, now, history } = session;
  const before = run?.name === name && run.made === now.text ? run.before : history;
  const next = attempt(session, edit, what);
  if (!next.ok || next.value.now === now) return next;
  const { text } = next.value.now;
  return {
    ok: true,
    value: {
      ...next.value,
      history: text === before.present.text ? before : push(before, { text, what }),
      run: { name, made: text, before },
    },
  };
};

const goTo = (session: Session, history: History): Session => {
  if (history === session.history) return session;
  const { draft: _, typing: __, ...rest } = atRest(session);
  const { draft, now } = read(history.present.text);
  if (draft === undefined) return now === undefined ? session : { ...rest, history, now };
  const drawn = read(back(history).present.text).now;
  return drawn === undefined ? session : { ...rest, history, now: drawn, draft };
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
  const corner = selectedCorner(session);
  return {
    ...atRest(session),
    dragging: {
      handle,
      start: now,
      corner,
      to: handle.value,
      preview: { corner, stop: inTheWay(session) },
      isStill: true,
      limits: {},
    },
  };
};

/** @param by mm from where it was grabbed, up or to the right */
export const drag = (session: Session, by: number): Session => {
  const { dragging, draft, scope } = session;
  if (dragging === undefined || draft !== undefined) return session;
  const { handle, start, corner } = dragging;
  const step = stepOf(unitOf(start.project.units));
  const to = Math.round((handle.value + handle.sense * by) / step) * step;
  if (to === dragging.to) return session;
  const way = to > handle.value ? 'up' : 'down';
  const limit = dragging.limits[way];
  const beyond = limit && (way === 'up' ? to >= limit.to : to <= limit.to);
  const found = (): Preview =>
    handle.preview?.(start, corner, to) ?? previewOf(handle.move(start, corner, to, scope), corner);
  const preview = beyond ? limit.preview : found();
  if (preview === dragging.preview) return session;
  const limits =
    preview.stop.length > 0 && !beyond ? { ...dragging.limits, [way]: { to, preview } } : dragging.limits;
  return { ...session, dragging: { ...dragging, to, preview, isStill: false, limits } };
};

/** Changes the plan as its corner is previewed, when the hand is still. */
export const rest = (session: Session): Session => {
  const { dragging, scope } = session;
  if (dragging === undefined || dragging.isStill) return session;
  const { handle, start, corner, to, preview } = dragging;
  const moved = preview.moved ?? handle.move(start, corner, to, scope);
  return { ...session, dragging: { ...dragging, preview: previewOf(moved, corner), isStill: true } };
};

/** Ends a drag: keeps its result, or restores the state before it. */
export const drop = (session: Session, kept: boolean): Session => {
  const { dragging } = rest(session);
  const moved = dragging?.preview.moved;
  if (!kept || dragging === undefined || moved === undefined) return atRest(session);
  // What was laid out from the plan's values can be laid out from its text.
  const { now } = read(moved.snapshot.text);
  return now === undefined
    ? atRest(session)
    : commit(session, now, wordsOf(atRest(session), dragging.handle));
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
  const moved =
    session.draft === undefined
      ? handle.move(now, selectedCorner(session), to, scope)
      : { snapshot: now, stop: inTheWay(session) };
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
