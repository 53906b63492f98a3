import { stringify } from 'yaml';

/** How values are written into a plan. */
export interface Style {
  /** As JSON, in which all words are in quotes. */
  readonly json: boolean;
  /** With blanks inside braces, as elsewhere in the plan. */
  readonly padded: boolean;
}

/** What the page writes: numbers, words, true and false, and lists and maps of them. */
export type Written = number | string | boolean | readonly Written[] | { readonly [key: string]: Written };

export const styleOf = (text: string): Style => ({ json: isJson(text), padded: /\{ \S/u.test(text) });

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text.replace(/^\uFEFF/u, ''));
    return true;
  } catch {
    return false;
  }
};

/** A value on one line, as it may stand anywhere in a plan. */
export const writeValue = (value: Written, style: Style): string => {
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return word(value, style);
  if (isList(value)) return `[${value.map((item) => writeValue(item, style)).join(', ')}]`;
  const items = Object.entries(value).map((entry) => writeEntry(entry, style));
  return style.padded ? `{ ${items.join(', ')} }` : `{${items.join(', ')}}`;
};

/** `key: value` */
export const writeEntry = ([key, value]: readonly [string, Written], style: Style): string =>
  `${word(key, style)}: ${writeValue(value, style)}`;

export const isList = (value: Written): value is readonly Written[] => Array.isArray(value);

const word = (text: string, { json }: Style): string => {
  if (json || text.includes(':')) return JSON.stringify(text);
  const [plain = ''] =
    /(?<=^\[).*(?=\]\n$)/su.exec(
      stringify([text], { collectionStyle: 'flow', flowCollectionPadding: false, lineWidth: 0 }),
    ) ?? [];
  return /^["']|\n/u.test(plain) ? JSON.stringify(text) : plain;
};
