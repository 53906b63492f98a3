import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  type Node,
} from 'yaml';
import { changeBlock } from './blockItems.ts';
import { type Change, type Edit, isTree, type PlanValue, type Tree, treeOf, whole } from './edit.ts';
import { changeFlow } from './flowItems.ts';
import { type Collection, endOf, indexOf, itemsIn } from './items.ts';
import { withDrawersListed } from './listDrawers.ts';
import { parsePlan } from './parsePlan.ts';
import { lineBreakOf, lineEnd, lineStart, type Splice, spliced, startsLine, withoutLines } from './splice.ts';
import { standAlone } from './standAlone.ts';
import { isList, type Style, styleOf, type Written, writeEntry, writeValue } from './writeValue.ts';

/**
 * A plan's text with some changes, YAML or JSON; it must be valid. Every character stays that is no part of what changes:
 * comments, blanks, line breaks, order, and ways of writing. A group of keys that loses its last goes with it.
 */
export const editPlan = (text: string, edits: readonly Edit[]): string => {
  const alone = allStandAlone(text, edits);
  const document = parsePlan(alone);
  const { contents } = document;
  if (!isMap(contents)) return text;
  const tree = treeOf(
    withDrawersListed(
      contents.has('drawers') ? undefined : contents.toJS(document, { maxAliasCount: -1 }),
      edits,
    ),
  );
  const { splices } = changesOf({ text: alone, document, style: styleOf(alone) }, contents, tree);
  return spliced(alone, splices);
};

/** What one change hands on may come to stand where another change is, and be handed on again. */
const allStandAlone = (text: string, edits: readonly Edit[]): string => {
  const made = edits.reduce((before, { at }) => standAlone(before, at), text);
  return made === text ? made : allStandAlone(made, edits);
};

/** Inserts a copy of an item of a list after it, as it is written, with another name. */
export const copyItem = (text: string, list: string, index: number, name: string): string => {
  const items = parsePlan(text).get(list);
  if (!isSeq(items)) return text;
  const written = itemsIn(items, text);
  const item = written.items[index];
  if (item === undefined) return text;
  const copied = text.slice(item.start, lineEnd(text, item.end));
  const splices =
    items.flow === true
      ? changeFlow(
          text,
          { items: written.items.slice(0, index + 1) },
          new Set(),
          [text.slice(item.start, item.end)],
          item.start,
        )
      : changeBlock(text, { items: written.items.slice(0, index + 1) }, new Set(), [copied]);
  return editPlan(spliced(text, splices), [{ at: [list, index + 1, 'name'], value: name }]);
};

interface Source {
  readonly text: string;
  readonly document: Document;
  readonly style: Style;
}

const changesOf = (
  source: Source,
  collection: Collection,
  tree: Tree,
): { readonly splices: readonly Splice[]; readonly emptied: boolean } => {
  const { text } = source;
  const removed = new Set<number>();
  const added: string[] = [];
  const inner: Splice[] = [];
  for (const [key, change] of tree) {
    const i = indexOf(collection, key);
    const item = collection.items[i];
    const node = isPair(item) ? item.value : item;
    if (item === undefined) {
      const value = whole(change);
      if (value !== undefined) added.push(newItem(source, collection, String(key), value));
    } else if (isTree(change) && isCollection(node)) {
      const { splices, emptied } = changesOf(source, node as Collection, change);
      if (emptied) removed.add(i);
      else inner.push(...splices);
    } else if (!isTree(change) && change.value === undefined) removed.add(i);
    else if (isNode(node))
      inner.push(...replacement(source, node, change, itemsIn(collection, text).items[i]?.sign));
  }
  if (removed.size === 0 && added.length === 0) return { splices: inner, emptied: false };
  if (removed.size === collection.items.length && added.length === 0) return { splices: [], emptied: true };
  const items = itemsIn(collection, text);
  const outer =
    collection.flow === true
      ? changeFlow(text, items, removed, added, (collection.range?.[0] ?? 0) + 1)
      : changeBlock(text, items, removed, added);
  return { splices: [...inner, ...outer], emptied: false };
};

/** What is added to a list or a map that is written already; groups of keys that a list holds have a line each. */
const newItem = ({ text, style }: Source, collection: Collection, key: string, value: Written): string => {
  const isBlock = collection.flow !== true;
  if (isSeq(collection)) return `${isBlock ? '- ' : ''}${writeValue(value, style)}`;
  if (!(isBlock && isList(value) && value.some(isGroup))) return writeEntry([key, value], style);
  const { start = 0 } = itemsIn(collection, text).items[0] ?? {};
  const line = `${lineBreakOf(text)}${' '.repeat(start - lineStart(text, start))}  - `;
  return `${key}:${value.map((item) => `${line}${writeValue(item, style)}`).join('')}`;
};

const isGroup = (value: Written): boolean => typeof value === 'object' && !isList(value);

/**
 * A value in the place of another. Of a list as long as the one before only the items that change.
 * @param sign where the value may follow on the line of its key
 */
const replacement = (source: Source, node: Node, change: Change, sign?: number): Splice[] => {
  const { text, document, style } = source;
  const value = whole(change);
  if (value === undefined) return [];
  const { same = Object.is } = isTree(change) ? {} : change;
  const written: unknown = isAlias(node) ? node.toJS(document) : isScalar(node) ? node.value : undefined;
  if (!isTree(change) && change.value !== undefined && written !== undefined && same(written, change.value))
    return [];
  if (isSeq(node) && Array.isArray(value) && node.items.length === value.length && node.items.every(isOwn))
    return node.items.flatMap((item, i) =>
      isNode(item) ? replacement(source, item, { at: [], value: value[i] as PlanValue, same }) : [],
    );
  const [from, to] = node.range ?? [0, 0];
  const end = endOf(node, text) ?? to;
  const after = { from: sign ?? from, to: sign ?? from, put: ` ${writeValue(value, style)}` };
  if (from === to) return [after];
  if (isSeq(node) && node.flow !== true && Array.isArray(value))
    return [{ from, to: end, put: onLines(source, from, value) }];
  if (isCollection(node) && node.flow !== true && startsLine(text, from))
    return [after, withoutLines(text, from, end)];
  return [{ from, to: end, put: quotedAs(node, value, writeValue(value, style)) }];
};

/** Whether an item is a number, a word or a list of them, none of which repeats another or may be repeated. */
const isOwn = (item: unknown): boolean =>
  (isScalar(item) && item.anchor === undefined) ||
  (isSeq(item) && item.anchor === undefined && item.items.every(isOwn));

/** The items of a list, each on a line of its own. */
const onLines = ({ text, style }: Source, from: number, value: readonly Written[]): string =>
  value
    .map((item) => `- ${writeValue(item, style)}`)
    .join(lineBreakOf(text) + ' '.repeat(from - lineStart(text, from)));

/** A word in the quotes of the one before. */
const quotedAs = (node: Node, value: Written, put: string): string => {
  if (typeof value !== 'string' || !isScalar(node) || /^["']/u.test(put)) return put;
  if (node.type === 'QUOTE_DOUBLE') return JSON.stringify(value);
  return node.type === 'QUOTE_SINGLE' ? `'${value.replaceAll("'", "''")}'` : put;
};
