import type { Place } from '../complaint.ts';
import type { Position } from './position.ts';

type Find = (place: Place) => Position | undefined;

const CORNER_KEYS = new Set([
  'kind',
  'slope',
  'pin',
  'halfPin',
  'lap',
  'tails',
  'pins',
  'graded',
  'proud',
  'chisel',
]);

/**
 * Where the value that a later step complains of is written.
 * @param find where a place is written, if it is
 * @param place as the step knows it: `['drawers', 1, 'slope']`, `['joints', 0, 'tails', 2]`
 * @returns the value's own position, in its drawer or else among the plan's keys for all drawers; where it is written
 *   nowhere, that of what is nearest round it
 */
export const trace = (find: Find, place: Place): Position => {
  const [list, index, ...rest] = place;
  const written =
    list === 'drawers' && index !== undefined ? inDrawer(find, ['drawers', index], rest) : undefined;
  return written ?? nearest(find, place) ?? { line: 1, column: 1 };
};

const inDrawer = (find: Find, drawer: Place, rest: Place): Position | undefined => {
  const candidates = writtenAs(rest);
  const longest = Math.max(...candidates.map((way) => way.length));
  for (let length = longest; length > 0; length--)
    for (const way of candidates) {
      const part = way.slice(0, length);
      // A plan's whole group of keys says nothing of a value that it leaves out.
      const shared = length > 1 || way.length === 1;
      const position = find([...drawer, ...part]) ?? (shared ? find(part) : undefined);
      if (position !== undefined && length <= way.length) return position;
    }
  return undefined;
};

/** The keys under which a drawer or a plan may give what a later step calls by its own name, the first one first. */
const writtenAs = (name: Place): readonly Place[] => {
  const [key, ...more] = name;
  if (typeof key !== 'string') return [];
  if (CORNER_KEYS.has(key)) return [['joint', ...name]];
  switch (key) {
    case 'width':
      return [
        ['opening', 'height'],
        ['size', 'height'],
      ];
    case 'tailBoard':
      return [['stock', 'side', 'thickness']];
    case 'pinBoard':
      return [['stock', 'front', 'thickness']];
    case 'back':
    case 'backJoint':
      return more[0] === 'pinBoard'
        ? [
            ['stock', 'back', 'thickness'],
            ['stock', 'side', 'thickness'],
          ]
        : typeof more[0] === 'string' && CORNER_KEYS.has(more[0])
          ? [['back', 'joint', ...more], ...writtenAs(more)]
          : [];
    default:
      return [name];
  }
};

export const nearest = (find: Find, place: Place): Position | undefined => {
  for (let length = place.length; length > 0; length--) {
    const position = find(place.slice(0, length));
    if (position !== undefined) return position;
  }
  return undefined;
};
