/**
 * Comma-separated values after RFC 4180: lines end in CR LF, and fields that need quotes have them. A field that a
 * spreadsheet would run as a formula is kept as text by a leading apostrophe (OWASP, CSV Injection, from memory).
 */
export const csv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');

/** What a formula begins with, in ordinary and in full-width forms, or the blanks before it that are skipped. */
const FORMULA = /^[=+\-@＝＋－＠\t\r\n]/u;

const NUMBER = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)$/u;

const field = (text: string): string => {
  const safe = FORMULA.test(text) && !NUMBER.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};
