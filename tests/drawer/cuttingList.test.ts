import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cuttingList, partNames } from '../../src/drawer/cuttingList.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { parts } from '../../src/drawer/partsList.ts';
import { anySpec } from '../sheets/anyDrawer.ts';
import { value } from '../value.ts';
import { drawer, inOpening } from './chest.ts';

const SAW = { edge: 3, face: 1 };

describe('the cutting list', () => {
  const set = value(
    layOutSet([
      drawer({ count: 2 }),
      inOpening(280, 76, 420, { name: 'Thread' }),
      inOpening(574, 190, 420, { name: 'Cloth' }),
    ]),
  );
  const list = cuttingList(parts(set), SAW);

  it('has equal sizes of one stock together, the widest first, over the whole set', () => {
    expect(list.map(({ stock }) => stock)).toEqual(['front', 'side', 'back', 'bottom']);
    const [fronts, sides] = list;
    expect(fronts?.rows).toMatchObject([
      { count: 1, roughLength: 573 + 2 * 18, roughWidth: 189 + 6, parts: [{ drawer: 'Cloth', count: 1 }] },
      {
        count: 3,
        roughLength: 279 + 2 * 18,
        roughWidth: 75 + 6,
        parts: [
          { drawer: 'Buttons', part: 'front', count: 2 },
          { drawer: 'Thread', part: 'front', count: 1 },
        ],
      },
    ]);
    expect(fronts).toMatchObject({ species: 'Cherry, black', thickness: 20, roughThickness: 22, count: 4 });
    expect(sides?.rows.map(({ count }) => count)).toEqual([2, 6]);
  });

  it('counts the wood at its rough size', () => {
    const [fronts] = list;
    expect(fronts?.volume).toBeCloseTo((609 * 195 + 3 * 315 * 81) * 22, 6);
  });

  it('has slips among what is sawn for sides, of their own thickness', () => {
    const hold = { kind: 'slips', width: 10, height: 18 } as const;
    const slipped = value(layOutSet([drawer({ bottom: { kind: 'panel', slack: 0.5, hold } })]));
    const groups = cuttingList(parts(slipped), SAW);
    expect(groups.map((group) => [group.stock, partNames(group), group.roughThickness])).toEqual([
      ['front', 'fronts', 22],
      ['side', 'sides', 13],
      ['side', 'slips', 12],
      ['back', 'backs', 13],
      ['bottom', 'bottoms', 7],
    ]);
  });

  it('holds every part of any set once', () => {
    fc.assert(
      fc.property(fc.array(anySpec, { minLength: 1, maxLength: 3 }), (specs) => {
        const laid = layOutSet(specs.map((spec, i) => ({ ...spec, name: `Drawer ${i}` })));
        fc.pre(laid.ok);
        const all = parts(value(laid));
        const count = (rows: readonly { readonly count: number }[]) =>
          rows.reduce((sum, row) => sum + row.count, 0);
        const groups = cuttingList(all, SAW);
        const rows = groups.flatMap((group) => group.rows);
        expect(count(rows)).toBe(count(all));
        expect(count(groups)).toBe(count(all));
        for (const part of all)
          expect(
            rows.filter(
              (row) =>
                Math.abs(row.roughWidth - part.width - 6) < 0.001 &&
                Math.abs(row.roughLength - part.roughLength) < 0.001 &&
                row.parts.some((each) => each.drawer === part.drawer && each.part === part.part),
            ),
          ).toHaveLength(1);
      }),
      { numRuns: 50 },
    );
  });
});
