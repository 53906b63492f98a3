/** A word's pairs of neighbouring letters; its ends count as letters, so that short words have pairs to share. */
const pairs = (word: string): Set<string> => {
  const letters = [...`^${word}$`];
  return new Set(letters.slice(1).map((letter, i) => `${letters[i]}${letter}`));
};

/** Dice's coefficient over pairs of letters (L. R. Dice, Ecology 26, 1945): 1 for the same word, 0 for none shared. */
const wordSimilarity = (a: string, b: string): number => {
  const ours = pairs(a);
  const theirs = pairs(b);
  const shared = [...ours].filter((pair) => theirs.has(pair)).length;
  return (2 * shared) / (ours.size + theirs.size);
};

/**
 * How well a name answers what was asked for, 0 to 1: the mean, over the words asked for, of the likeness to the word of
 * the name that is most like it. The name's other words do not count, so every maple answers "maple" in full.
 * @param asked words between single spaces
 * @param name words between single spaces
 */
export const diceSimilarity = (asked: string, name: string): number => {
  const words = asked.split(' ');
  const best = words.map((word) => Math.max(...name.split(' ').map((known) => wordSimilarity(word, known))));
  return best.reduce((sum, each) => sum + each, 0) / words.length;
};
