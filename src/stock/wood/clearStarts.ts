import type { DefectKind } from '../plank.ts';
import { bandProfile, type Polygon } from './bandProfile.ts';
import { DUST } from './ticks.ts';

/** A rectangle, in ticks. */
export interface Rect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A board, or one turned so that its length runs upward; in ticks. */
export interface Ground {
  readonly outline: Polygon;
  readonly defects: readonly { readonly kind: DefectKind; readonly outline: Polygon }[];
  /** Pinned blanks with a saw cut round them, where no other may lie. */
  readonly taken: readonly Rect[];
  /** How far a blank, made longer by this at each side, must still lie inside the outline. */
  readonly margin: Rect;
}

/** One way in which a blank may lie: its extents, and which parts of it must be clear of all defects. */
export interface Pose {
  readonly length: number;
  readonly width: number;
  readonly zones: readonly Rect[];
}

/** Stretches from, to, from, to … in rising order, apart from each other. */
export type Stretches = readonly number[];

/** Rising stretches of everything that is in no one of the open stretches given, from `first` to `last`. */
const outside = (blocked: [number, number][], first: number, last: number): number[] => {
  blocked.sort((a, b) => a[0] - b[0]);
  const free: number[] = [];
  let at = first;
  for (const [from, to] of blocked) {
    const end = Math.min(last, Math.floor(from + DUST));
    if (end >= at) free.push(at, end);
    at = Math.max(at, Math.ceil(to - DUST));
    if (at > last) return free;
  }
  if (at <= last) free.push(at, last);
  return free;
};

/**
 * The x at which the lower left corner of a blank may lie at height y, inside a region: the blank inside the outline, clear of
 * every defect that it does not allow, its zones clear of all.
 */
export const clearStarts = (
  { outline, defects, taken, margin }: Ground,
  region: Rect,
  pose: Pose,
  allows: ReadonlySet<DefectKind>,
  y: number,
): Stretches => {
  const { length, width, zones } = pose;
  if (y < region.y0 || y + width > region.y1) return [];
  const first = region.x0;
  const last = region.x1 - length;
  if (last < first) return [];
  const wood = bandProfile(outline, y - margin.y0, y + width + margin.y1).inside;
  // Between stretches of wood no blank starts: what is open there is from the last place in one to the first in the next.
  const blocked: [number, number][] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < wood.length; i += 2) {
    const start = (wood[i] ?? 0) + margin.x0;
    const end = (wood[i + 1] ?? 0) - margin.x1 - length;
    if (end < start - DUST) continue;
    blocked.push([from, start]);
    from = end;
  }
  blocked.push([from, Number.POSITIVE_INFINITY]);
  const block = (polygon: Polygon, { x0, y0, x1, y1 }: Rect) => {
    const { border, inside } = bandProfile(polygon, y + y0, y + y1);
    for (const spans of [border, inside])
      for (let i = 0; i < spans.length; i += 2)
        blocked.push([(spans[i] ?? 0) - x1, (spans[i + 1] ?? 0) - x0]);
  };
  const whole = { x0: 0, y0: 0, x1: length, y1: width };
  for (const { kind, outline: defect } of defects)
    for (const part of allows.has(kind) ? zones : [whole]) block(defect, part);
  for (const { x0, y0, x1, y1 } of taken) if (y < y1 && y + width > y0) blocked.push([x0 - length, x1]);
  return outside(blocked, first, last);
};

/** Everything that is in one list or the other. */
export const union = (a: Stretches, b: Stretches): Stretches => {
  if (a.length === 0) return b;
  if (b.length === 0) return a;
  const pairs: [number, number][] = [];
  for (const list of [a, b])
    for (let i = 0; i < list.length; i += 2) pairs.push([list[i] ?? 0, list[i + 1] ?? 0]);
  pairs.sort((p, q) => p[0] - q[0]);
  const merged: number[] = [];
  for (const [from, to] of pairs) {
    const end = merged.at(-1);
    if (end !== undefined && from <= end) merged[merged.length - 1] = Math.max(end, to);
    else merged.push(from, to);
  }
  return merged;
};
