/** Hears what share of a piece of work is done, from 0 to 1. */
export type Told = (share: number) => void;

/** Hears of a part of that work, the one from one share to another. */
export const ofPart =
  (told: Told, from: number, to: number): Told =>
  (share) =>
    told(from + (to - from) * Math.min(1, share));

/** Less progress than this is not told. */
const LEAST = 0.01;

/** Passes on what is more than was told before: never less, and the end at once. */
export const rising = (told: Told): Told => {
  let last = 0;
  return (share) => {
    if (share < last + LEAST && (share < 1 || last >= 1)) return;
    last = share;
    told(share);
  };
};
