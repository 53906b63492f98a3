import type { DrawerSet } from '../../../drawer/drawer.ts';
import { SPACERS_RANGE } from '../../../drawer/drawerLimits.ts';
import {
  priceWithoutLimit,
  type SetLook,
  type SpacerPrice,
  spacerPrices,
} from '../../../drawer/spacers/spacerPrices.ts';

/** One choice of how many different spacers the front corners may need. */
export interface PriceRow {
  /** What a plan says for it; undefined without a limit. */
  readonly limit: number | undefined;
  /** How many there are. */
  readonly spacers: number;
  /** Absent where the set cannot do with so few. */
  readonly look?: SetLook;
}

/**
 * What few spacers cost, and at the end how the set looks without a limit. Where too many drawers would be sought, that
 * alone; nothing without fingers. It may take a second.
 */
export const priceTable = (set: DrawerSet): PriceRow[] => {
  const free = priceWithoutLimit(set);
  if (free === undefined) return [];
  return [
    ...downToOneThatIsMet(set).map(({ spacers, look }) => ({
      limit: spacers,
      spacers,
      ...(look && { look }),
    })),
    { limit: undefined, ...free },
  ];
};

/** The prices; where no set can do with those that are told, of more spacers too, until one can. */
const downToOneThatIsMet = (set: DrawerSet): SpacerPrice[] => {
  const { asked } = set;
  let prices = spacerPrices(set);
  while (
    asked !== undefined &&
    prices.length > 0 &&
    prices.length < SPACERS_RANGE.most &&
    prices.every(({ look }) => look === undefined)
  )
    prices = spacerPrices({
      ...set,
      asked: { ...asked, spacers: { ...asked.spacers, spacers: prices.length + 1 } },
    });
  return prices;
};
