import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  isCollection,
  isNode,
  isPair,
  LineCounter,
  type Node,
  parseDocument,
  parse as parseYaml,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import type { PlanValue } from '../../../src/page/text/edit.ts';
import { editPlan } from '../../../src/page/text/editPlan.ts';
import type { Place } from '../../../src/units/complaint.ts';
import { anyJson, anyLayout } from './anyLayout.ts';

const parse = (text: string): unknown => parseYaml(text, { maxAliasCount: -1 });

const valueAt = (value: unknown, at: Place): unknown =>
  at.reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[String(key)], value);

/** Every place of a value, but for the items of lists of numbers and words, which change with their list. */
const placesIn = (value: unknown, at: Place = []): Place[] => {
  if (typeof value !== 'object' || value === null) return [at];
  const inner = Object.entries(value).flatMap(([key, item]) => {
    if (Array.isArray(value) && typeof item !== 'object') return [];
    return placesIn(item, [...at, Array.isArray(value) ? Number(key) : key]);
  });
  return at.length === 0 ? inner : [at, ...inner];
};

/** The value with one change; what loses its last key or item goes too, up to the whole. */
const changed = (value: unknown, at: Place, wish: unknown): unknown => {
  // Not structuredClone, in which what repeats another would change with it.
  const copy: unknown = JSON.parse(JSON.stringify(value));
  const inner = valueAt(copy, at.slice(0, -1)) as Record<string, unknown>;
  const key = String(at.at(-1));
  if (wish !== undefined) inner[key] = wish;
  else if (Array.isArray(inner)) inner.splice(Number(key), 1);
  else delete inner[key];
  return copy;
};

/** What is removed in the end where a place is: it, or what holds nothing else. */
const removedAt = (value: unknown, at: Place): Place => {
  const outer = at.slice(0, -1);
  const alone = Object.keys(valueAt(value, outer) as object).length === 1;
  return alone && outer.length > 0 ? removedAt(value, outer) : at;
};

/** Where the dash of an item is, which may have a line to itself. */
const dashOf = (holder: YAMLMap | YAMLSeq, index: number): number | undefined => {
  const token = holder.srcToken;
  return token?.type === 'block-seq'
    ? token.items[index]?.start.find(({ type }) => type === 'seq-item-ind')?.offset
    : undefined;
};

/** The numbers of the lines on which the value at a place is written, its key, what repeats it, and a bracket or a comma beside it. */
const linesOf = (text: string, at: Place): Set<number> => {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter, keepSourceTokens: true });
  const held = new Set<number>();
  const add = (from: number, to: number): void => {
    for (let line = counter.linePos(from).line; line <= counter.linePos(Math.max(from, to)).line; line++)
      held.add(line);
  };
  const ranges = (node: Node): [number, number] => {
    const [from, to] = node.range ?? [0, 0];
    return [from, from + text.slice(from, to).trimEnd().length];
  };
  let holder: unknown = document.contents;
  for (const [i, key] of at.entries()) {
    if (!isCollection(holder)) break;
    const items: unknown[] = holder.items;
    const index = items.findIndex((item, n) =>
      isPair(item) ? isNode(item.key) && item.key.toJSON() === key : n === key,
    );
    const item = items[index];
    const value = isPair(item) ? item.value : item;
    if (i === at.length - 1 || !isCollection(value)) {
      const start = isPair(item) && isNode(item.key) ? item.key : value;
      const last = index < 0 ? items.at(-1) : item;
      const end = isPair(last) ? (last.value ?? last.key) : last;
      if (index >= 0 && isNode(start) && isNode(end))
        add(dashOf(holder as YAMLMap | YAMLSeq, index) ?? ranges(start)[0], ranges(end)[1]);
      // Inside brackets a comma goes or comes beside it.
      if (holder.flow === true) {
        const before = items[(index < 0 ? items.length : index) - 1];
        const other = isPair(before) ? before.value : before;
        if (isNode(other)) add(ranges(other)[1], ranges(other)[1]);
        const next = items[index + 1];
        const following = isPair(next) ? next.key : next;
        if (index >= 0 && isNode(following) && isNode(end)) add(ranges(end)[1], ranges(end)[1]);
        if (items.length === 0) add(...ranges(holder));
      }
    }
    holder = value;
  }
  return held;
};

/** Whether all of some lines are among others, in this order. */
const missingIn = (lines: readonly string[], all: readonly string[]): string[] => {
  let from = 0;
  return lines.filter((line) => {
    const found = all.indexOf(line, from);
    if (found >= 0) from = found + 1;
    return found < 0;
  });
};

const wish = fc.oneof(
  fc.integer({ min: 0, max: 50 }),
  fc.constantFrom('1:6', 'Cherry, black', "'"),
  fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 4 }),
  fc.constant(undefined),
);

/** A text, and a change of it: of what is there, or of what is not. */
const anyChange = fc
  .tuple(
    fc.oneof({ weight: 4, arbitrary: anyLayout }, { weight: 1, arbitrary: anyJson }),
    fc.nat(),
    wish,
    fc.boolean(),
  )
  .map(([text, pick, value, isNew]) => {
    const root = parse(text);
    const isGroup = (value: unknown): boolean => typeof value === 'object' && !Array.isArray(value);
    const groups = [[], ...placesIn(root).filter((at) => isGroup(valueAt(root, at)))];
    const places = isNew ? groups.map((at) => [...at, 'new']) : placesIn(root);
    const at = places[pick % places.length] ?? [];
    // The page puts nothing in the place of a drawer.
    const put = typeof at.at(-1) === 'number' ? undefined : (value as PlanValue | undefined);
    return { text, root, at, value: put };
  });

const repeats = (text: string): boolean => /[&*]n\d/u.test(text);

describe('a change of a text that somebody has written', () => {
  it('changes the one value that was asked for, and no other', () => {
    fc.assert(
      fc.property(anyChange, ({ text, root, at, value }) => {
        const place = value === undefined && valueAt(root, at) !== undefined ? removedAt(root, at) : at;
        fc.pre(
          place.length > 0 &&
            !(place.length === 1 && value === undefined && Object.keys(root as object).length === 1),
        );
        const made = editPlan(text, [{ at, value }]);
        expect(parse(made)).toEqual(changed(root, place, value));
        if (text.startsWith('{')) expect(JSON.parse(made)).toEqual(parse(made));
      }),
      { numRuns: 150 },
    );
  });

  it('leaves every line as it is that does not hold the value', () => {
    fc.assert(
      fc.property(anyChange, ({ text, root, at, value }) => {
        fc.pre(!repeats(text));
        const isThere = valueAt(root, at) !== undefined;
        const place = value === undefined && isThere ? removedAt(root, at) : at;
        fc.pre(!(place.length === 1 && value === undefined && Object.keys(root as object).length === 1));
        const made = editPlan(text, [{ at, value }]);
        const lines = text.split('\n').map((line) => line.replace(/\r$/u, ''));
        const held = linesOf(text, place);
        const others = lines.filter((_, i) => !held.has(i + 1));
        expect(missingIn(others, made.split(/\r?\n/u))).toEqual([]);
        if (text.includes('\r\n')) expect(made).not.toMatch(/(?<!\r)\n/u);
        if (text.endsWith('\n') || !held.has(lines.length))
          expect(made.endsWith('\n')).toBe(text.endsWith('\n'));
        if (value === undefined && !isThere) expect(made).toBe(text);
      }),
      { numRuns: 150 },
    );
  });
});
