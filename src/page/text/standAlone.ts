import { type Document, isAlias, isNode, type Node, visit } from 'yaml';
import type { Place } from '../../units/complaint.ts';
import { parsePlan } from './parsePlan.ts';
import { spliced } from './splice.ts';
import { styleOf, type Written, writeValue } from './writeValue.ts';

/**
 * The text, in which a place can be changed without a change elsewhere: what it repeats (`*name`) is written out there,
 * and what repeats it is written out once, for all the others to repeat that in its place.
 */
export const standAlone = (text: string, at: Place): string => {
  if (!text.includes('*')) return text;
  let made = text;
  for (let length = 1; length <= at.length; length++) {
    const document = parsePlan(made);
    const node = document.getIn(at.slice(0, length), true);
    if (isAlias(node) && length < at.length)
      made = replaced(made, node, writeValue(written(node, document), styleOf(made)));
  }
  for (;;) {
    const handed = handOn(made, parsePlan(made), at);
    if (handed === undefined) return made;
    made = handed;
  }
};

/** How often a plan may repeat itself was seen to when it was read. */
const written = (node: Node, document: Document): Written =>
  node.toJS(document, { maxAliasCount: -1 }) as Written;

const replaced = (text: string, { range }: Node, put: string): string => {
  const [from, to] = range ?? [0, 0];
  return spliced(text, [{ from, to, put }]);
};

/** Gives one name (`&name`) of what is changed to the first that repeats it; undefined where nothing does. */
const handOn = (text: string, document: Document, at: Place): string | undefined => {
  const changed = document.getIn(at, true);
  const inside = isNode(changed) ? changed.range : undefined;
  const named = new Set<unknown>(at.map((_, i) => document.getIn(at.slice(0, i + 1), true)));
  if (isNode(changed)) visit(changed, { Node: (_, node) => void named.add(node) });
  let first: { readonly alias: Node; readonly target: Node & { anchor?: string } } | undefined;
  visit(document, {
    Alias: (_, alias) => {
      const [start = 0] = alias.range ?? [];
      if (inside && start >= inside[0] && start < inside[1]) return undefined;
      const target = alias.resolve(document);
      if (!named.has(target) || target === undefined) return undefined;
      first = { alias, target };
      return visit.BREAK;
    },
  });
  if (first === undefined) return undefined;
  const { alias, target } = first;
  const name = `&${target.anchor ?? ''}`;
  const value = writeValue(written(target, document), styleOf(text));
  const from = text.lastIndexOf(name, target.range?.[0]);
  const [start, end] = alias.range ?? [0, 0];
  const blank = text[from + name.length] === ' ' ? 1 : 0;
  // What is inside the change goes with it.
  const stays = !inside || from < inside[0];
  return spliced(text, [
    { from, to: stays ? from + name.length + blank : from, put: '' },
    { from: start, to: end, put: `${name} ${value}` },
  ]);
};
