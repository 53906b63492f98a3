import { parse } from 'yaml';
import { isList, type Written, writeValue } from '../../text/writeValue.ts';
import type { ValueForm } from './planKeys.ts';

/** A value of a plan as a field shows it; nothing where a group of keys is written. */
export const shownText = (written: unknown, { isNested, isGroups }: ValueForm): string => {
  if (written === undefined || written === null) return '';
  if (isNested && Array.isArray(written)) return written.map(isGroups ? groupText : rowText).join('\n');
  if (Array.isArray(written))
    return written.length === 1 ? `[${String(written[0])}]` : written.map(String).join(', ');
  return typeof written === 'object' ? '' : String(written);
};

/** A number that is typed; what is none is kept as it is typed, for the plan to refuse it. */
export const readNumber = (typed: string): number | string | undefined =>
  typed.trim() === '' ? undefined : numberOrText(typed.trim());

/** What a field holds as a plan writes it: undefined where it is left empty; what is no such value is kept as it is typed. */
export const readText = (typed: string, form: ValueForm): Written | undefined => {
  const text = typed.trim();
  if (text === '') return undefined;
  const word = form.words.find((each) => String(each).toLowerCase() === text.toLowerCase());
  if (word !== undefined) return word;
  if (form.isNested) return readRows(text, form.isGroups ? readGroup : readRow);
  const isBracketed = /^\[.*\]$/su.test(text);
  if (form.isList && (isBracketed || text.includes(',') || !(form.isNumber || form.isText)))
    return (isBracketed ? text.slice(1, -1) : text)
      .split(',')
      .map((item) => numberOrText(item.trim()))
      .filter((item) => item !== '');
  return form.isNumber ? numberOrText(text) : text;
};

const numberOrText = (text: string): number | string =>
  /^[+-]?(?:\d+\.?\d*|\.\d+)$/u.test(text) ? Number(text) : text;

const PLAIN = { json: false, padded: false };

/** A row of a cabinet on one line: what is in it, with commas between. */
const rowText = (row: unknown): string => {
  const text = writeValue((Array.isArray(row) ? row : [row]) as Written[], PLAIN);
  return text.slice(1, -1);
};

/** A group of keys on one line: `part: side, hand: left`. */
const groupText = (group: unknown): string => writeValue(group as Written, PLAIN).slice(1, -1);

/** A line for each row; what stands there by itself is no list. */
const readRows = (text: string, read: (line: string) => Written | undefined): Written => {
  const rows = text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => read(line));
  return rows.some((row) => row === undefined) ? text : rows.filter((row) => row !== undefined);
};

/** Undefined where a bracket or a quotation mark is missing. */
const readRow = (line: string): Written | undefined => {
  try {
    const row = asWritten(parse(`[${line}]`));
    return isList(row) && row.length === 1 ? row[0] : row;
  } catch {
    return undefined;
  }
};

/** Undefined where it is no group of keys, or a bracket or a quotation mark is missing. */
const readGroup = (line: string): Written | undefined => {
  try {
    const group: unknown = parse(`{${line}}`);
    return Object.values(Object(group)).includes(null) ? undefined : asWritten(group);
  } catch {
    return undefined;
  }
};

/** Names may be numbers; lengths are beside a key. */
const asWritten = (value: unknown): Written => {
  if (Array.isArray(value))
    return value.map((item) => (typeof item === 'number' ? String(item) : asWritten(item)));
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [
        key,
        typeof inner === 'number' && key !== 'name' ? inner : asWritten(inner),
      ]),
    );
  return String(value ?? '');
};
