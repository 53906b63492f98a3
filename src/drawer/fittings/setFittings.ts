import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { listNames } from '../../units/listNames.ts';
import { nameKey } from '../../units/name.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { frontPlaces } from '../arrangement/frontPlaces.ts';
import { type DrawerComplaint, mergeComplaints } from '../mergeComplaints.ts';
import { adviseFittings } from './adviseFittings.ts';
import type { Fittings } from './fittings.ts';
import { type FittedDrawer, fittingsOf } from './fittingsOf.ts';
import { frontZones } from './frontZones.ts';
import { type FittingSpecs, usualFittings } from './usualFittings.ts';

/** The most pulls of one front. */
const MOST_PULLS = 2;

/** What is fixed to the drawers of a set. */
export interface SetFittings {
  /** Of each that has any: as it is planned, and as it is made. */
  readonly of: ReadonlyMap<FittedDrawer, Fittings>;
  /** Places start at the plan's top. */
  readonly advice: readonly Complaint[];
}

/**
 * The fittings of every drawer of a set. Pulls that line up with a row stand upright over or under those of its pulls that lie within
 * their front's length.
 * @returns everything that cannot be made, with the nearest that can; places start at the plan's top
 * @example
 * ```ts
 * const fitted = setFittings(project.set.drawers);
 * if (fitted.ok)
 *   for (const [{ spec }, { pulls }] of fitted.value.of) for (const { at } of pulls) console.log(spec.name, at);
 * ```
 */
export const setFittings = (drawers: readonly FittedDrawer[]): Result<SetFittings> => {
  const specs = drawers.map(({ spec }) => usualFittings(spec));
  const own = drawers.map((drawer, i) => fittingsOf(specs[i] ?? {}, drawer));
  const found = new Map<FittedDrawer, Fittings>();
  const said: DrawerComplaint[] = [];
  const wrong: DrawerComplaint[] = [];
  drawers.forEach((planned, i) => {
    const spec = specs[i];
    if (spec === undefined || Object.keys(spec).length === 0) return;
    const line = spec.pulls?.across.with;
    const all = planned.made === undefined ? [planned] : [planned, ...planned.made];
    for (const drawer of all) {
      const isLined = line !== undefined && !sharesRow(drawer, line, drawers);
      const middles = isLined
        ? middlesInLine(drawer, { with: line, ...spec.pulls?.across }, drawers, { specs, own })
        : undefined;
      const made =
        middles?.ok === false
          ? refuse(...middles.complaints, ...wrongOf(fittingsOf(spec, drawer, [])))
          : fittingsOf(spec, drawer, middles?.value);
      if (made.ok) found.set(drawer, made.value);
      const told = made.ok ? adviseFittings(made.value, drawer) : made.complaints;
      (made.ok ? said : wrong).push(
        ...told.map((complaint) => ({ name: drawer.spec.name, entry: ['drawers', i], complaint })),
      );
    }
  });
  return wrong.length > 0
    ? refuse(...mergeComplaints(wrong))
    : accept({ of: found, advice: mergeComplaints(said) });
};

const wrongOf = (result: Result<unknown>): readonly Complaint[] => (result.ok ? [] : result.complaints);

const named = <D extends FittedDrawer>(name: string, drawers: readonly D[]): D | undefined =>
  drawers.find(({ spec }) => nameKey(spec.name) === nameKey(name));

/** The numbers of the cabinet's rows in which a drawer has places. */
const rowsOf = (drawer: FittedDrawer): number[] => frontPlaces(drawer).map(({ opening: { row } }) => row);

/** Whether a drawer is the one that is named, or stands in a row with it: then it has its own places, as that has. */
const sharesRow = (drawer: FittedDrawer, name: string, drawers: readonly FittedDrawer[]): boolean => {
  const other = named(name, drawers);
  if (other === undefined) return false;
  return other.spec.name === drawer.spec.name || rowsOf(drawer).some((row) => rowsOf(other).includes(row));
};

/** @param own the fittings of each drawer by itself */
const middlesInLine = (
  drawer: FittedDrawer,
  { with: name, number }: { readonly with: string; readonly number?: number },
  drawers: readonly FittedDrawer[],
  { specs, own }: { readonly specs: readonly FittingSpecs[]; readonly own: readonly Result<Fittings>[] },
): Result<readonly number[]> => {
  const refused = (complaint: Omit<Complaint, 'at'>, key = 'lineUpWith'): Result<never> =>
    refuse({ at: ['pulls', key], ...complaint });
  const other = named(name, drawers);
  if (other === undefined)
    return refused({
      says: say`there is no drawer called ${quote(name)}`,
      remedy: say`name one of ${listNames(drawers.map(({ spec }) => spec.name))}`,
    });
  const places = frontPlaces(drawer);
  const rows = rowsOf(other);
  if (places.length === 0 || rows.length === 0)
    return refused({
      says: say`pulls line up where drawers have places in a cabinet, and ${quote(places.length === 0 ? drawer.spec.name : name)} has none`,
      remedy: say`name it in cabinet: rows, or give fromEnds in place of this`,
    });
  const lined = drawers.find((each, i) => {
    const line = specs[i]?.pulls?.across.with;
    return (
      line !== undefined && rowsOf(each).some((row) => rows.includes(row)) && !sharesRow(each, line, drawers)
    );
  });
  if (lined !== undefined)
    return refused({
      says: say`the pulls of ${quote(lined.spec.name)}, in the row of ${quote(name)}, line up with others themselves`,
      remedy: say`name the drawer that those line up with`,
    });
  const inRow = drawers.flatMap((each, i) =>
    rowsOf(each).some((row) => rows.includes(row)) ? (own[i] ?? []) : [],
  );
  // What is wrong with those is told of them.
  if (inRow.some(({ ok }) => !ok)) return accept([]);
  const theirs = drawers.flatMap((each, i) => {
    const fittings = own[i];
    const pulls = fittings?.ok ? fittings.value.pulls : [];
    return frontPlaces(each).flatMap(({ x, opening: { row } }) =>
      rows.includes(row) ? pulls.map(({ at }) => x + at[0]) : [],
    );
  });
  const { length } = frontZones(drawer.spec, drawer.sizes);
  const [first = [], ...others] = places.map(({ x: left }) => {
    const over = theirs
      .map((x) => x - left)
      .filter((x) => x > 0 && x < length)
      .toSorted((a, b) => a - b);
    return over.filter((x, i) => i === 0 || x - (over[i - 1] ?? 0) > EPSILON);
  });
  const isAlike = (each: readonly number[]): boolean =>
    each.length === first.length && each.every((x, i) => Math.abs(x - (first[i] ?? 0)) < EPSILON);
  if (!others.every(isAlike))
    return refused({
      says: say`the places of this drawer do not stand alike over the pulls of the row of ${quote(name)}, and equal drawers are drilled alike`,
      remedy: say`give them two names, or give fromEnds in place of this`,
    });
  const count = first.length;
  const stand = say`${count === 0 ? 'no pull' : count === 1 ? 'one pull' : `${count} pulls`} of the row of ${quote(name)} ${count < 2 ? 'stands' : 'stand'} over or under this front`;
  if (count === 0 || count > MOST_PULLS)
    return refused({
      says: say`${stand}; there must be one or ${MOST_PULLS}`,
      remedy: say`name a drawer of another row, or give fromEnds in place of this`,
    });
  if (number !== undefined && number !== count)
    return refused(
      {
        says: say`${stand}, and ${number} ${number === 1 ? 'is' : 'are'} wished`,
        hint: say`${count}`,
        remedy: say`leave the number out`,
      },
      'number',
    );
  return accept(first);
};
