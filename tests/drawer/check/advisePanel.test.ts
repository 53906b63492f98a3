import { describe, expect, it } from 'vitest';
import { advisePanel } from '../../../src/drawer/check/adviseDrawer.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { complaintsOf, value } from '../../value.ts';
import { drawer } from '../chest.ts';

const of = (species: string, kind: 'panel' | 'solid' = 'panel'): DrawerSpec => {
  const { stock, bottom } = drawer();
  return drawer({ stock: { ...stock, bottom: { thickness: 5, species } }, bottom: { ...bottom, kind } });
};
const said = (spec: DrawerSpec): string[] => complaintsOf(refuse(...advisePanel(spec)));

describe('a bottom laid in as a panel', () => {
  it.each(['Ash, white', 'black cherry', 'oak', 'pine', 'Teak'])(
    'is advised of where it is of %s',
    (species) => {
      expect(said(of(species))).toEqual([
        `bottom.kind: a panel is taken not to move, but "${species}" is solid wood: held on all sides, with its grain from front to back, it would burst the drawer; try solid`,
      ]);
      expect(said(of(species, 'solid'))).toEqual([]);
    },
  );

  it.each(['birch plywood', 'ply', 'MDF', 'hardboard', 'oak veneered board', ''])(
    'may be of %j',
    (species) => {
      expect(said(of(species))).toEqual([]);
    },
  );

  it('may be of nothing named', () => {
    expect(said(drawer())).toEqual([]);
  });

  it('is in the advice on its set', () => {
    const { advice } = value(layOutSet([of('oak')]));
    expect(advice.map(({ at }) => at.join('.'))).toEqual(['drawers.0.bottom.kind']);
  });
});
