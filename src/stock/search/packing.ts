/** How many blanks of each type, packed into bits with a guard bit above each. */
export interface Counts {
  readonly low: number;
  readonly high: number;
  /** The same for the same counts, and for no others. */
  readonly key: number;
}

const BITS = 26;

/** Where each type's bits are, and the most of each that there may be. */
export interface Packing {
  readonly none: Counts;
  /** One more of a type, or nothing where that is too many. */
  readonly add: (counts: Counts, type: number) => Counts | undefined;
  readonly countOf: (counts: Counts, type: number) => number;
  readonly limit: { readonly low: number; readonly high: number };
  readonly guard: { readonly low: number; readonly high: number };
  /** Whether there is room for as many of each type as was asked for. */
  readonly whole: boolean;
}

const counts = (low: number, high: number): Counts => ({ low, high, key: high * 2 ** BITS + low });

/** The counts of both together, or nothing where that is too many of a type. */
export const sum = ({ limit, guard }: Packing, a: Counts, b: Counts): Counts | undefined => {
  const low = a.low + b.low;
  const high = a.high + b.high;
  if (((limit.low - low) & guard.low) !== guard.low) return undefined;
  if (((limit.high - high) & guard.high) !== guard.high) return undefined;
  return counts(low, high);
};

/** Bits for at most so many of each type; those that find no room, the last of `order` first, may not be counted at all. */
export const packingOf = (
  most: readonly number[],
  order: readonly number[] = most.map((_, i) => i),
): Packing => {
  const places: ({ word: number; shift: number; bits: number; most: number } | undefined)[] = most.map(
    () => undefined,
  );
  const used = [0, 0];
  const limits = [0, 0];
  const guards = [0, 0];
  let whole = true;
  for (const type of order) {
    const number = most[type] ?? 0;
    if (number === 0) continue;
    const bits = Math.ceil(Math.log2(number + 1)) + 1;
    const word = used.findIndex((bitsUsed) => bitsUsed + bits <= BITS);
    if (word < 0) {
      whole = false;
      continue;
    }
    const shift = used[word] ?? 0;
    places[type] = { word, shift, bits, most: number };
    used[word] = shift + bits;
    guards[word] = (guards[word] ?? 0) | (1 << (shift + bits - 1));
    limits[word] = (limits[word] ?? 0) | (1 << (shift + bits - 1)) | (number << shift);
  }
  const limit = { low: limits[0] ?? 0, high: limits[1] ?? 0 };
  const guard = { low: guards[0] ?? 0, high: guards[1] ?? 0 };
  const countOf = ({ low, high }: Counts, type: number): number => {
    const place = places[type];
    if (place === undefined) return 0;
    return ((place.word === 0 ? low : high) >> place.shift) & ((1 << (place.bits - 1)) - 1);
  };
  return {
    none: counts(0, 0),
    add: (from, type) => {
      const place = places[type];
      if (place === undefined || countOf(from, type) >= place.most) return undefined;
      const one = 1 << place.shift;
      return place.word === 0 ? counts(from.low + one, from.high) : counts(from.low, from.high + one);
    },
    countOf,
    limit,
    guard,
    whole,
  };
};
