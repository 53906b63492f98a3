/** The longest value that is read, in letters: no length, slope, climate or paper is as long when it is written. */
export const LONGEST_VALUE = 100;

/**
 * What is typed as a value, without the blanks round it. It is empty, which no value is, where it is longer than any
 * value, so that no text takes longer to match than its length explains.
 */
export const shortValue = (text: string): string => (text.length > LONGEST_VALUE ? '' : text.trim());
