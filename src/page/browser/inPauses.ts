import { nextTask } from './dom.ts';

/** How long nothing is asked for until there is a pause, in ms. */
const PAUSE = 100;

/**
 * Something that is done at once, or in the next pause, once for all that has been asked for until then. In a pause it is done
 * step by step, so that a hand that moves on waits for no more than one; the steps left are dropped then.
 */
export const inPauses = (
  steps: () => Iterable<void>,
): { readonly now: () => void; readonly later: () => void } => {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;
  const one = async (): Promise<void> => {
    const mine = asked;
    for (const _ of steps()) {
      await nextTask();
      if (asked !== mine) return;
    }
  };
  const ask = (): void => {
    asked++;
    clearTimeout(waiting);
  };
  return {
    now: () => {
      ask();
      for (const _ of steps());
    },
    later: () => {
      ask();
      waiting = setTimeout(one, PAUSE);
    },
  };
};
