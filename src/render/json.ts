/** One JSON object for other programs, every number rounded to so many decimals, on lines of its own. */
export const printJson = (value: unknown, decimals = 4): string => {
  const times = 10 ** decimals;
  const round = (_: string, part: unknown) =>
    typeof part === 'number' ? Math.round(part * times) / times : part;
  return `${JSON.stringify(value, round, 2)}\n`;
};
