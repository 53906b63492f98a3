/** Letters only: half-pin, half_pin and HalfPin are all compared as halfpin. */
const bare = (word: string): string => word.toLowerCase().replace(/[\s_-]/gu, '');

/** Optimal string alignment distance: how many letters to insert, delete, replace, or swap with the next (restricted Damerau–Levenshtein). */
const editDistance = (a: string, b: string): number => {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + same);
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, (before[j - 2] ?? 0) + 1);
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[b.length] ?? 0;
};

/** The nearest of the known words, at a distance of at most 1, or of a third of the letters; undefined where none is as near. */
export const closestWord = (word: string, known: readonly string[]): string | undefined => {
  const meant = bare(word);
  if (meant.length > 40) return undefined;
  let best: string | undefined;
  let least = Math.max(1, Math.floor(meant.length / 3)) + 1;
  for (const each of known) {
    const distance = editDistance(meant, bare(each));
    if (distance < least) {
      best = each;
      least = distance;
    }
  }
  return best;
};
