import type { FittingsWish } from '../../drawer/fittings/fittingSpec.ts';
import type { WrittenDrawer } from '../schema/planSchema.ts';

type WrittenFittings = Pick<WrittenDrawer, 'pulls' | 'locks' | 'stops'>;

/** A drawer's fittings by its own keys, else the plan's; undefined where neither gives any. */
export const fillFittings = (plan: WrittenFittings, own: WrittenFittings): FittingsWish | undefined => {
  const pulls = either(
    plan.pulls && own.pulls ? withoutPlaces(plan.pulls, own.pulls) : plan.pulls,
    own.pulls,
  );
  const locks = either(plan.locks, own.locks);
  const stops = either(plan.stops, own.stops);
  return pulls || locks || stops
    ? { ...(pulls && { pulls }), ...(locks && { locks }), ...(stops && { stops }) }
    : undefined;
};

const either = <Group extends object>(general: Group | undefined, own: Group | undefined) =>
  general && own ? { ...general, ...own } : (own ?? general);

type Pulls = NonNullable<WrittenFittings['pulls']>;

/** What a plan says of pulls, but for where they are along the front where a drawer says that itself. */
const withoutPlaces = ({ fromEnds, lineUpWith, ...rest }: Pulls, own: Pulls): Pulls => ({
  ...rest,
  ...(own.fromEnds === undefined &&
    own.lineUpWith === undefined && {
      ...(fromEnds !== undefined && { fromEnds }),
      ...(lineUpWith !== undefined && { lineUpWith }),
    }),
});
