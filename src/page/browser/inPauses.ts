/** The least time between two runs, in ms: no faster than the eye takes in many numbers. */
const APART = 120;
/** The most of the time that runs may take. */
const SHARE = 1 / 20;

/**
 * Something that is done at once, or a moment later, once for all that has been asked for until then: the later, the longer
 * it took the last time.
 */
export const inPauses = (act: () => void): { readonly now: () => void; readonly later: () => void } => {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let took = 0;
  const now = (): void => {
    clearTimeout(waiting);
    waiting = undefined;
    const start = performance.now();
    act();
    took = performance.now() - start;
  };
  return {
    now,
    later: () => {
      waiting ??= setTimeout(now, Math.max(APART, took / SHARE));
    },
  };
};
