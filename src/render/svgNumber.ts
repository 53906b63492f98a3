/** Every decimal fraction of four places as it is written, without zeros at its end: '', '.0001', …, '.9999'. */
const FRACTIONS = Array.from({ length: 1e4 }, (_, i) => String(i / 1e4).slice(1));

/** A number rounded to 0.0001, as a string. Fractions come from a table: printing a double is many times slower. */
export const svgNumber = (value: number): string => {
  const steps = Math.round(Math.abs(value) * 1e4);
  const sign = value < 0 && steps > 0 ? '-' : '';
  return `${sign}${Math.floor(steps / 1e4)}${FRACTIONS[steps % 1e4]}`;
};
