/** Lines of aligned columns: words on the left, numbers on the right, two spaces between. */
export const table = (
  heading: readonly string[],
  rows: readonly (readonly string[])[],
  numeric: readonly boolean[],
): string[] => {
  const widths = heading.map((title, i) => Math.max(title.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, i) => (numeric[i] ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0)))
      .join('  ')
      .trimEnd();
  return [line(heading), ...rows.map(line)];
};
