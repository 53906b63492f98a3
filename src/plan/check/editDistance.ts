/** Letters alone decide: half-pin, half_pin and HalfPin are all meant to be halfPin. */
const bare = (word: string): string => word.toLowerCase().replace(/[\s_-]/gu, '');

/** How many letters must be put in, taken out, changed, or swapped with the next, to turn one word into the other. */
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

/** The known word that was most likely meant: one slip, or one in every three letters; undefined where none is near. */
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
