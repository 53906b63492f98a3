import {
  type AliasEvent,
  boolCoreTag,
  EVENT_ID,
  type Event,
  floatCoreTag,
  getScalarValue,
  intCoreTag,
  NOT_RESOLVED,
  nullCoreTag,
  parseEvents,
  SCALAR_STYLE,
  type ScalarEvent,
  YAMLException,
} from 'js-yaml';
import type { Complaint, Place } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { BEGIN_A_PLAN, type PlanComplaint } from './planComplaint.ts';
import { type Position, positionsIn } from './position.ts';
import { inPlainWords } from './yamlWords.ts';

/** A plan's text as plain values, not yet checked against the schema. */
export interface Parsed {
  /** Plain values: null, booleans, numbers, strings, lists and maps; undefined where the text cannot be read. */
  readonly value: unknown;
  readonly complaints: readonly PlanComplaint[];
  /** The position of a place, its key or its item; undefined where it is not written. */
  readonly find: (place: Place) => Position | undefined;
}

/** The deepest nesting that is read: more is a typing error, or an attack on the reader. */
const DEEPEST = 40;
/** The most values that aliases may add to those written. */
const MOST_REPEATED = 100_000;

/** Reads YAML 1.2, core schema, of which JSON is a subset. */
export const parse = (text: string): Parsed => {
  const positionOf = positionsIn(text);
  try {
    return readEvents(text, parseEvents(text, { maxDepth: DEEPEST }), positionOf);
  } catch (error) {
    if (!(error instanceof YAMLException)) throw error;
    // One error leads a parser to others; only the first is certain to be the user's.
    const { offset, words } = inPlainWords(error.reason, text, error.mark?.position ?? 0);
    return unread(positionOf(offset), words);
  }
};

const unread = (position: Position, words: Omit<Complaint, 'at'>): Parsed => ({
  value: undefined,
  complaints: [{ ...position, complaint: { at: [], ...words } }],
  find: () => undefined,
});

type NodeEvent = Exclude<Event, { readonly type: typeof EVENT_ID.DOCUMENT | typeof EVENT_ID.POP }>;
type Starts = Map<string | number, number>;

