import type { Plank } from '../../src/stock/plank.ts';
import type { Wanted } from '../../src/stock/wanted.ts';
import type { Sizes } from './exactBoards.ts';
import { knots, numbers, plank, rectangle, want } from './randomBoards.ts';

/** Up to 12 blanks of at most four sizes, and five boards with at most six defects each. */
export const smallSet = (
  seed: number,
): { readonly planks: Plank[]; readonly sizes: Sizes[]; readonly wanted: Wanted[] } => {
  const random = numbers(seed * 104729);
  const between = (least: number, most: number) => Math.round(least + random() * (most - least));
  const planks = Array.from({ length: 5 }, () => {
    const [length, width] = [between(900, 2000), between(120, 260)];
    return plank(rectangle(0, 0, length, width), { defects: knots(random, length, width, 0.068, 6) });
  });
  const sizes = Array.from({ length: between(2, 4) }, () => ({
    length: between(200, 630),
    width: between(50, 140),
    count: 0,
  }));
  const parts = between(8, 12);
  for (let i = 0; i < parts; i++) {
    const size = sizes[Math.floor(random() * sizes.length)];
    if (size !== undefined) size.count++;
  }
  const wanted = sizes.flatMap(({ length, width, count }) =>
    Array.from({ length: count }, () => want(length, width)),
  );
  return { planks, sizes: sizes.filter(({ count }) => count > 0), wanted };
};
