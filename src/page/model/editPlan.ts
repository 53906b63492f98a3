import { type Document, isAlias, isMap, isNode, isSeq, parseDocument } from 'yaml';
import type { Place } from '../../units/complaint.ts';

/** A value that the page writes into a plan. */
export type PlanValue = number | string | readonly (number | string)[];

/** One change of a plan's text: the value at a place; undefined removes it. */
export interface Edit {
  readonly at: Place;
  readonly value: PlanValue | undefined;
}

/**
 * A plan's text with some changes, YAML or JSON; it must be valid. Comments, order and spelling of all else are kept.
 */
export const editPlan = (text: string, edits: readonly Edit[]): string => {
  const document = documentOf(text);
  for (const { at, value } of edits) {
    ownEveryNode(document, at);
    if (value === undefined) removeAt(document, at);
    else setAt(document, at, value);
  }
  return finish(document, text);
};

let last: { readonly text: string; readonly document: Document } | undefined;

/** A copy of a text's document. The last one is remembered, as every move of a drag edits the same text. */
const documentOf = (text: string): Document => {
  if (last?.text !== text) last = { text, document: parseDocument(text) };
  return last.document.clone();
};

const finish = (document: Document, before: string): string =>
  isJson(before) ? `${JSON.stringify(document.toJS(), null, 2)}\n` : print(document, before);

/** Inserts a copy of an item of a list after it, with another name. */
export const copyItem = (text: string, list: string, index: number, name: string): string => {
  const document = parseDocument(text);
  const items = document.get(list);
  const item = document.getIn([list, index], true);
  if (!isSeq(items) || !isNode(item)) return text;
  items.items.splice(
    index + 1,
    0,
    document.createNode(item.toJS(document), { flow: isMap(item) && item.flow === true }),
  );
  document.setIn([list, index + 1, 'name'], name);
  return finish(document, text);
};

const setAt = (document: Document, at: Place, value: PlanValue): void => {
  // A plain value is set in the node that is there, which keeps its comment; a list needs the comment copied.
  const before = document.getIn(at, true);
  if (typeof value === 'string' || typeof value === 'number') document.setIn(at, value);
  else {
    const list = document.createNode(value, { flow: true });
    if (isNode(before)) list.comment = before.comment ?? null;
    document.setIn(at, list);
  }
};

/** Replaces every alias (`*name`) on the path by a copy, so that only this place changes. */
const ownEveryNode = (document: Document, at: Place): void => {
  for (let length = 1; length <= at.length; length++) {
    const way = at.slice(0, length);
    const node = document.getIn(way, true);
    if (isAlias(node) && length < at.length)
      document.setIn(way, document.createNode(node.toJS(document), { flow: true }));
    if (node === undefined && length < at.length)
      document.setIn(way, document.createNode({}, { flow: true }));
  }
};

const removeAt = (document: Document, at: Place): void => {
  document.deleteIn(at);
  // A group of keys that is now empty is removed too.
  for (let length = at.length - 1; length > 0; length--) {
    const node = document.getIn(at.slice(0, length), true);
    if (!isMap(node) || node.items.length > 0) return;
    document.deleteIn(at.slice(0, length));
  }
};

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

const print = (document: Document, before: string): string =>
  document.toString({ lineWidth: 0, flowCollectionPadding: /\{ \S/u.test(before) });
