import type { CabinetOpening } from '../../cabinet/openings.ts';
import type { Drawer } from '../drawer.ts';

/** Where a front stands: its lower left corner, lip included, from the lower left of the cabinet's clear inside, in mm. */
export interface FrontPlace {
  readonly x: number;
  readonly y: number;
  readonly opening: CabinetOpening;
}

/** Where each of a drawer's fronts stands in a planned cabinet; none where it has no place there. */
export const frontPlaces = ({
  spec: { space },
  sizes: { rebate },
}: Pick<Drawer, 'spec' | 'sizes'>): FrontPlace[] =>
  space.kind === 'size'
    ? []
    : (space.places ?? []).map((opening) => ({
        x: opening.x + space.fit.side - rebate.sides,
        y: opening.y - rebate.bottom,
        opening,
      }));
