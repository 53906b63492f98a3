/** Undo and redo: the states before the present one, and those that were undone. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
}

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [] });

/** Adds a state; undone states are discarded. */
export const push = <T>({ past, present }: History<T>, next: T): History<T> => ({
  past: [...past, present],
  present: next,
  future: [],
});

export const back = <T>(history: History<T>): History<T> => {
  const { past, present, future } = history;
  const before = past.at(-1);
  return before === undefined
    ? history
    : { past: past.slice(0, -1), present: before, future: [present, ...future] };
};

export const forward = <T>(history: History<T>): History<T> => {
  const { past, present, future } = history;
  const [next, ...rest] = future;
  return next === undefined ? history : { past: [...past, present], present: next, future: rest };
};
