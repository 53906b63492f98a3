import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type ParsedNode,
  parseDocument,
  type YAMLError,
} from 'yaml';
import type { Complaint, Place } from '../complaint.ts';
import { quote } from '../units/length.ts';
import { type Phrase, say } from '../units/phrase.ts';
import type { PlanComplaint } from './planComplaint.ts';
import type { Position } from './position.ts';

/** For every map and list, where its keys and its items stand in the text. */
type Marks = ReadonlyMap<object, ReadonlyMap<string | number, number>>;

/** What a plan's text says, before anyone asks whether it makes sense. */
export interface Parsed {
  /** Plain values: null, booleans, finite numbers, strings, lists and maps. */
  readonly value: unknown;
  readonly complaints: readonly PlanComplaint[];
  /** Where a place is written; undefined where it is not. */
  readonly find: (place: Place) => Position | undefined;
}

/** Deeper than any plan; what goes further down is no plan but an attack on the reader. */
const DEEPEST = 40;
/** How many values aliases may add to what is written. */
const MOST_ALIASED = 100_000;

/** Reads YAML 1.2, which JSON is a part of. */
export const parse = (text: string): Parsed => {
  const lines = new LineCounter();
  const positionOf = (offset: number): Position => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  try {
    const document = parseDocument(text, {
      lineCounter: lines,
      prettyErrors: false,
      uniqueKeys: false,
      stringKeys: true,
      schema: 'core',
    });
    const errors = [...document.errors, ...document.warnings];
    const first = errors[0];
    if (first !== undefined)
      // One slip makes the parser stumble over what follows; only the first is sure to be the user's.
      return broken({ ...positionOf(first.pos[0]), complaint: { at: [], ...inPlainWords(first) } });
    return plain(document.contents, positionOf);
  } catch (error) {
    if (error instanceof RangeError)
      return broken({ line: 1, column: 1, complaint: { at: [], says: TOO_DEEP } });
    throw error;
  }
};

const TOO_DEEP = say`the plan is nested too deeply; no plan needs more than a few levels`;

const broken = (complaint: PlanComplaint): Parsed => ({
  value: undefined,
  complaints: [complaint],
  find: () => undefined,
});

const inPlainWords = (error: YAMLError): { says: Phrase; hint?: Phrase } => {
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return { says: say`this line is indented with a tab`, hint: say`spaces` };
    case 'MULTIPLE_DOCS':
      return { says: say`a second document begins here; a file holds one plan`, hint: say`a file for each` };
    default:
      return { says: say`this is not YAML that can be read: ${error.message}` };
  }
};

/** Turns nodes into plain values, and notes where each stands. */
const plain = (root: ParsedNode | null, positionOf: (offset: number) => Position): Parsed => {
  const marks = new Map<object, Map<string | number, number>>();
  const anchors = new Map<string, { value: unknown; size: number }>();
  const open = new Set<string>();
  const complaints: PlanComplaint[] = [];
  let aliased = 0;
  let size = 0;

  const complain = (offset: number, complaint: Complaint): void => {
    complaints.push({ ...positionOf(offset), complaint });
  };

  const plainOf = (node: ParsedNode | null, at: Place): unknown => {
    size++;
    if (node === null) return null;
    if (isAlias(node)) return aliasOf(node.source, node.range[0], at);
    const { anchor } = node;
    if (anchor === undefined) return contentOf(node, at);
    const before = size;
    open.add(anchor);
    const value = contentOf(node, at);
    open.delete(anchor);
    anchors.set(anchor, { value, size: size - before + 1 });
    return value;
  };

  const aliasOf = (name: string, offset: number, at: Place): unknown => {
    const target = anchors.get(name);
    if (open.has(name))
      complain(offset, {
        at,
        says: say`${quote(`*${name}`)} stands inside what it repeats, so it never ends`,
      });
    else if (target === undefined)
      complain(offset, {
        at,
        says: say`${quote(`*${name}`)} repeats ${quote(`&${name}`)}, which is not written above it`,
      });
    else {
      aliased += target.size;
      size += target.size;
      if (aliased <= MOST_ALIASED) return target.value;
      if (aliased - target.size <= MOST_ALIASED)
        complain(offset, {
          at,
          says: say`the plan repeats itself, with *names, into more than ${MOST_ALIASED} values`,
        });
    }
    return null;
  };

  const contentOf = (
    node: Exclude<ParsedNode, { source: string; range: unknown } & { resolve: unknown }>,
    at: Place,
  ): unknown => {
    if (isScalar(node)) return node.value;
    if (at.length > DEEPEST) {
      complain(node.range[0], { at, says: TOO_DEEP });
      return null;
    }
    const own = new Map<string | number, number>();
    if (isSeq(node)) {
      const list: unknown[] = [];
      marks.set(list, own);
      node.items.forEach((item, i) => {
        own.set(i, item.range[0]);
        list.push(plainOf(item as ParsedNode, [...at, i]));
      });
      return list;
    }
    const map: Record<string, unknown> = {};
    marks.set(map, own);
    if (isMap(node))
      for (const { key, value } of node.items) {
        const name = String(isScalar(key) ? key.value : '');
        const offset = key.range[0];
        const place = [...at, name];
        const earlier = own.get(name);
        if (name === '__proto__') complain(offset, { at: place, says: say`this is not a key of a plan` });
        else if (earlier !== undefined)
          complain(offset, {
            at: place,
            says: say`this key is given twice; it stands in line ${positionOf(earlier).line} too`,
          });
        else {
          own.set(name, offset);
          map[name] = plainOf(value as ParsedNode | null, place);
        }
      }
    return map;
  };

  const value = plainOf(root, []);
  return {
    value,
    complaints,
    find: (place) => {
      const offset = offsetOf(marks, value, place);
      return offset === undefined ? undefined : positionOf(offset);
    },
  };
};

const offsetOf = (marks: Marks, root: unknown, place: Place): number | undefined => {
  let value = root;
  let offset: number | undefined = 0;
  for (const key of place) {
    if (typeof value !== 'object' || value === null) return undefined;
    offset = marks.get(value)?.get(key);
    if (offset === undefined) return undefined;
    value = Array.isArray(value) ? value[Number(key)] : (value as Record<string, unknown>)[key];
  }
  return offset;
};
