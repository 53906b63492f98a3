import {
  type CST,
  isCollection,
  isNode,
  isPair,
  type Node,
  type Pair,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';

/** One item of a list, or one key of a map with its value, as it is written. */
export interface Item {
  /** From its first sign, the dash of an item of a list too. */
  readonly start: number;
  /** Where its colon, its dash, or the name for what is repeated ends: its value is to follow there. */
  readonly sign: number;
  /** Where its value ends: what may follow on the line is a comment. */
  readonly end: number;
  /** The comma before it, inside brackets. */
  readonly comma?: number;
}

/** The items of a list or a map, and the comma that may follow the last. */
export interface Items {
  readonly items: readonly Item[];
  readonly lastComma?: number;
}

export type Collection = YAMLMap | YAMLSeq;

/** Where a list's or a map's items are written, in a document that was parsed with its source tokens. */
export const itemsIn = (collection: Collection, text: string): Items => {
  const { srcToken } = collection;
  const tokens: readonly CST.CollectionItem[] =
    srcToken !== undefined && 'items' in srcToken ? srcToken.items : [];
  const items = collection.items.map((item, i): Item => {
    const token = tokens[i];
    const value = isPair(item) ? item.value : item;
    const comma = commaIn(token);
    return {
      start: startOf(token) ?? 0,
      sign: signEnd(token),
      end: (isNode(value) ? endOf(value, text) : undefined) ?? signEnd(token),
      ...(comma !== undefined && { comma }),
    };
  });
  const lastComma = commaIn(tokens[items.length]);
  return { items, ...(lastComma !== undefined && { lastComma }) };
};

/** Where a value ends; undefined where nothing is written. */
export const endOf = (node: Node, text: string): number | undefined => {
  const [start, end] = node.range ?? [0, 0];
  if (isCollection(node) && node.flow !== true) {
    const written = itemsIn(node as Collection, text).items.at(-1);
    return written?.end;
  }
  // The last line of a block of text ends with its line break.
  return start === end ? undefined : text.slice(0, end).replace(/\r?\n$/u, '').length;
};

const SPACES = new Set(['space', 'newline', 'comment', 'comma']);

const startOf = (token: CST.CollectionItem | undefined): number | undefined =>
  token?.start.find(({ type }) => !SPACES.has(type))?.offset ?? token?.key?.offset ?? token?.value?.offset;

const commaIn = (token: CST.CollectionItem | undefined): number | undefined =>
  token?.start.find(({ type }) => type === 'comma')?.offset;

const signEnd = (token: CST.CollectionItem | undefined): number => {
  const signs = [...(token?.start ?? []), ...(token?.sep ?? [])].filter(({ type }) => !SPACES.has(type));
  const last = signs.at(-1);
  return last === undefined ? 0 : last.offset + last.source.length;
};

/** Which item has a key, or is that number of a list; -1 where there is none. */
export const indexOf = (collection: Collection, key: string | number): number =>
  collection.items.findIndex((item, i) => (isPair(item) ? keyOf(item) === key : i === key));

const keyOf = ({ key }: Pair): unknown => (isNode(key) ? key.toJSON() : key);
