/** A text as what differs in it from another: `words` in place of `length` letters from `at` on. */
export interface Difference {
  readonly at: number;
  readonly length: number;
  readonly words: string;
}

/** What makes a text of another. */
export const difference = (from: string, to: string): Difference => {
  const least = Math.min(from.length, to.length);
  let at = 0;
  while (at < least && from[at] === to[at]) at++;
  let after = 0;
  while (after < least - at && from.at(-1 - after) === to.at(-1 - after)) after++;
  // A slice of a text would keep the whole text in memory; its copy does not.
  const words = structuredClone(to.slice(at, to.length - after));
  return { at, length: from.length - after - at, words };
};

/** The text that differs so from another. */
export const differing = (from: string, { at, length, words }: Difference): string =>
  from.slice(0, at) + words + from.slice(at + length);
