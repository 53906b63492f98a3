/** Whether width `i`, counted from the reference edge, is a tail's: pins and half pins have even numbers. */
export const isTail = (i: number): boolean => i % 2 === 1;

/** What width `i` of `count` is called: `lower half pin`, `tail 2`, `pin 1`. */
export const widthName = (i: number, count: number): string => {
  if (i === 0) return 'lower half pin';
  if (i === count - 1) return 'upper half pin';
  return isTail(i) ? `tail ${(i + 1) / 2}` : `pin ${i / 2}`;
};

/** The names of all widths of a corner with so many tails, from the reference edge up. */
export const widthNames = (tails: number): string[] =>
  Array.from({ length: 2 * tails + 1 }, (_, i) => widthName(i, 2 * tails + 1));
