import type { AppContext } from '../model/viewState.ts';

/**
 * A part of the page's script that is unpacked right after the start. What is asked of it until then is done once it runs,
 * in the order in which it was asked for.
 * @param what it makes, for those whose browser cannot unpack it
 */
export const unpackedAfterStart = <Part>(part: Promise<Part>, what: string, say: AppContext['say']) => {
  const fail = (error: unknown): void =>
    say({
      kind: 'stop',
      title: `This browser cannot unpack ${what}.`,
      lines: [`${error}`, 'Save the plan, and open it in a newer browser.'],
    });
  // That it fails is said to who asks for it.
  part.catch(() => {});
  return (act: (part: Part) => void): void => {
    part.then(act, fail);
  };
};
