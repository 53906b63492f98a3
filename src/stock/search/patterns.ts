import type { PieceView } from '../wood/pieceView.ts';
import type { Counts, Packing } from './packing.ts';

/** Things one after the other, the last first. */
export interface Chain<T> {
  readonly last: T;
  readonly before: Chain<T> | undefined;
}

/** A blank in a view's coordinates. */
export interface Spot {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
}

/** Blanks beside each other, from one crosscut to the next in a piece ripped free. */
export interface Strip {
  readonly blanks: Chain<Spot>;
}

/** Strips above each other, between two crosscuts. */
export interface Section {
  readonly strips: Chain<Strip>;
}

/** What is reached by some choice: how far it extends, what it is worth, and how many of each type it has. */
interface Label<T> {
  readonly end: number;
  readonly value: number;
  readonly counts: Counts;
  readonly chain: Chain<T> | undefined;
}

/** What may be cut out of a piece: its blanks in their order, and where the wood after them begins. */
export interface Pattern {
  readonly view: PieceView;
  readonly end: number;
  readonly value: number;
  readonly counts: Counts;
  readonly sections: Chain<Section> | undefined;
}

/** How the cuts made so far limit those to come. */
export interface Stages {
  readonly oneStrip: boolean;
  readonly oneBlankPerStrip: boolean;
  /** The last run of cuts has begun: one blank, as wide as the piece. */
  readonly trim: boolean;
}

export interface Search {
  /** For each type: what one is worth. */
  readonly prices: readonly number[];
  readonly packing: Packing;
  readonly stages: Stages;
  /** How many choices that are no better are kept beside the best, at each place; infinite for all of them. */
  readonly breadth: number;
  /** Whether strips are tried that gain nothing at their beginning. */
  readonly thorough: boolean;
  /** Places asked for and choices made; where they run out, what was found so far is the answer. */
  readonly most: number;
}

/** The best of `breadth` values so far: a later choice must be worth more than the least of them. */
class Best {
  readonly #values: number[] = [];
  constructor(readonly breadth: number) {}
  admits(value: number): boolean {
    const values = this.#values;
    if (values.length >= this.breadth && value <= (values[0] ?? 0)) return false;
    if (this.breadth === Number.POSITIVE_INFINITY) return true;
    let i = values.length;
    while (i > 0 && (values[i - 1] ?? 0) > value) i--;
    values.splice(i, 0, value);
    if (values.length > this.breadth) values.shift();
    return true;
  }
}

/** A queue of labels, the one that ends first at its front. */
class Queue<T extends { readonly end: number }> {
  readonly #heap: T[] = [];
  get size(): number {
    return this.#heap.length;
  }
  push(label: T): void {
    const heap = this.#heap;
    let i = heap.length;
    heap.push(label);
    while (i > 0) {
      const up = (i - 1) >> 1;
      const parent = heap[up] as T;
      if (parent.end <= label.end) break;
      heap[i] = parent;
      i = up;
    }
    heap[i] = label;
  }
  pop(): T | undefined {
    const heap = this.#heap;
    const top = heap[0];
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return top;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= heap.length) break;
      if (down + 1 < heap.length && (heap[down + 1] as T).end < (heap[down] as T).end) down++;
      if ((heap[down] as T).end >= last.end) break;
      heap[i] = heap[down] as T;
      i = down;
    }
    heap[i] = last;
    return top;
  }
}

/**
 * Labels grown from a first one by what `extend` adds, in the order of their ends: of those with the same counts the one that
 * ends first, and of all at most as many as the breadth allows.
 */
const grow = <T>(
  first: Label<T>,
  breadth: number,
  extend: (label: Label<T>, add: (next: Label<T>) => void) => void,
): Label<T>[] => {
  const queue = new Queue<Label<T>>();
  const least = new Map<number, number>();
  const best = new Best(breadth);
  const found: Label<T>[] = [];
  const add = (label: Label<T>) => {
    const known = least.get(label.counts);
    if (known !== undefined && known <= label.end) return;
    least.set(label.counts, label.end);
    queue.push(label);
  };
  add(first);
  for (;;) {
    const label = queue.pop();
    if (label === undefined) return found;
    if (least.get(label.counts) !== label.end) continue;
    if (label !== first && !best.admits(label.value)) continue;
    if (label !== first) found.push(label);
    extend(label, add);
  }
};

