/** A front whose layout is sought, in mm, as the search's question has it. */
export interface Front {
  readonly width: number;
  readonly pin: number;
  readonly halfPin: { readonly lower: number; readonly upper: number };
  /** How much narrower a tail is at its base, on either side. */
  readonly loss: number;
  /** What the lowest tail's base must hold. */
  readonly band: readonly [number, number];
  /** The tail width without a spacer. */
  readonly origin: number;
}

/** A front's tails, equally wide: how many, and the least and most width that some half pins make possible. */
interface Count {
  readonly front: Front;
  readonly tails: number;
  readonly least: number;
  readonly most: number;
}

/** A half plane of the two half pins: a h1 + b h2 <= c. */
type Half = readonly [a: number, b: number, c: number];

const SLACK = 1e-9;

/** The conditions on both half pins, with a number of tails that fill what they leave. */
const halvesOf = ({ width, pin, halfPin, loss, band }: Front, tails: number): Half[] => {
  const room = width - (tails - 1) * pin;
  return [
    [-1, 0, -Math.max(1, halfPin.lower / 2)],
    [1, 0, 2 * halfPin.lower],
    [0, -1, -Math.max(1, halfPin.upper / 2)],
    [0, 1, 2 * halfPin.upper],
    [1, 0, band[0] - loss],
    // h1 + (room - h1 - h2) / tails >= band + loss
    [-(tails - 1), 1, room - tails * (band[1] + loss)],
  ];
};

/** Tail widths at the corners of the polygon of possible half pins: the widest and the narrowest are among them. */
const countOf = (front: Front, tails: number): Count | undefined => {
  const halves = halvesOf(front, tails);
  const room = front.width - (tails - 1) * front.pin;
  const widths = halves.flatMap(([a, b, c], i) =>
    halves.slice(i + 1).flatMap(([d, e, f]) => {
      const det = a * e - b * d;
      if (Math.abs(det) < 1e-12) return [];
      const [h1, h2] = [(c * e - b * f) / det, (a * f - c * d) / det];
      return halves.every(([p, q, r]) => p * h1 + q * h2 <= r + SLACK) ? [(room - h1 - h2) / tails] : [];
    }),
  );
  const [least, most] = [Math.max(front.origin, Math.min(...widths)), Math.max(...widths)];
  return widths.length > 0 && least <= most + SLACK ? { front, tails, least, most } : undefined;
};

/** The least change of half pins for a tail width, found by thirds along the lower one. */
const changeOf = ({ front, tails }: Count, tip: number): number => {
  const { width, pin, halfPin } = front;
  const both = width - (tails - 1) * pin - tails * tip;
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const [a, b, c] of [
    ...halvesOf(front, tails).slice(0, 5),
    [-1, 0, tip - front.band[1] - front.loss] as const,
  ]) {
    // With h2 = both - h1.
    const [slope, rest] = [a - b, c - b * both];
    if (slope > 0) to = Math.min(to, rest / slope);
    if (slope < 0) from = Math.max(from, rest / slope);
  }
  const change = (h1: number) => (h1 - halfPin.lower) ** 2 + (both - h1 - halfPin.upper) ** 2;
  for (let i = 0; i < 100; i++) {
    const third = (to - from) / 3;
    if (change(from + third) < change(to - third)) to -= third;
    else from += third;
  }
  return change((from + to) / 2);
};

/** The least of a convex function between two ends, and where. */
const leastOf = (value: (at: number) => number, from: number, to: number) => {
  let [low, high] = [from, to];
  for (let i = 0; i < 200; i++) {
    const third = (high - low) / 3;
    if (value(low + third) <= value(high - third)) high -= third;
    else low += third;
  }
  const at = (low + high) / 2;
  return { at, value: value(at) };
};

/** Every way to put so many things into so many groups, or into none: the group of each, -1 for none. */
const partitions = (things: number, groups: number): number[][] => {
  if (things === 0) return [[]];
  return partitions(things - 1, groups).flatMap((rest) => {
    const used = Math.max(-1, ...rest) + 1;
    return Array.from({ length: Math.min(used + 1, groups) + 1 }, (_, i) => [...rest, i - 1]);
  });
};

const products = <T>(lists: readonly (readonly T[])[]): T[][] =>
  lists.reduce<T[][]>((all, list) => all.flatMap((each) => list.map((item) => [...each, item])), [[]]);

/** The thinnest spacer. */
const THIN = 0.05;

/**
 * The least family sum and then the least change with at most so many different spacers, found by trying every count of each
 * drawer and every way to share the spacers. With those decided, the sum over ln T of the squares of how far each group's
 * interval lies from it is convex. Fronts of one depth only.
 */
export const exhaustive = (
  fronts: readonly Front[],
  target: { readonly least: number; readonly most: number },
  spacers: number,
): { readonly sum: number; readonly change: number } | undefined => {
  const counts = fronts.map((front) =>
    Array.from({ length: 30 }, (_, i) => countOf(front, i + 1)).filter((count) => count !== undefined),
  );
  const [low, high] = [Math.log(target.least), Math.log(target.most)];
  const results: { sum: number; change: number }[] = [];
  for (const chosen of products(counts))
    for (const groups of partitions(fronts.length, spacers)) {
      const origin = fronts[0]?.origin ?? 0;
      const spans = groups.map((group, i): [number, number] => {
        if (group < 0) return chosen[i] && chosen[i].least <= origin + SLACK ? [origin, origin] : [1, 0];
        const members = chosen.filter((_, j) => groups[j] === group);
        return [
          Math.max(origin + THIN, ...members.map(({ least }) => least)),
          Math.min(...members.map(({ most }) => most)),
        ];
      });
      if (spans.some(([from, to]) => from > to + SLACK)) continue;
      const nearest = (i: number, at: number): number => {
        const [from, to] = spans[i] ?? [0, 0];
        return Math.min(Math.log(Math.max(from, to)), Math.max(Math.log(from), at));
      };
      const sum = (at: number): number =>
        groups.reduce((total, _, i) => total + (nearest(i, at) - at) ** 2, 0);
      const best = leastOf(sum, low, high);
      const changeAt = (at: number): number =>
        chosen.reduce((total, count, i) => total + changeOf(count, Math.exp(nearest(i, at))), 0);
      if (best.value > 1e-12) {
        results.push({ sum: best.value, change: changeAt(best.at) });
        continue;
      }
      // All are as wide as T, wherever that lies within every span.
      const from = Math.max(low, ...spans.map(([least]) => Math.log(least)));
      const to = Math.min(high, ...spans.map(([, most]) => Math.log(most)));
      results.push({ sum: 0, change: from > to ? changeAt(best.at) : leastOf(changeAt, from, to).value });
    }
  const sum = Math.min(...results.map((result) => result.sum));
  const equal = results.filter((result) => result.sum <= sum + 1e-9);
  return results.length === 0 ? undefined : { sum, change: Math.min(...equal.map(({ change }) => change)) };
};
