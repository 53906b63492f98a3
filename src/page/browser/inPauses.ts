/** How long nothing is asked for until there is a pause, in ms. */
const PAUSE = 100;

/** Something that is done at once, or in the next pause, once for all that has been asked for until then. */
export const inPauses = (act: () => void): { readonly now: () => void; readonly later: () => void } => {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const now = (): void => {
    clearTimeout(waiting);
    act();
  };
  return {
    now,
    later: () => {
      clearTimeout(waiting);
      waiting = setTimeout(now, PAUSE);
    },
  };
};