export interface Patterns {
  readonly patterns: readonly Pattern[];
  readonly steps: number;
  /** Whether the steps sufficed. */
  readonly finished: boolean;
}

/** All patterns of a view that the search keeps, by their ends. Each has all pinned blanks. */
export const patternsOf = (
  view: PieceView,
  { prices, packing, stages, breadth, thorough, most }: Search,
): Patterns => {
  const { region, shapes, kerf, restarts, pins } = view;
  let steps = 0;
  const spent = () => steps > most;

  /**
   * Whether what lies between two heights, from one x to another, leaves a pinned blank behind that it does not count: no later
   * cut can free that.
   */
  const leavesPin = (
    from: number,
    { end, counts }: Pick<Label<unknown>, 'end' | 'counts'>,
    low: number,
    high: number,
  ) =>
    pins.some(
      ({ type, at }) =>
        at.x0 >= from &&
        at.x0 < end + kerf &&
        at.y1 + kerf > low &&
        at.y0 < high + kerf &&
        packing.countOf(counts, type) === 0,
    );

  /** Blanks side by side between two heights, the first not before `from`; only those that need all of the height. */
  const stripsOf = (from: number, low: number, high: number): Label<Spot>[] => {
    const first: Label<Spot> = { end: from - kerf, value: 0, counts: packing.none, chain: undefined };
    const labels = grow<Spot>(first, breadth, (label, add) => {
      if (spent() || (stages.oneBlankPerStrip && label !== first)) return;
      shapes.forEach(({ type, width, orders }, shape) => {
        if (orders !== undefined && stages.oneBlankPerStrip) return;
        if (width > high - low) return;
        const counts = packing.add(label.counts, type);
        if (counts === undefined) return;
        steps++;
        const x = view.least(shape, label.end + kerf, low, high);
        if (x < 0 || leavesPin(from, { end: view.foundEnd, counts }, low, high)) return;
        add({
          end: view.foundEnd,
          value: label.value + (prices[type] ?? 0),
          counts,
          chain: { last: { shape, x, y: view.foundY }, before: label.chain },
        });
      });
    });
    const reaches = (chain: Chain<Spot> | undefined): boolean =>
      chain !== undefined &&
      (chain.last.y + (shapes[chain.last.shape]?.width ?? 0) === high || reaches(chain.before));
    return labels.filter(({ chain }) => reaches(chain));
  };

  /** Heights at which a strip that begins at `low` may end: a blank lies on `low`, or on a defect that it cannot pass there. */
  const topsOf = (from: number, low: number): number[] => {
    const tops = new Set<number>();
    shapes.forEach(({ width }, shape) => {
      if (low + width > region.y1) return;
      let begin = view.first(shape, from, low);
      if (begin < Number.POSITIVE_INFINITY) tops.add(low + width);
      const lowest = view.lowest(shape, from, low);
      if (lowest + width <= region.y1) tops.add(lowest + width);
      for (const y of restarts[shape] ?? []) {
        if (y <= low) continue;
        const x = view.first(shape, from, y);
        if (x < begin || (thorough && x < Number.POSITIVE_INFINITY)) tops.add(y + width);
        begin = Math.min(begin, x);
      }
    });
    return [...tops].sort((a, b) => a - b);
  };

  /** Strips above each other from a height up, none before `from`. */
  const stacksOf = (from: number, low: number, known: Map<number, Label<Strip>[]>): Label<Strip>[] => {
    const before = known.get(low);
    if (before !== undefined) return before;
    const least = new Map<number, Label<Strip>>();
    for (const high of topsOf(from, low)) {
      if (spent()) break;
      const strips = stripsOf(from, low, high);
      const above = strips.length === 0 || stages.oneStrip ? [] : stacksOf(from, high + kerf, known);
      const add = (label: Label<Strip>) => {
        if (leavesPin(from, label, low, region.y1)) return;
        if ((least.get(label.counts)?.end ?? Number.POSITIVE_INFINITY) > label.end)
          least.set(label.counts, label);
      };
      for (const strip of strips) add({ ...strip, chain: { last: stripOf(strip), before: undefined } });
      steps += pairs(strips, above, breadth, (strip, stack) => {
        const counts = packing.sum(strip.counts, stack.counts);
        if (counts === undefined) return false;
        add({
          end: Math.max(strip.end, stack.end),
          value: strip.value + stack.value,
          counts,
          chain: { last: stripOf(strip), before: stack.chain },
        });
        return true;
      });
    }
    const best = new Best(breadth);
    const kept = [...least.values()]
      .sort((a, b) => a.end - b.end || b.value - a.value)
      .filter(({ value }) => best.admits(value));
    known.set(low, kept);
    return kept;
  };

  const sectionsFrom = new Map<number, Label<Strip>[]>();
  const sectionsOf = (from: number): Label<Strip>[] => {
    // The first place where anything may begin: nothing differs before it.
    let begin = Number.POSITIVE_INFINITY;
    shapes.forEach((_, shape) => {
      const x = view.least(shape, from, region.y0, region.y1);
      if (x >= 0 && x < begin) begin = x;
    });
    if (begin === Number.POSITIVE_INFINITY) return [];
    const known = sectionsFrom.get(begin);
    if (known !== undefined) return known;
    // Blanks of a lone strip are sections of their own.
    const found = stacksOf(begin, region.y0, new Map()).filter(
      ({ chain }) => chain?.before !== undefined || chain?.last.blanks.before === undefined,
    );
    sectionsFrom.set(begin, found);
    return found;
  };

  const first: Label<Section> = {
    end: region.x0 - kerf,
    value: 0,
    counts: packing.none,
    chain: undefined,
  };
  const labels = grow<Section>(first, breadth, (label, add) => {
    if (spent()) return;
    const sections = sectionsOf(label.end + kerf);
    steps += sections.length;
    for (const section of sections) {
      const counts = packing.sum(label.counts, section.counts);
      if (counts === undefined) continue;
      add({
        end: section.end,
        value: label.value + section.value,
        counts,
        chain: { last: { strips: section.chain as Chain<Strip> }, before: label.chain },
      });
    }
  });
  const patterns = labels
    .filter(({ counts }) => pins.every(({ type }) => packing.countOf(counts, type) > 0))
    .filter(({ chain }) => !stages.trim || (chain?.before === undefined && fillsWidth(view, chain)))
    .map(({ end, value, counts, chain }) => ({ view, end, value, counts, sections: chain }));
  return { patterns, steps, finished: !spent() };
};

