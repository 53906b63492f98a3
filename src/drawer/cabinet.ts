import { assumedCabinet } from './assumedCabinet.ts';
import type { Cabinet } from './cabinetFront.ts';
import type { Drawer } from './drawer.ts';
import { plannedCabinet } from './plannedCabinet.ts';

/** The drawers in their cabinet: as the plan places them, or else in an assumed arrangement. */
export const cabinetOf = (drawers: readonly Drawer[]): Cabinet =>
  plannedCabinet(drawers) ?? assumedCabinet(drawers);
