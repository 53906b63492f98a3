import type { DrawerSpec, Movement, Stock } from '../../drawer/drawerSpec.ts';
import { accept, type Complaint, type Place, type Result, refuse, under } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import type { SawnWood } from '../../wood/movement.ts';
import { findWood, type Wood } from '../../wood/species.ts';
import type { WrittenDrawer, WrittenPlan } from '../schema/planSchema.ts';

type Boards = DrawerSpec['stock'];
type WrittenStock = WrittenDrawer['stock'];

/**
 * The woods of a drawer's boards, by their names in the plan, and its climate. Boards without a cut are assumed flatsawn,
 * which moves more across its width, where a drawer sticks.
 * @returns a complaint for each board whose species is not given, or not known, where it is or should be written
 */
export const fillMovement = (
  { climate, woods, stock: general }: Pick<WrittenPlan, 'climate' | 'woods' | 'stock'>,
  boards: Boards,
  bottom: 'panel' | 'solid',
  { stock: own, at }: { readonly stock: WrittenStock; readonly at: Place },
): Result<Movement | undefined> => {
  if (climate === undefined) return accept(undefined);
  const place = (part: keyof Boards): Place =>
    own?.[part]?.species === undefined ? ['stock', part] : [...at, 'stock', part];
  const sawn = (part: keyof Boards, source: keyof Boards = part): Result<SawnWood> =>
    sawnWood(part, boards[part], place(source), woods);
  const backIsOwn = own?.back?.species !== undefined || general?.back?.species !== undefined;
  const front = sawn('front');
  const side = sawn('side');
  const back = sawn('back', backIsOwn ? 'back' : 'side');
  const below = bottom === 'panel' ? undefined : sawn('bottom');
  if (!front.ok || !side.ok || !back.ok || below?.ok === false)
    return refuse(
      ...[front, side, ...(backIsOwn ? [back] : []), ...(below ? [below] : [])].flatMap((each) =>
        each.ok ? [] : each.complaints,
      ),
    );
  return accept({
    climate,
    front: front.value,
    side: side.value,
    back: back.value,
    bottom: below === undefined ? { kind: 'panel' } : { kind: 'solid', ...below.value },
  });
};

const sawnWood = (
  part: keyof Boards,
  { species, grain = 'flatsawn' }: Stock,
  at: Place,
  woods: readonly Wood[] | undefined,
): Result<SawnWood> => {
  if (species === undefined) return refuse(noSpecies(part, at));
  const found = findWood(species, woods);
  return found.ok
    ? accept({ wood: found.value, cut: grain })
    : refuse(...under([...at, 'species'], found.complaints.map(withOwnWood(species))));
};

const noSpecies = (part: keyof Boards, at: Place): Complaint => ({
  at: [...at, 'species'],
  says: say`a climate is given, but not the wood of the ${part === 'side' ? 'sides' : part}, so its movement cannot be calculated`,
  hint: say`"Cherry, black"`,
  remedy: say`remove the climate`,
});

const withOwnWood =
  (species: string) =>
  ({ says, hint }: Complaint): Complaint => ({
    at: [],
    says,
    ...(hint && { hint }),
    remedy: say`${hint ? '' : 'choose one of these, or '}give its own movement: woods: {${species}: {shrinkage: {radial: 3.7, tangential: 7.1}}}`,
  });
