import type { Place } from '../../units/complaint.ts';
import type { Position } from './position.ts';

/** Where a place is written; undefined where it is not. */
type Find = (place: Place) => Position | undefined;

/** What a back corner does not take from the front's: it has another width to fill. */
const OWN_OF_THE_BACK = new Set<unknown>(['tails', 'pins', 'graded']);

/** The place itself, then those that its value is taken from where it is not given. */
const sources = (place: Place): readonly Place[] => {
  const [group, part, key] = place;
  if (group === 'back' && part === 'joint' && key !== undefined && !OWN_OF_THE_BACK.has(key))
    return [place, place.slice(1)];
  if (group === 'stock' && part === 'back') return [place, ['stock', 'side', ...place.slice(2)]];
  if (group === 'stock' && part === 'bottom' && key === 'thickness') return [place, ['groove', 'width']];
  if (group === 'front' && part === 'lip') return [place, ['front', 'lip']];
  return [place];
};

/** The position of a place, or of what is nearest round it. */
export const nearest = (find: Find, place: Place): Position => {
  for (let length = place.length; length > 0; length--) {
    const position = find(place.slice(0, length));
    if (position !== undefined) return position;
  }
  return { line: 1, column: 1 };
};

/**
 * Where the value that a later step complains of is written: in its drawer, or else among the plan's keys for all
 * drawers, or else where its default is taken from. What is written nowhere is sought as near as can be in the drawer.
 * @param place by the plan's keys: `['drawers', 1, 'groove', 'offset']`, `['joints', 0, 'tails', 2]`
 */
export const trace = (find: Find, place: Place): Position => {
  const [list, index, ...rest] = place;
  if (list !== 'drawers' || index === undefined || rest.length === 0) return nearest(find, place);
  for (const source of sources(rest)) {
    const position = find([list, index, ...source]) ?? find(source);
    if (position !== undefined) return position;
  }
  return nearest(find, place);
};
