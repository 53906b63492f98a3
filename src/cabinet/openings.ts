import { accept, type Complaint, type Place, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { mm, type Phrase, say } from '../units/phrase.ts';
import type { CabinetPlace, CabinetSpec, DrawerPlace } from './cabinetSpec.ts';
import { type HeightRule, rowHeights } from './heightRule.ts';
import { roundToSum } from './roundToSum.ts';

/** The clear hole for one drawer. In mm. */
export interface CabinetOpening {
  /** The drawer's name. */
  readonly name: string;
  /** From 1, from the top. */
  readonly row: number;
  /** From 1, from the left. */
  readonly column: number;
  /** Where it lies among the rows inside its place: row and column, as above. */
  readonly inner?: readonly [row: number, column: number];
  /** Its lower left corner, from the lower left of the cabinet's clear inside, y upward. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly depth: number;
}

/** Where a row, or the rows inside a place, may lie; the lower left corner as in an opening. */
interface Space {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The opening of every drawer of a cabinet, row by row from the top. Rails and dividers are taken off, and what is left is
 * shared: heights by their rule, to whole marks; widths alike where they are not given.
 * @param mark the mark that heights are rounded to, in mm
 * @returns complaints with places in the cabinet: `['rail']`, `['heights']`, `['rows', 1]`
 */
export const openingsOf = (cabinet: CabinetSpec, mark: number): Result<readonly CabinetOpening[]> => {
  const found = columnsOfRows(
    cabinet.rows,
    cabinet.heights,
    { x: 0, y: 0, ...sizeOf(cabinet) },
    cabinet,
    mark,
  );
  if (!found.ok) return found;
  const wrong: Complaint[] = [];
  const openings = found.value.flatMap(({ place, space, row, column }): CabinetOpening[] => {
    const { depth } = cabinet;
    if (!('rows' in place)) return [{ name: place.name, row, column, ...space, depth }];
    const inside = columnsOfRows(place.rows, place.heights, space, cabinet, mark);
    if (!inside.ok) {
      const at = ['rows', row - 1, column - 1];
      wrong.push(...inside.complaints.map((each) => ({ ...each, at: insidePlace(at, each.at) })));
      return [];
    }
    return inside.value.map((inner) => ({
      name: inner.place.name,
      row,
      column,
      inner: [inner.row, inner.column] as const,
      ...inner.space,
      depth,
    }));
  });
  return wrong.length > 0 ? refuse(...wrong) : accept(openings);
};

const sizeOf = ({ width, height }: CabinetSpec) => ({ width, height });

/** Rails and dividers are the cabinet's, whichever rows they are too thick for. */
const insidePlace = (at: Place, within: Place): Place =>
  within[0] === 'rail' || within[0] === 'divider' ? within : [...at, ...within];

interface Column<P> {
  readonly place: P;
  readonly space: Space;
  readonly row: number;
  readonly column: number;
}

const columnsOfRows = <P extends CabinetPlace>(
  rows: readonly (readonly P[])[],
  rule: HeightRule,
  space: Space,
  { rail, divider }: Pick<CabinetSpec, 'rail' | 'divider'>,
  mark: number,
): Result<Column<P>[]> => {
  const rails = rail * (rows.length - 1);
  if (rails >= space.height - EPSILON)
    return refuse({
      at: ['rail'],
      says: tooMuch('rail', rows.length - 1, rail, space.height),
    });
  const ideal = rowHeights(rule, rows.length, space.height - rails, rail);
  if (!ideal.ok) return refuse(...ideal.complaints.map((each) => ({ ...each, at: ['heights', ...each.at] })));
  const heights = roundToSum(ideal.value, mark);
  const wrong: Complaint[] = [];
  let top = space.y + space.height;
  const columns = rows.flatMap((places, i): Column<P>[] => {
    const height = heights[i] ?? 0;
    const y = top - height;
    top = y - rail;
    const widths = placeWidths(places, space.width, divider, ['rows', i]);
    if (!widths.ok) {
      wrong.push(...widths.complaints);
      return [];
    }
    let x = space.x;
    return places.map((place, j) => {
      const width = widths.value[j] ?? 0;
      const at = { place, space: { x, y, width, height }, row: i + 1, column: j + 1 };
      x += width + divider;
      return at;
    });
  });
  return wrong.length > 0 ? refuse(...wrong) : accept(columns);
};

const tooMuch = (what: 'rail' | 'divider', count: number, thickness: number, room: number): Phrase =>
  count === 1
    ? say`a ${what} of ${mm(thickness)} leaves the drawers nothing of ${mm(room)}`
    : say`${count} ${what}s of ${mm(thickness)} leave the drawers nothing of ${mm(room)}`;

/** How wide each place of a row is: as given, or alike. */
const placeWidths = (
  places: readonly Pick<DrawerPlace, 'width'>[],
  room: number,
  divider: number,
  at: Place,
): Result<readonly number[]> => {
  const dividers = divider * (places.length - 1);
  const given = places.reduce((sum, { width }) => sum + (width ?? 0), 0);
  const free = places.filter(({ width }) => width === undefined).length;
  const left = room - dividers - given;
  if (dividers >= room - EPSILON)
    return refuse({
      at: ['divider'],
      says: tooMuch('divider', places.length - 1, divider, room),
    });
  if (free === 0 ? Math.abs(left) > EPSILON : left <= EPSILON)
    return refuse({
      at,
      says:
        free > 0
          ? say`the drawers with a width of their own take ${mm(given)} of the ${mm(room - dividers)} between the dividers, and nothing is left for the others`
          : left > 0
            ? say`the drawers of this row take ${mm(given)} of the ${mm(room - dividers)} between the dividers; ${mm(left)} is left over`
            : say`the drawers of this row take ${mm(given)}, and between the dividers there is ${mm(room - dividers)}; that is ${mm(-left)} too much`,
      remedy: free > 0 ? say`give them less` : say`leave the width of one of them out: it takes what is left`,
    });
  return accept(places.map(({ width }) => width ?? left / free));
};
