import type { Point } from '../../src/drawing/drawing.ts';
import type { Defect, Plank, StockName } from '../../src/stock/plank.ts';
import type { Saw, Wanted } from '../../src/stock/wanted.ts';

/** Numbers from 0 to 1 in a fixed order (the generator of Park and Miller, Communications of the ACM 31, 1988). */
export const numbers = (seed: number): (() => number) => {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
};

export const SAW: Saw = { kerf: 3, ends: 25, keep: { length: 300, width: 50 } };

/** A rectangle by its lower left corner. */
export const rectangle = (x: number, y: number, length: number, width: number): Point[] => [
  [x, y],
  [x + length, y],
  [x + length, y + width],
  [x, y + width],
];

export const plank = (outline: readonly Point[], more: Partial<Plank> = {}): Plank => ({
  name: 'Board',
  copy: 1,
  stocks: ['front', 'side', 'back', 'bottom'],
  thickness: 25,
  outline,
  defects: [],
  clean: { left: false, right: false },
  keep: false,
  ...more,
});

export const want = (length: number, width: number, more: Partial<Wanted> = {}): Wanted => ({
  stock: 'front',
  length,
  width,
  thickness: 20,
  allows: [],
  zones: [],
  eitherWay: false,
  spare: false,
  ...more,
});

/**
 * Share of the surface that defects cover, by grade, after a data bank of red oak boards: Wiedenbeck, Gatchell and Walker, Forest
 * Products Journal 45(3), 1995.
 */
export const DEFECT_SHARE = { fas: 0.012, selects: 0.023, common1: 0.068, common2: 0.098 } as const;
export type Grade = keyof typeof DEFECT_SHARE;

/** Knots over a board until they cover the share of its grade. */
export const knots = (
  random: () => number,
  length: number,
  width: number,
  share: number,
  most = 99,
): Defect[] => {
  const found: Defect[] = [];
  let covered = 0;
  const small = share < 0.05;
  while (covered < share * length * width && found.length < most) {
    const l = Math.round((small ? 20 : 60) + random() * (small ? 60 : 200));
    const w = Math.round((small ? 15 : 25) + random() * (small ? 30 : 60));
    found.push({
      kind: random() < 0.5 ? 'sound knot' : 'loose knot',
      outline: rectangle(Math.round(random() * (length - l)), Math.round(random() * (width - w)), l, w),
    });
    covered += l * w;
  }
  return found;
};

/** A board of a grade, rectangular or with sloping edges. */
export const gradedPlank = (
  random: () => number,
  grade: Grade,
  { sloping = false, stocks = ['front'] as readonly StockName[] } = {},
): Plank => {
  const length = Math.round(1500 + random() * 1200);
  const width = Math.round(140 + random() * 140);
  const skew = () => (sloping ? Math.round(random() * 14) : 0);
  const outline: Point[] = [
    [0, skew()],
    [length, skew()],
    [length, width - skew()],
    [0, width - skew()],
  ];
  return plank(outline, { stocks, defects: knots(random, length, width, DEFECT_SHARE[grade]) });
};
