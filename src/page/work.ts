import { accept, type Result } from '../complaint.ts';
import { type Cuts, cutCorners } from '../guided/cutCorners.ts';
import { type LaidOut, layOutPlan } from '../plan/layOutPlan.ts';
import { namedCorners } from '../plan/namedCorners.ts';
import type { PlanComplaint } from '../plan/planComplaint.ts';
import type { Locked } from './widths.ts';

/** What is worked on, and what undo brings back. */
export interface Work {
  /** The plan, as it is saved. */
  readonly text: string;
  /** For each corner, by its key, which widths are locked. */
  readonly locks: Readonly<Record<string, readonly number[]>>;
}

/** All that follows from a plan: how it is set out, and how its cutter, if it has one, cuts it. */
export interface Made {
  readonly laid: LaidOut;
  readonly cuts: Cuts;
}

/** A work and all that follows from it. */
export interface Snapshot extends Made {
  readonly work: Work;
}

export const locksOf = ({ locks }: Work, key: string): Locked => new Set(locks[key]);

export const withLocks = ({ text, locks }: Work, key: string, locked: Locked): Work => {
  const { [key]: _, ...others } = locks;
  return {
    text,
    locks: locked.size === 0 ? others : { ...others, [key]: [...locked].sort((a, b) => a - b) },
  };
};

type Making =
  | { readonly ok: true; readonly value: Made }
  | { readonly ok: false; readonly complaints: readonly PlanComplaint[] };

/** Sets a plan out as it is written, or says all that is wrong with it and in which line. */
export const make = (given: string | Uint8Array): Making => {
  const laid = layOutPlan(given);
  if (!laid.ok) return laid;
  const { plan, locate } = laid.value;
  const cuts = cutCorners(namedCorners(laid.value), plan.cutting);
  return cuts.ok
    ? { ok: true, value: { laid: laid.value, cuts: cuts.value } }
    : { ok: false, complaints: cuts.complaints.map(locate) };
};

/** Sets everything out, or says why it cannot be made. */
export const snapshot = (work: Work): Result<Snapshot> => {
  const made = make(work.text);
  return made.ok
    ? accept({ work, ...made.value })
    : { ok: false, complaints: made.complaints.map(({ complaint }) => complaint) };
};
