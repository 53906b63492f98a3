import type { ConvexBlock } from './convexBlock.ts';
import { between, dot, type Place, partWay } from './space.ts';
import type { Segment } from './trueEdges.ts';

/** How deep in a block a place must be to be hidden by it, in mm: what lies on its surface is seen. */
const DEEP = 1e-5;
/** A shorter stretch is not drawn, in mm: it is what rounding leaves between two blocks. */
const LEAST = 1e-2;

/** The parts of a line that are seen from `towards`, which points from the blocks to the eye, far away. */
export const visibleParts = ([a, b]: Segment, blocks: readonly ConvexBlock[], towards: Place): Segment[] => {
  const length = Math.hypot(...between(a, b));
  const hidden = blocks.flatMap((block) => hiddenBy(block, [a, b], towards)).sort((p, q) => p[0] - q[0]);
  const parts: Segment[] = [];
  const keep = (from: number, to: number): void => {
    if ((to - from) * length > LEAST) parts.push([partWay(a, b, from), partWay(a, b, to)]);
  };
  let seen = 0;
  for (const [from, to] of hidden) {
    keep(seen, from);
    seen = Math.max(seen, to);
  }
  keep(seen, 1);
  return parts;
};

/**
 * The stretch of a line that a block stands before, as shares of the way. Of a place at share t, moved s towards the eye,
 * every face of the block says p t + q s + r <= 0. Each two that limit s from below and from above limit t; so do those without
 * s. (Elimination after Fourier and Motzkin.)
 */
const hiddenBy = (
  block: ConvexBlock,
  [a, b]: Segment,
  towards: Place,
): readonly (readonly [from: number, to: number])[] => {
  const way = between(a, b);
  const limits = block.map(({ outward, level }) => ({
    p: dot(outward, way),
    q: dot(outward, towards),
    r: dot(outward, a) - level + DEEP,
  }));
  // Only what is before the line hides it.
  limits.push({ p: 0, q: -1, r: 0 });
  const level = limits.filter(({ q }) => Math.abs(q) <= FLAT);
  const lower = limits.filter(({ q }) => q < -FLAT);
  const upper = limits.filter(({ q }) => q > FLAT);
  let [from, to] = [0, 1];
  /** p t + r <= 0. */
  const limit = (p: number, r: number): void => {
    if (Math.abs(p) <= FLAT) {
      if (r > 0) to = -1;
    } else if (p > 0) to = Math.min(to, -r / p);
    else from = Math.max(from, -r / p);
  };
  for (const { p, r } of level) limit(p, r);
  for (const low of lower)
    for (const high of upper) limit(low.p * high.q - high.p * low.q, low.r * high.q - high.r * low.q);
  return to > from ? [[from, to]] : [];
};

/** A part of a direction this small is none. */
const FLAT = 1e-9;
