/** How many blanks of each type, packed into bits with a guard bit above each. */
export interface Counts {
  readonly low: number;
  readonly high: number;
  /** The same for the same counts, and for no others. */
  readonly key: number;
}

/** How counts are kept. */
export interface Packing {
  readonly none: Counts;
  /** One more of a type, or nothing where that is too many. */
  readonly add: (counts: Counts, type: number) => Counts | undefined;
  /** The counts of both together, or nothing where that is too many of a type. */
  readonly sum: (a: Counts, b: Counts) => Counts | undefined;
  readonly countOf: (counts: Counts, type: number) => number;
  /** Whether every type has its bits. */
  readonly whole: boolean;
}

/** Two words of so many bits make a key that a float holds exactly. */
const BITS = 26;

const counts = (low: number, high: number): Counts => ({ low, high, key: high * 2 ** BITS + low });

/** At most so many of each type; types that find no bits, the last of `order` first, are not to be had at all. */
export const packingOf = (
  most: readonly number[],
  order: readonly number[] = most.map((_, i) => i),
): Packing => {
  const places: ({ word: number; shift: number; mask: number; most: number } | undefined)[] = most.map(
    () => undefined,
  );
  const used = [0, 0];
  const limits = [0, 0];
  const guards = [0, 0];
  let whole = true;
  for (const type of order) {
    const number = most[type] ?? 0;
    if (number === 0) continue;
    const bits = Math.ceil(Math.log2(number + 1));
    const word = used.findIndex((bitsUsed) => bitsUsed + bits < BITS);
    if (word < 0) {
      whole = false;
      continue;
    }
    const shift = used[word] ?? 0;
    const guard = 1 << (shift + bits);
    places[type] = { word, shift, mask: (1 << bits) - 1, most: number };
    used[word] = shift + bits + 1;
    guards[word] = (guards[word] ?? 0) | guard;
    limits[word] = (limits[word] ?? 0) | guard | (number << shift);
  }
  const [limitLow = 0, limitHigh = 0] = limits;
  const [guardLow = 0, guardHigh = 0] = guards;
  const countOf = ({ low, high }: Counts, type: number): number => {
    const place = places[type];
    return place === undefined ? 0 : ((place.word === 0 ? low : high) >> place.shift) & place.mask;
  };
  return {
    none: counts(0, 0),
    add: (from, type) => {
      const place = places[type];
      if (place === undefined || countOf(from, type) >= place.most) return undefined;
      const one = 1 << place.shift;
      return place.word === 0 ? counts(from.low + one, from.high) : counts(from.low, from.high + one);
    },
    sum: (a, b) => {
      const low = a.low + b.low;
      const high = a.high + b.high;
      // A count above its limit borrows its guard bit.
      if (((limitLow - low) & guardLow) !== guardLow) return undefined;
      if (((limitHigh - high) & guardHigh) !== guardHigh) return undefined;
      return counts(low, high);
    },
    countOf,
    whole,
  };
};

/** Any number of each type, not counted: a value found so is never below one found with counts. */
export const uncounted = (): Packing => {
  let made = 0;
  const next = (): Counts => ({ low: 0, high: 0, key: ++made });
  return { none: counts(0, 0), add: next, sum: next, countOf: () => 0, whole: true };
};
