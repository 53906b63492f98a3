import type { KnownJoint } from '../sheets/expectedLines.ts';

/** Even tails worked out by the formulas: W = 2 h + k t + (k - 1) p, and a base L/n narrower on either side. */
export const evenJoint = (
  sizes: Omit<KnownJoint, 'tails' | 'proud'>,
  count: number,
  pin: number,
  run: number,
): KnownJoint => {
  const { width, depth } = sizes;
  const tip = (width - 2 * pin - (count - 1) * pin) / count;
  const tails = Array.from({ length: count }, (_, i) => {
    const from = pin + i * (tip + pin);
    return {
      tip: [from, from + tip] as const,
      base: [from + depth / run, from + tip - depth / run] as const,
    };
  });
  return { ...sizes, proud: 0, tails };
};
