/** Letters that the names in a complaint may take. */
export const LONGEST_LIST = 300;

/** Names as far as they have room in a complaint, and how many more there are. At least one is told. */
export const listNames = (names: readonly string[]): string => {
  let letters = 0;
  const told = names.filter((name, i) => {
    letters += name.length;
    return i === 0 || letters <= LONGEST_LIST;
  });
  const more = names.length - told.length;
  return `${told.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
};
