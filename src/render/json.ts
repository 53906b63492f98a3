/** One JSON object for other programs, every number rounded to 0.0001, on lines of its own. */
export const printJson = (value: unknown): string =>
  `${JSON.stringify(value, (_, part) => (typeof part === 'number' ? Math.round(part * 1e4) / 1e4 : part), 2)}\n`;
