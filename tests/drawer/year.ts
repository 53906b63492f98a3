import type { DrawerSpec, Movement } from '../../src/drawer/drawerSpec.ts';
import type { Wood } from '../../src/wood/species.ts';
import { drawer } from './chest.ts';

/** Woods whose figures are easy to reckon with. */
export const plum: Wood = { name: 'Plum', radial: 0.001, tangential: 0.002, source: 'own' };
export const pear: Wood = { name: 'Pear', radial: 0.0015, tangential: 0.003, source: 'own' };

/** A plum front and pear sides, made at 8 % and kept between 6 % and 12 %. */
export const movement = (change: Partial<Movement> = {}): Movement => ({
  climate: { making: 8, driest: 6, dampest: 12 },
  front: { wood: plum, cut: 'flatsawn' },
  side: { wood: pear, cut: 'flatsawn' },
  back: { wood: pear, cut: 'flatsawn' },
  bottom: { kind: 'panel' },
  ...change,
});

/** A drawer 75 high in an opening of 76, through the year. */
export const moving = (change: Partial<DrawerSpec> = {}): DrawerSpec =>
  drawer({ movement: movement(), ...change });