const stripOf = ({ chain }: Label<Spot>): Strip => ({ blanks: chain as Chain<Spot> });

interface Ends {
  readonly end: number;
}

/**
 * Joins each of two lists, rising by their ends, with those of the other that end no later, the last of them first, until as
 * many as the breadth allows have been joined. Answers how many were tried.
 */
const pairs = <A extends Ends, B extends Ends>(
  some: readonly A[],
  others: readonly B[],
  breadth: number,
  join: (a: A, b: B) => boolean,
): number => {
  let tried = 0;
  const each = <P extends Ends, Q extends Ends>(
    list: readonly P[],
    shorter: readonly Q[],
    within: (q: Q, p: P) => boolean,
    meet: (p: P, q: Q) => boolean,
  ) => {
    let last = 0;
    for (const one of list) {
      while (last < shorter.length && within(shorter[last] as Q, one)) last++;
      let joined = 0;
      for (let i = last - 1; i >= 0 && joined < breadth && i >= last - 4 * breadth; i--) {
        tried++;
        if (meet(one, shorter[i] as Q)) joined++;
      }
    }
  };
  each(some, others, (b, a) => b.end <= a.end, join);
  each(
    others,
    some,
    (a, b) => a.end < b.end,
    (b, a) => join(a, b),
  );
  return tried;
};

/** Whether the blank of a lone section is as wide as the piece. */
const fillsWidth = ({ region, shapes }: PieceView, chain: Chain<Section> | undefined): boolean => {
  const shape = chain?.last.strips.last.blanks.last.shape ?? 0;
  return shapes[shape]?.width === region.y1 - region.y0;
};
