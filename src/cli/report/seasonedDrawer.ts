import type { Drawer } from '../../drawer/drawer.ts';
import type { DrawerSeason } from '../../drawer/drawerSeason.ts';

/** A drawer, and what the year does to it. */
export interface SeasonedDrawer {
  readonly drawer: Drawer;
  readonly season: DrawerSeason;
}
