import { accept, type Result, refuse } from '../../units/complaint.ts';
import type { Drawer } from '../drawer.ts';
import { bottomUnderside } from '../drawerParts.ts';
import type { Fittings } from './fittings.ts';
import { frontZones } from './frontZones.ts';
import { lockOf } from './lockOf.ts';
import { pullsOf } from './pullsOf.ts';
import { stopsOf } from './stopsOf.ts';
import type { FittingSpecs } from './usualFittings.ts';

/** A drawer that fittings are fixed to. */
export type FittedDrawer = Pick<Drawer, 'spec' | 'sizes' | 'made'>;

/**
 * Everything that is fixed to a drawer's front, and its stops.
 * @param lined the middles of pulls that line up with another drawer's, in mm from the front's left end
 * @returns complaints with places in the drawer's entry
 */
export const fittingsOf = (
  specs: FittingSpecs,
  { spec, sizes }: FittedDrawer,
  lined?: readonly number[],
): Result<Fittings> => {
  const zones = frontZones(spec, sizes);
  const lock = specs.lock && lockOf(specs.lock, zones, spec.stock.front.thickness);
  const pulls =
    specs.pulls &&
    pullsOf(specs.pulls, {
      zones,
      notation: spec.joint.notation ?? 'mm',
      ...(lock && { lock: lock.lock }),
      ...(lined && { lined }),
    });
  const stops = specs.stops && stopsOf(specs.stops, spec, sizes, bottomUnderside(spec));
  const wrong = [
    ...(lock?.complaints ?? []),
    ...[pulls, stops].flatMap((each) => (each === undefined || each.ok ? [] : each.complaints)),
  ];
  return wrong.length > 0
    ? refuse(...wrong)
    : accept({
        pulls: pulls?.ok ? pulls.value : [],
        ...(lock && { lock: lock.lock }),
        ...(stops?.ok && { stops: stops.value }),
      });
};