/** A parser's events as plain values, with the offset of each. */
const readEvents = (
  text: string,
  events: readonly Event[],
  positionOf: (offset: number) => Position,
): Parsed => {
  const marks = new Map<unknown, Starts>();
  const anchors = new Map<string, { readonly value: unknown; readonly size: number } | 'open'>();
  const complaints: PlanComplaint[] = [];
  const place: (string | number)[] = [];
  let next = 1;
  let size = 0;
  let repeated = 0;

  const complain = (offset: number, complaint: Omit<Complaint, 'at'>): void => {
    complaints.push({ ...positionOf(offset), complaint: { at: [...place], ...complaint } });
  };

  /** The next node inside a list, a map or the document; undefined at its end. */
  const peek = (): NodeEvent | undefined => {
    const event = events[next];
    return event === undefined || event.type === EVENT_ID.POP || event.type === EVENT_ID.DOCUMENT
      ? undefined
      : event;
  };

  const readNode = (event: NodeEvent): unknown => {
    next++;
    size++;
    if (event.type === EVENT_ID.ALIAS) return repeat(event);
    if (event.tagStart >= 0)
      complain(event.tagStart, {
        says: say`${quote(text.slice(event.tagStart, event.tagEnd))} is a tag, and a plan has none`,
        remedy: say`remove it`,
      });
    if (event.anchorStart < 0) return readContent(event);
    const anchor = text.slice(event.anchorStart, event.anchorEnd);
    const before = size;
    anchors.set(anchor, 'open');
    const value = readContent(event);
    anchors.set(anchor, { value, size: size - before + 1 });
    return value;
  };

  const readContent = (event: Exclude<NodeEvent, AliasEvent>): unknown => {
    if (event.type === EVENT_ID.SCALAR) return scalarOf(text, event);
    const starts: Starts = new Map();
    const value = event.type === EVENT_ID.SEQUENCE ? readList(starts) : readMap(starts);
    marks.set(value, starts);
    next++;
    return value;
  };

  const readList = (starts: Starts): unknown[] => {
    const list: unknown[] = [];
    for (let item = peek(); item !== undefined; item = peek()) {
      const start = startOf(item);
      if (start !== undefined) starts.set(list.length, start);
      place.push(list.length);
      list.push(readNode(item));
      place.pop();
    }
    return list;
  };

  const readMap = (starts: Starts): Record<string, unknown> => {
    const map: Record<string, unknown> = {};
    for (let key = peek(); key !== undefined; key = peek()) {
      const name = key.type === EVENT_ID.SCALAR ? getScalarValue(text, key) : undefined;
      if (name === undefined) readNode(key);
      else next++;
      place.push(name ?? '?');
      const start = startOf(key) ?? 0;
      const fault = keyFault(name, starts);
      if (fault !== undefined) complain(start, fault);
      const item = peek();
      const value = item === undefined ? null : readNode(item);
      if (fault === undefined && name !== undefined) {
        starts.set(name, start);
        map[name] = value;
      }
      place.pop();
    }
    return map;
  };

  const keyFault = (name: string | undefined, starts: Starts): Omit<Complaint, 'at'> | undefined => {
    if (name === undefined) return { says: say`a key must be a word` };
    if (name === '__proto__') return { says: say`there is no such key in a plan` };
    const earlier = starts.get(name);
    if (earlier === undefined) return undefined;
    return {
      says: say`this key is given twice; it is in line ${positionOf(earlier).line} too`,
      remedy: say`remove one of them`,
    };
  };

  const repeat = (event: AliasEvent): unknown => {
    const anchor = text.slice(event.anchorStart, event.anchorEnd);
    const target = anchors.get(anchor);
    const start = event.anchorStart - 1;
    if (target === undefined)
      complain(start, {
        says: say`${quote(`*${anchor}`)} repeats ${quote(`&${anchor}`)}, which is not written above it`,
      });
    else if (target === 'open')
      complain(start, {
        says: say`${quote(`*${anchor}`)} is inside what it repeats, and would never end`,
      });
    else {
      size += target.size;
      repeated += target.size;
      if (repeated <= MOST_REPEATED) return target.value;
      if (repeated - target.size <= MOST_REPEATED)
        complain(start, { says: say`the plan repeats itself into more than ${MOST_REPEATED} values` });
    }
    return null;
  };

  const root = peek();
  if (root === undefined)
    return unread(positionOf(0), {
      says: say`the plan is empty`,
      remedy: BEGIN_A_PLAN,
    });
  const value = readNode(root);
  const second = events[next + 1];
  if (second !== undefined)
    complain(startOf(events[next + 2]) ?? text.length, {
      says: say`a second plan begins here; a file holds one`,
      remedy: say`make a file for each`,
    });
  return {
    value,
    complaints,
    find: (sought) => {
      const offset = offsetOf(marks, value, sought);
      return offset === undefined ? undefined : positionOf(offset);
    },
  };
};

/** The offset at which a node begins; undefined for an empty one. */
const startOf = (event: Event | undefined): number | undefined => {
  switch (event?.type) {
    case EVENT_ID.SEQUENCE:
    case EVENT_ID.MAPPING:
      return event.start;
    case EVENT_ID.ALIAS:
      return event.anchorStart - 1;
    case EVENT_ID.SCALAR:
      if (event.valueStart < 0) return undefined;
      return event.style === SCALAR_STYLE.PLAIN ? event.valueStart : event.valueStart - 1;
  }
  return undefined;
};

const PLAIN_KINDS = [nullCoreTag, boolCoreTag, intCoreTag, floatCoreTag];

const scalarOf = (text: string, event: ScalarEvent): unknown => {
  const written = getScalarValue(text, event);
  if (event.style !== SCALAR_STYLE.PLAIN) return written;
  for (const kind of PLAIN_KINDS) {
    const value = kind.resolve(written, false, kind.tagName);
    if (value !== NOT_RESOLVED) return value;
  }
  return written;
};

const offsetOf = (marks: ReadonlyMap<unknown, Starts>, root: unknown, place: Place): number | undefined => {
  let value = root;
  let offset: number | undefined = 0;
  for (const key of place) {
    offset = marks.get(value)?.get(key);
    if (offset === undefined) return undefined;
    value = (value as Readonly<Record<string | number, unknown>>)[key];
  }
  return offset;
};
