/** Page numbers, three or more in a row by the first and the last: `1, 2, 5 to 7`. */
const numbersOf = (pages: readonly number[]): string => {
  const runs: [from: number, to: number][] = [];
  for (const page of pages) {
    const last = runs.at(-1);
    if (last?.[1] === page - 1) last[1] = page;
    else runs.push([page, page]);
  }
  return runs
    .map(([from, to]) => (to === from ? `${from}` : `${from}${to === from + 1 ? ', ' : ' to '}${to}`))
    .join(', ');
};

/** `once`, `twice`, `3 times`. */
const times = (count: number): string => ['once', 'twice'][count - 1] ?? `${count} times`;

/**
 * How often to print the pages of a set for all that is made, from the fewest copies to the most: `once: page 1; twice:
 * pages 2, 4 to 6`. Empty where each is needed once.
 * @param copies of each page, the first page first
 */
export const copiesNeeded = (copies: readonly number[]): string => {
  const counts = [...new Set(copies)].sort((a, b) => a - b);
  if (counts.every((count) => count === 1)) return '';
  return counts
    .map((count) => {
      const pages = copies.flatMap((each, i) => (each === count ? [i + 1] : []));
      return `${times(count)}: ${pages.length === 1 ? 'page' : 'pages'} ${numbersOf(pages)}`;
    })
    .join('; ');
};
