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
 * The fittings of every drawer of a set. Pulls that line up with another drawer's stand upright over or under those of them
 * that lie within their front's length.
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
    const across = spec.pulls?.across;
    const all = planned.made === undefined ? [planned] : [planned, ...planned.made];
    for (const drawer of all) {
      const middles =
        across?.kind === 'line' ? middlesInLine(drawer, across, drawers, { specs, own }) : undefined;
      const made =
        middles?.ok === false
          ? refuse(...middles.complaints, ...wrongOf(fittingsOf(spec, drawer)))
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

/** The drawers' fittings by themselves. */
interface Alone {
  readonly specs: readonly FittingSpecs[];
  readonly own: readonly Result<Fittings>[];
}

const middlesInLine = (
  drawer: FittedDrawer,
  { with: name, number }: { readonly with: string; readonly number?: number },
  drawers: readonly FittedDrawer[],
  { specs, own }: Alone,
): Result<readonly number[]> => {
  const refused = (complaint: Omit<Complaint, 'at'>, key = 'lineUpWith'): Result<never> =>
    refuse({ at: ['pulls', key], ...complaint });
  const index = drawers.findIndex(({ spec }) => nameKey(spec.name) === nameKey(name));
  const other = drawers[index];
  if (other === undefined)
    return refused({
      says: say`there is no drawer called ${quote(name)}`,
      remedy: say`name one of ${listNames(drawers.map(({ spec }) => spec.name))}`,
    });
  const [places, theirs] = [frontPlaces(drawer), frontPlaces(other)];
  if (places.length === 0 || theirs.length === 0)
    return refused({
      says: say`pulls line up where drawers have places in a cabinet, and ${quote(places.length === 0 ? drawer.spec.name : name)} has none`,
      remedy: say`name it in cabinet: rows, or give fromEnds in place of this`,
    });
  const fittings = own[index];
  // What is wrong with the other's pulls is told of it.
  const pulls = fittings?.ok ? fittings.value.pulls : [];
  if (fittings?.ok && (specs[index]?.pulls?.across.kind === 'line' || pulls.length === 0))
    return refused({
      says: say`${quote(name)} has no pulls with places of their own to line up with`,
      remedy: say`name a drawer that has`,
    });
  const { length } = frontZones(drawer.spec, drawer.sizes);
  const [first = [], ...others] = places.map(({ x: left }) => {
    const over = theirs
      .flatMap(({ x }) => pulls.map(({ at }) => x + at[0] - left))
      .filter((x) => x > 0 && x < length)
      .toSorted((a, b) => a - b);
    return over.filter((x, i) => i === 0 || x - (over[i - 1] ?? 0) > EPSILON);
  });
  const isAlike = (each: readonly number[]): boolean =>
    each.length === first.length && each.every((x, i) => Math.abs(x - (first[i] ?? 0)) < EPSILON);
  if (!others.every(isAlike))
    return refused({
      says: say`the places of this drawer do not stand alike over the pulls of ${quote(name)}, and equal drawers are drilled alike`,
      remedy: say`give them two names, or give fromEnds in place of this`,
    });
  const count = first.length;
  const stand = say`${count === 0 ? 'no pull' : count === 1 ? 'one pull' : `${count} pulls`} of ${quote(name)} ${count < 2 ? 'stands' : 'stand'} over or under this front`;
  if (fittings?.ok && (count === 0 || count > MOST_PULLS))
    return refused({
      says: say`${stand}; there must be one or ${MOST_PULLS}`,
      remedy: say`name a drawer of another row, or give fromEnds in place of this`,
    });
  if (number !== undefined && number !== count && count > 0)
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
