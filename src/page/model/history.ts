import { type Difference, difference, differing } from './difference.ts';

/** A state of the plan, and the edit that led to it, in words. */
export interface Step {
  /** The plan, as it is saved. */
  readonly text: string;
  readonly what: string;
}

/** A step whose text is told by what differs from its neighbour's, so that a thousand of them take little memory. */
interface Packed {
  readonly what: string;
  readonly text: Difference;
}

/** Undo and redo: the states before the present one, and those that were undone; each beside its neighbour towards the present. */
export interface History {
  readonly past: readonly Packed[];
  readonly present: Step;
  readonly future: readonly Packed[];
}

const pack = ({ text, what }: Step, beside: Step): Packed => ({
  what,
  text: difference(beside.text, text),
});

const unpack = ({ what, text }: Packed, beside: Step): Step => ({
  text: differing(beside.text, text),
  what,
});

export const startHistory = (present: Step): History => ({ past: [], present, future: [] });

/** Adds a state; undone states are discarded. */
export const push = ({ past, present }: History, next: Step): History => ({
  past: [...past, pack(present, next)],
  present: next,
  future: [],
});

export const back = (history: History): History => {
  const { past, present, future } = history;
  const last = past.at(-1);
  if (last === undefined) return history;
  const before = unpack(last, present);
  return { past: past.slice(0, -1), present: before, future: [pack(present, before), ...future] };
};

export const forward = (history: History): History => {
  const { past, present, future } = history;
  const [next, ...rest] = future;
  if (next === undefined) return history;
  const after = unpack(next, present);
  return { past: [...past, pack(present, after)], present: after, future: rest };
};
