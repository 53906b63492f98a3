import type { Plank } from '../../src/stock/plank.ts';
import type { Saw, Wanted } from '../../src/stock/wanted.ts';

/** Boards used by a plain layout, and the area of what it cuts out of them. */
export interface PlainLayout {
  readonly used: readonly number[];
  readonly missing: number;
}

/**
 * What a hasty hand does with rectangular boards: strips over the whole length, the widest part first, blanks jumping over
 * defects, the largest board first. Parts that allow no defect.
 */
export const plainFloor = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  { kerf, ends }: Saw,
): PlainLayout => {
  const sizeOf = ({ outline: [, , [length, width] = [0, 0]] }: Plank) => ({ length, width });
  const order = planks
    .map((_, i) => i)
    .sort((a, b) => {
      const [p, q] = [planks[a], planks[b]].map((each) =>
        each === undefined ? { length: 0, width: 0 } : sizeOf(each),
      );
      return (q?.length ?? 0) * (q?.width ?? 0) - (p?.length ?? 0) * (p?.width ?? 0);
    });
  let open = [...wanted].sort((a, b) => b.width - a.width || b.length - a.length);
  const used: number[] = [];
  for (const index of order) {
    const board = planks[index];
    if (board === undefined || open.length === 0) break;
    const { length, width } = sizeOf(board);
    const before = open.length;
    let low = 0;
    for (;;) {
      const widest = open.find((part) => low + part.width <= width);
      if (widest === undefined) break;
      const high = low + widest.width;
      let x = ends;
      const placed = new Set<Wanted>();
      for (const part of open) {
        if (part.width > widest.width) continue;
        let at = x;
        for (;;) {
          const hit = board.defects.find(
            ({ outline: [[x0, y0] = [0, 0], , [x1, y1] = [0, 0]] }) =>
              x0 < at + part.length && x1 > at && y0 < low + part.width && y1 > low,
          );
          if (hit === undefined) break;
          at = hit.outline[2]?.[0] ?? length;
        }
        if (at + part.length > length - ends) continue;
        placed.add(part);
        x = at + part.length + kerf;
      }
      open = open.filter((part) => !placed.has(part));
      low = placed.size === 0 ? low + 10 : high + kerf;
    }
    if (open.length < before) used.push(index);
  }
  return { used, missing: open.length };
};
