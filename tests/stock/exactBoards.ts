import type { Plank } from '../../src/stock/plank.ts';
import type { Saw } from '../../src/stock/wanted.ts';

/** Sizes of rectangular blanks that allow no defect, and how many of each. */
export interface Sizes {
  readonly length: number;
  readonly width: number;
  readonly count: number;
}

interface Marred {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/**
 * All that one rectangular board with rectangular defects can give, as counts of each size of which no other has more, by
 * an exact recursion: for each strip, stack and board the least end at which each list of counts can be had. Places are normal:
 * as far left and low as what is there allows, beginning again at the edges of defects.
 */
export const exactYields = (plank: Plank, sizes: readonly Sizes[], { kerf, ends }: Saw): number[][] => {
  const strides: number[] = [];
  let all = 1;
  for (const { count } of sizes) {
    strides.push(all);
    all *= count + 1;
  }
  const countsOf = (code: number): number[] =>
    sizes.map(({ count }, i) => Math.floor(code / (strides[i] ?? 1)) % (count + 1));
  const counts = Array.from({ length: all }, (_, code) => countsOf(code));
  const fits = (u: number, v: number): boolean =>
    (counts[u] ?? []).every((n, i) => n <= (counts[v]?.[i] ?? 0));
  const [, , [right = 0, top = 0] = []] = plank.outline;
  const marred: Marred[] = plank.defects.map(({ outline: [[x0, y0] = [0, 0], , [x1, y1] = [0, 0]] }) => ({
    x0,
    y0,
    x1,
    y1,
  }));
  const found = new Set<number>();
  for (const ripped of [false, true]) {
    const swap = ({ x0, y0, x1, y1 }: Marred): Marred => ({ x0: y0, y0: x0, x1: y1, y1: x1 });
    const defects = ripped ? marred.map(swap) : marred;
    const own = sizes.map(({ length, width }) => (ripped ? [width, length] : [length, width]));
    const whole: Marred = { x0: ends, y0: 0, x1: right - ends, y1: top };
    const room = ripped ? swap(whole) : whole;
    const next = (size: number, from: number, low: number, high: number): number => {
      const [l = 0, w = 0] = own[size] ?? [];
      const xs = [from, ...defects.map(({ x1 }) => x1).filter((x) => x > from)].sort((a, b) => a - b);
      const ys = [low, ...defects.map(({ y1 }) => y1).filter((y) => y > low)];
      for (const x of xs) {
        if (x + l > room.x1 + 1e-9) return Number.POSITIVE_INFINITY;
        for (const y of ys)
          if (
            y + w <= high + 1e-9 &&
            !defects.some((d) => d.x0 < x + l && d.x1 > x && d.y0 < y + w && d.y1 > y)
          )
            return x;
      }
      return Number.POSITIVE_INFINITY;
    };
    const strip = (from: number, low: number, high: number): [number, number][] => {
      const end = new Array<number>(all).fill(Number.POSITIVE_INFINITY);
      end[0] = from - kerf;
      const reached: [number, number][] = [];
      for (let code = 1; code < all; code++) {
        sizes.forEach((_, i) => {
          if ((counts[code]?.[i] ?? 0) === 0) return;
          const before = end[code - (strides[i] ?? 0)] ?? Number.POSITIVE_INFINITY;
          if (before === Number.POSITIVE_INFINITY) return;
          end[code] = Math.min(end[code] ?? 0, next(i, before + kerf, low, high) + (own[i]?.[0] ?? 0));
        });
        if (end[code] !== Number.POSITIVE_INFINITY) reached.push([code, end[code] ?? 0]);
      }
      return reached;
    };
    const section = (from: number): [number, number][] => {
      const known = new Map<number, [number, number][]>();
      const stack = (low: number): [number, number][] => {
        const before = known.get(low);
        if (before !== undefined) return before;
        const end = new Array<number>(all).fill(Number.POSITIVE_INFINITY);
        const starts = [low, ...defects.map(({ y1 }) => y1).filter((y) => y > low)];
        const tops = new Set(starts.flatMap((y) => own.map(([, w = 0]) => y + w)));
        for (const high of tops) {
          if (high > room.y1 + 1e-9) continue;
          const above = stack(high + kerf);
          for (const [u, e] of strip(from, low, high)) {
            end[u] = Math.min(end[u] ?? 0, e);
            for (const [v, f] of above) {
              const sum = (counts[u] ?? []).map((n, i) => n + (counts[v]?.[i] ?? 0));
              if (sum.some((n, i) => n > (sizes[i]?.count ?? 0))) continue;
              end[u + v] = Math.min(end[u + v] ?? 0, Math.max(e, f));
            }
          }
        }
        const reached = end.flatMap((e, code): [number, number][] =>
          e === Number.POSITIVE_INFINITY ? [] : [[code, e]],
        );
        known.set(low, reached);
        return reached;
      };
      return stack(room.y0);
    };
    const end = new Array<number>(all).fill(Number.POSITIVE_INFINITY);
    end[0] = room.x0 - kerf;
    const sections = new Map<number, [number, number][]>();
    for (let code = 0; code < all; code++) {
      const from = (end[code] ?? 0) + kerf;
      if (from === Number.POSITIVE_INFINITY) continue;
      found.add(code);
      const known = sections.get(from) ?? section(from);
      sections.set(from, known);
      for (const [u, e] of known) {
        const sum = (counts[u] ?? []).map((n, i) => n + (counts[code]?.[i] ?? 0));
        if (sum.some((n, i) => n > (sizes[i]?.count ?? 0))) continue;
        end[code + u] = Math.min(end[code + u] ?? 0, e);
      }
    }
  }
  const codes = [...found];
  return codes.filter((u) => !codes.some((v) => v !== u && fits(u, v))).map((code) => counts[code] ?? []);
};

/** The fewest boards that give so many of each size, by way of all that each can give; nothing where they do not suffice. */
export const fewestBoards = (
  planks: readonly Plank[],
  sizes: readonly Sizes[],
  saw: Saw,
  yieldsOf = exactYields,
): number | undefined => {
  let open = new Map([[sizes.map(({ count }) => count).join(), 0]]);
  for (const plank of planks) {
    const yields = yieldsOf(plank, sizes, saw);
    const next = new Map(open);
    for (const [key, boards] of open) {
      const counts = key.split(',').map(Number);
      for (const given of yields) {
        const rest = counts.map((n, i) => Math.max(0, n - (given[i] ?? 0))).join();
        next.set(rest, Math.min(next.get(rest) ?? Number.POSITIVE_INFINITY, boards + 1));
      }
    }
    open = next;
  }
  return open.get(sizes.map(() => 0).join());
};
