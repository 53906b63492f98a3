import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { type Part, parts, stockTotals } from '../../src/drawer/partsList.ts';
import { speak } from '../../src/units/phrase.ts';
import { value } from '../value.ts';
import { drawer, inOpening } from './chest.ts';

const rows = (...specs: DrawerSpec[]) => parts(value(layOutSet(specs)));
const worked = (change: Partial<DrawerSpec>) =>
  rows(drawer(change)).map((row) => [row.part, ...row.worked.map((phrase) => speak(phrase, 'mm'))]);
const slips = { kind: 'slips', width: 12, height: 20 } as const;

describe('the parts list', () => {
  it('gives every part its size, its number and the wood for a trial joint at each jointed end', () => {
    expect(rows(drawer({ count: 2 })).map(({ worked: _, ...row }) => row)).toEqual([
      {
        drawer: 'Buttons',
        part: 'front',
        count: 2,
        length: 279,
        width: 75,
        thickness: 20,
        // The front's sockets are 15 deep, the back's 11.
        roughLength: 279 + 2 * (15 + 3),
        species: 'Cherry, black',
        grain: 'along its length',
      },
      {
        drawer: 'Buttons',
        part: 'side',
        count: 4,
        length: 403,
        width: 75,
        thickness: 11,
        roughLength: 403 + (15 + 3) + (11 + 3),
        species: 'Ash, white',
        grain: 'along its length',
      },
      {
        drawer: 'Buttons',
        part: 'back',
        count: 2,
        length: 279,
        width: 55,
        thickness: 11,
        roughLength: 279 + 2 * (11 + 3),
        species: 'Ash, white',
        grain: 'along its length',
      },
      {
        drawer: 'Buttons',
        part: 'bottom',
        count: 2,
        length: 393,
        width: 266,
        thickness: 5,
        roughLength: 393,
        grain: 'either way',
      },
    ]);
  });

  it('leaves fronts and backs the wood for a trial joint even of sides that are thicker than the joint is deep', () => {
    const thick = { ...drawer().stock, side: { thickness: 18 }, back: { thickness: 8 } };
    const [front, side, back] = rows(drawer({ stock: thick }));
    // Pins on an end of front or back take the side's 18 mm of it, and the saw 1 mm; the sides' tails are 15 and 8 long.
    expect(front?.roughLength).toBe(279 + 2 * (18 + 1));
    expect(back?.roughLength).toBe(279 + 2 * (18 + 1));
    expect(side?.roughLength).toBe(403 + (15 + 3) + (8 + 3));
  });

  describe('in the rough', () => {
    const roughs = (list: readonly Part[]) =>
      Object.fromEntries(list.map(({ part, roughLength }) => [part, roughLength]));
    const wide = (width: number, change: Partial<DrawerSpec> = {}) =>
      value(layOutSet([inOpening(width, 76, 420, change)]));

    it('is rounded up to whole mm', () => {
      // A front of 280.25 - 2 × 0.5 and 2 × (15 + 3): 315.25; a back's two joints are 11 deep: 307.25.
      expect(roughs(parts(wide(280.25), 'mm'))).toEqual({ front: 316, side: 435, back: 308, bottom: 393 });
    });

    it('is rounded up to sixteenths of an inch where inches are measured', () => {
      const inches = Object.entries(roughs(parts(wide(280), 'in'))).map(([part, length]) => [
        part,
        length / 25.4,
      ]);
      // 315, 435, 307 and 393 mm are 198.43, 274.02, 193.39 and 247.56 sixteenths.
      expect(inches).toEqual([
        ['front', expect.closeTo(199 / 16, 9)],
        ['side', expect.closeTo(275 / 16, 9)],
        ['back', expect.closeTo(194 / 16, 9)],
        ['bottom', expect.closeTo(248 / 16, 9)],
      ]);
    });

    it('stays as it is where it falls on a mark', () => {
      // 12 7/16 in is 315.9125 mm.
      const [front] = parts(wide(280 + 0.9125), 'in');
      expect(front?.roughLength).toBeCloseTo(315.9125, 9);
    });

    it('spares 5 mm at each end of a solid bottom and of a slip, and nothing of a panel', () => {
      const spared = (kind: 'solid' | 'panel') =>
        rows(drawer({ bottom: { kind, slack: 0.5, hold: slips } }))
          .filter(({ part }) => part === 'bottom' || part === 'slip')
          .map(({ part, length, roughLength }) => [part, roughLength - length]);
      expect(spared('solid')).toEqual([
        ['bottom', 10],
        ['slip', 10],
      ]);
      expect(spared('panel')).toEqual([
        ['bottom', 0],
        ['slip', 10],
      ]);
    });
  });

  it('lists slips of the wood of the sides', () => {
    const list = rows(drawer({ count: 3, bottom: { kind: 'solid', slack: 0.5, hold: slips } }));
    expect(list.map(({ part, count, species, grain }) => [part, count, species, grain])).toEqual([
      ['front', 3, 'Cherry, black', 'along its length'],
      ['side', 6, 'Ash, white', 'along its length'],
      ['back', 3, 'Ash, white', 'along its length'],
      ['bottom', 3, undefined, 'from side to side'],
      ['slip', 6, 'Ash, white', 'along its length'],
    ]);
  });

  it('says which faces carry grooves and rebates', () => {
    expect(worked({})).toEqual([
      ['front', 'inside face: groove 5 mm wide, 5 mm deep, 11 mm above the lower edge'],
      ['side', 'inside face: groove 5 mm wide, 5 mm deep, 11 mm above the lower edge'],
      ['back'],
      ['bottom'],
    ]);
    expect(worked({ lip: { sides: 6, top: 5, bottom: 4 } })[0]).toEqual([
      'front',
      'inside face: rebate 15 mm deep, 6.5 mm wide at both ends, 6 mm at the upper edge, 4 mm at the lower edge',
      'inside face: groove 5 mm wide, 5 mm deep, 15 mm above the lower edge',
    ]);
    expect(worked({ bottom: { kind: 'panel', slack: 0.5, hold: slips } })).toEqual([
      ['front', 'inside face: groove 5 mm wide, 5 mm deep, 11 mm above the lower edge'],
      ['side'],
      ['back'],
      ['bottom'],
      ['slip', 'inside face: groove 5 mm wide, 5 mm deep, 11 mm above the lower edge'],
    ]);
    expect(worked({ stock: { ...drawer().stock, bottom: { thickness: 8 } } })[3]).toEqual([
      'bottom',
      'underside: front and side edges thinned to 5 mm, 5 mm in from the edge',
    ]);
  });

  it('sums area and running length for each species and thickness', () => {
    const oneThickness = {
      ...drawer().stock,
      bottom: { thickness: 5, species: 'Ash, white' },
    };
    const list = rows(
      drawer({ stock: oneThickness }),
      inOpening(574, 190, 420, { name: 'Cloth', count: 2, stock: oneThickness }),
    );
    expect(stockTotals(list)).toEqual([
      {
        species: 'Cherry, black',
        thickness: 20,
        count: 3,
        length: 315 + 2 * 609,
        area: 315 * 75 + 2 * 609 * 189,
      },
      {
        species: 'Ash, white',
        thickness: 11,
        count: 2 + 1 + 2 * 3,
        length: 2 * 435 + 307 + 2 * (2 * 435 + 601),
        area: 2 * 435 * 75 + 307 * 55 + 2 * (2 * 435 * 189 + 601 * 169),
      },
      {
        species: 'Ash, white',
        thickness: 5,
        count: 3,
        length: 3 * 393,
        area: 393 * 266 + 2 * 393 * 560,
      },
    ]);
  });
});
