/** Comma-separated values after RFC 4180: lines end in CR LF, and fields that need quotes have them. */
export const csv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');

/** A field that a spreadsheet would take for a formula is kept as text by a leading apostrophe. */
const field = (text: string): string => {
  const safe = /^[=+\-@\t\r]/u.test(text) && !/^-?\d/u.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};
