import type { Complaint, Place } from '../../units/complaint.ts';
import { SPACING_KEYS } from '../schema/cornerSchema.ts';
import type { PlanComplaint } from './planComplaint.ts';
import type { Position } from './position.ts';
import type { EntryIndices } from './validEntries.ts';

/** Where a place is written; undefined where it is not. */
type Find = (place: Place) => Position | undefined;

const OWN_OF_A_CORNER = new Set<unknown>(SPACING_KEYS);

/** The place itself, then those that its value is taken from where it is not given. */
const sources = (place: Place): readonly Place[] => {
  const [group, part, key] = place;
  if (group === 'back' && part === 'joint' && key !== undefined && !OWN_OF_A_CORNER.has(key))
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
 * A later step's complaint where the value that it complains of is written: in its drawer or box, or else among the plan's keys
 * for all drawers, or else where its default is taken from. What is written nowhere is sought as near as can be in the drawer.
 * @param indices which entries of the text the later step was given: its places count those alone
 */
export const locate = (find: Find, indices: EntryIndices, complaint: Complaint): PlanComplaint => {
  const [list, index, ...rest] = complaint.at;
  if ((list !== 'drawers' && list !== 'boxes' && list !== 'joints') || typeof index !== 'number')
    return { ...nearest(find, complaint.at), complaint };
  const entry = [list, indices[list][index] ?? index];
  const at = [...entry, ...rest];
  const places =
    list !== 'joints' && rest.length > 0
      ? sources(rest).flatMap((source) => [[...entry, ...source], source])
      : rest.length > 0 && !OWN_OF_A_CORNER.has(rest[0])
        ? [at, ['joint', ...rest]]
        : [];
  for (const place of places) {
    const position = find(place);
    if (position !== undefined) return { ...position, complaint: { ...complaint, at: place } };
  }
  return { ...nearest(find, at), complaint: { ...complaint, at } };
};
