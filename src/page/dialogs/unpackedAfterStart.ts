import { holdKeys } from '../browser/holdKeys.ts';
import type { AppContext } from '../model/viewState.ts';

/**
 * A part of the page's script that is unpacked right after the start.
 * @param what it makes, for those whose browser cannot unpack it
 */
export const unpackedAfterStart = <Part>(part: Promise<Part>, what: string, say: AppContext['say']) => {
  let isWaited = true;
  const arrive = (): void => {
    isWaited = false;
  };
  part.then(arrive, arrive);
  const fail = (error: unknown): void =>
    say({
      kind: 'stop',
      title: `This browser cannot unpack ${what}.`,
      lines: [`${error}`, 'Save the plan, and open it in a newer browser.'],
    });
  return {
    /** Does something with it once it runs. */
    whenThere: (act: (part: Part) => void): void => void part.then(act, fail),
    /** The same where a user has asked for it, in the order of asking: keys that are pressed meanwhile are meant for what opens. */
    ask: (act: (part: Part) => void): void => {
      const press = isWaited ? holdKeys() : () => {};
      void part.then(act, fail).finally(press);
    },
  };
};
