import { describe, expect, it } from 'vitest';
import { adviseSizes } from '../../../src/drawer/check/adviseDrawer.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { complaintsOf, value } from '../../value.ts';
import { drawer, inOpening } from '../chest.ts';

const said = (spec: DrawerSpec): string[] => complaintsOf(refuse(...adviseSizes(spec)));
const { stock } = drawer();
const front = (thickness: number): Partial<DrawerSpec> => ({ stock: { ...stock, front: { thickness } } });

describe('sizes that hardly anybody means', () => {
  it('are a front thinner than its sides, not one as thick', () => {
    expect(said(drawer(front(10.9)))).toEqual([
      'stock.front.thickness: a front of 10.9 mm is thinner than its sides of 11 mm: are the two swapped?',
    ]);
    expect(said(drawer(front(11)))).toEqual([]);
  });

  it('are an opening, or a drawer, higher than wide, not one that is square', () => {
    expect(said(inOpening(76, 280, 420))).toEqual([
      'opening.height: an opening 76 mm wide and 280 mm high is higher than it is wide: are the two swapped?',
    ]);
    expect(said(inOpening(280, 280, 420))).toEqual([]);
    expect(said(drawer({ space: { kind: 'size', size: { width: 75, height: 76, depth: 100 } } }))).toEqual([
      'size.height: a drawer 75 mm wide and 76 mm high is higher than it is wide: are the two swapped?',
    ]);
  });

  it('are advised on once for a set, which is made', () => {
    const { advice } = value(layOutSet([drawer(front(10))]));
    expect(complaintsOf(refuse(...advice)).filter((line) => line.includes('swapped'))).toEqual([
      'drawers.0.stock.front.thickness: "Buttons": a front of 10 mm is thinner than its sides of 11 mm: are the two swapped?',
    ]);
  });
});
