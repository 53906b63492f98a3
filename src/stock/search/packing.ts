/**
 * How many blanks of each type: one whole number, each type's count in bits of its own with a guard bit above. A pinned blank
 * needs no guard: lying in one place, it is never counted twice.
 */
export type Counts = number;

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

/** A float holds two words of so many bits exactly. */
const BITS = 26;
const WORD = 2 ** BITS;
const MASK = WORD - 1;

const lowOf = (counts: Counts): number => counts & MASK;
const highOf = (counts: Counts): number => Math.floor(counts / WORD);

/** Where a type's count is kept. */
interface Place {
  readonly word: number;
  readonly shift: number;
  readonly mask: number;
  readonly guard: number;
  readonly most: number;
}

/** Places for types that are wanted at all, in their order, as far as there are bits. */
const placesOf = (most: readonly number[], order: readonly number[], isPinned: (type: number) => boolean) => {
  const places: (Place | undefined)[] = most.map(() => undefined);
  const used = [0, 0];
  let whole = true;
  for (const type of order) {
    const number = most[type] ?? 0;
    if (number === 0) continue;
    const bits = Math.ceil(Math.log2(number + 1));
    const guard = isPinned(type) ? 0 : 1;
    const word = used.findIndex((bitsUsed) => bitsUsed + bits + guard <= BITS);
    if (word < 0) {
      whole = false;
      continue;
    }
    const shift = used[word] ?? 0;
    used[word] = shift + bits + guard;
    const mask = (1 << bits) - 1;
    places[type] = { word, shift, mask, guard: guard * (mask + 1), most: number };
  }
  return { places, whole };
};

/** Caps by which counts take fewer bits. */
const CAPS = [Number.POSITIVE_INFINITY, 7, 3, 1];

/**
 * At most so many of each type. Where there are not bits enough, fewer of each; and where that is no help, types that find no
 * bits, the last of `order` first, are not to be had at all.
 */
export const packingOf = (
  most: readonly number[],
  order: readonly number[] = most.map((_, i) => i),
  isPinned: (type: number) => boolean = () => false,
): Packing => {
  const tries = CAPS.map((cap) =>
    placesOf(
      most.map((number) => Math.min(number, cap)),
      order,
      isPinned,
    ),
  );
  const found = tries.findIndex(({ whole }) => whole);
  const whole = found === 0;
  const { places } = tries.at(found) as (typeof tries)[number];
  const limits = [0, 0];
  const guards = [0, 0];
  for (const place of places) {
    if (place === undefined) continue;
    const { word, shift, guard, most } = place;
    guards[word] = (guards[word] ?? 0) | (guard << shift);
    limits[word] = (limits[word] ?? 0) | ((guard | most) << shift);
  }
  const [limitLow = 0, limitHigh = 0] = limits;
  const [guardLow = 0, guardHigh = 0] = guards;
  const countOf = (counts: Counts, type: number): number => {
    const place = places[type];
    return place === undefined
      ? 0
      : ((place.word === 0 ? lowOf(counts) : highOf(counts)) >> place.shift) & place.mask;
  };
  return {
    none: 0,
    add: (from, type) => {
      const place = places[type];
      if (place === undefined || countOf(from, type) >= place.most) return undefined;
      return from + 2 ** (place.shift + place.word * BITS);
    },
    sum: (a, b) => {
      const counts = a + b;
      // A count above its limit borrows its guard bit.
      if (((limitLow - lowOf(counts)) & guardLow) !== guardLow) return undefined;
      if (((limitHigh - highOf(counts)) & guardHigh) !== guardHigh) return undefined;
      return counts;
    },
    countOf,
    whole,
  };
};

/**
 * Any number of each type, not counted: a value found so is never below one found with counts. Whatever is asked for counts as
 * there.
 */
export const uncounted = (): Packing => {
  let made = 0;
  const next = (): Counts => ++made;
  return { none: 0, add: next, sum: next, countOf: () => 1, whole: true };
};
