import type { Band } from './band.ts';

/** A band in its place on a piece, from `x0` to `x1` mm. */
export interface PlacedBand {
  readonly band: Band;
  readonly x0: number;
  readonly x1: number;
  /** The x of a point at a distance from the arris, mm. */
  readonly at: (fromArris: number) => number;
  /** 1 where the distance from the arris increases to the right, -1 to the left. */
  readonly sense: 1 | -1;
}

/** A board's bands side by side, from `start` mm to the right. */
export const placeBands = (
  bands: readonly Band[],
  insideOn: 'left' | 'right',
  start: number,
): PlacedBand[] => {
  let x0 = start;
  return (insideOn === 'left' ? bands : bands.toReversed()).map((band) => {
    const left = x0;
    const right = x0 + band.width;
    x0 = right;
    const sense = (band.name === 'inside') === (insideOn === 'left') ? -1 : 1;
    return { band, x0: left, x1: right, sense, at: (d) => (sense === 1 ? left + d : right - d) };
  });
};

export const isFace = ({ band }: PlacedBand): boolean => band.name !== 'end';
