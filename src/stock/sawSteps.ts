import type { Box } from '../drawing/drawing.ts';
import type { Cut, Plank } from './plank.ts';
import { replay, woodIn } from './replay.ts';

/** One cut as it is measured and made at the bench. In mm. */
export interface SawStep {
  readonly kind: Cut['kind'];
  /** What is cut. */
  readonly piece: number;
  /** What it is measured from, which is there when it is cut; a sawn end or edge where there is one. */
  readonly from: 'left end' | 'right end' | 'lower edge' | 'upper edge';
  /** From there to the near side of the saw cut. */
  readonly measure: number;
  /** What it leaves at the left or below, and at the right or above; absent where nothing is left. */
  readonly leaves: readonly [number | undefined, number | undefined];
}

type Side = keyof Box;

/** The cuts of a board in order, each measured from what is there at that moment. */
export const sawSteps = (plank: Plank, cuts: readonly Cut[], kerf: number): SawStep[] => {
  const { outline, clean } = plank;
  // The sides of each that a saw has made, so that they are straight and square.
  const sawn = new Map<number, ReadonlySet<Side>>([
    [0, new Set([...(clean.left ? (['x0'] as const) : []), ...(clean.right ? (['x1'] as const) : [])])],
  ]);
  return cuts.flatMap((cut, k): SawStep[] => {
    const [before, after] = [
      replay(outline, cuts.slice(0, k), kerf),
      replay(outline, cuts.slice(0, k + 1), kerf),
    ];
    const box = before.ok ? before.left.get(cut.piece) : undefined;
    if (box === undefined || !after.ok) return [];
    const { reach } = woodIn(outline, box);
    const [low, high] = cut.kind === 'crosscut' ? (['x0', 'x1'] as const) : (['y0', 'y1'] as const);
    const own = sawn.get(cut.piece) ?? new Set<Side>();
    const [fromLow, fromHigh] = [cut.at - reach[low], reach[high] - (cut.at + kerf)];
    const isFromLow = fromHigh <= 0 || (fromLow > 0 && (own.has(low) || !own.has(high)));
    const [first, second] = [2 * k + 1, 2 * k + 2];
    sawn.set(first, new Set([...own, high]));
    sawn.set(second, new Set([...own, low]));
    const left = (piece: number) => (after.left.has(piece) ? piece : undefined);
    return [
      {
        kind: cut.kind,
        piece: cut.piece,
        from:
          cut.kind === 'crosscut'
            ? isFromLow
              ? 'left end'
              : 'right end'
            : isFromLow
              ? 'lower edge'
              : 'upper edge',
        measure: isFromLow ? fromLow : fromHigh,
        leaves: [left(first), left(second)],
      },
    ];
  });
};
