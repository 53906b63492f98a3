import { describe, expect, it } from 'vitest';
import { sizesOf } from '../../src/drawer/drawerSizes.ts';
import type { DrawerSpec, Fit } from '../../src/drawer/drawerSpec.ts';
import { gapsOf } from '../../src/drawer/gaps.ts';
import { drawer } from './chest.ts';
import { movement, moving, plum } from './year.ts';

const gaps = (spec: DrawerSpec) => gapsOf(spec, sizesOf(spec));

const fitted = (fit: Partial<Fit>, change: Partial<DrawerSpec> = {}): DrawerSpec =>
  moving({
    space: {
      kind: 'opening',
      opening: { width: 280, height: 76, depth: 420 },
      fit: { side: 0.5, top: 1, behind: 12, ...fit },
    },
    ...change,
  });

describe('the gaps round a drawer', () => {
  it('are those above the front and the sides, each by its own wood', () => {
    const found = gaps(moving());
    // A plum front of 75 gains 75 × 0.002 × 4 and loses 75 × 0.002 × 2; a pear side half as much again.
    expect(found?.front.gap.making).toBeCloseTo(1, 10);
    expect(found?.front.gap.driest).toBeCloseTo(1.3, 10);
    expect(found?.front.gap.dampest).toBeCloseTo(0.4, 10);
    expect(found?.side.gap.driest).toBeCloseTo(1.45, 10);
    expect(found?.side.gap.dampest).toBeCloseTo(0.1, 10);
  });

  it('are narrower beside the sides by what their thickness swells', () => {
    // A flatsawn side 11 thick moves radially: 11 × 0.0015 × 4 and × 2.
    const found = gaps(moving());
    expect(found?.beside.gap.making).toBeCloseTo(0.5, 10);
    expect(found?.beside.gap.dampest).toBeCloseTo(0.5 - 0.066, 10);
    expect(found?.beside.gap.driest).toBeCloseTo(0.5 + 0.033, 10);
  });

  it('count a proud side at the thickness that it is planed to', () => {
    const joint = { ...moving().joint, proud: 1 };
    expect(gaps(moving({ joint }))?.beside.gap.dampest).toBeCloseTo(0.5 - 10 * 0.0015 * 4, 10);
  });

  it('judge what sticks, and what shows above the front', () => {
    const verdicts = (top: number, change: Partial<DrawerSpec> = {}) => {
      const found = gaps(fitted({ top }, change));
      return [found?.front.verdict, found?.side.verdict, found?.beside.verdict];
    };
    expect(verdicts(1)).toEqual(['sticks', 'sticks', 'fits']);
    expect(verdicts(1.2)).toEqual(['fits', 'sticks', 'fits']);
    expect(verdicts(2)).toEqual(['fits', 'fits', 'fits']);
    expect(verdicts(2.9)).toEqual(['shows', 'fits', 'fits']);
    // Under a lip nobody sees the gap.
    expect(verdicts(2.9, { lip: { sides: 6, top: 6, bottom: 0 } })).toEqual(['fits', 'fits', 'fits']);
    expect(verdicts(2.9, { lip: { sides: 6, top: 0, bottom: 0 } })[0]).toBe('shows');
    expect(gaps(fitted({ top: 2, side: 0.15 }))?.beside.verdict).toBe('sticks');
  });

  it('need the larger of the gaps for front and sides, whatever has been left', () => {
    // The sides: 76 - h with h (1 + 0.003 × 4) = 75.5.
    expect(gaps(moving())?.leave).toBeCloseTo(76 - 75.5 / 1.012, 10);
    expect(gaps(fitted({ top: 5 }))?.leave).toBeCloseTo(76 - 75.5 / 1.012, 10);
    const calm = movement({ side: { wood: plum, cut: 'quartersawn' } });
    expect(gaps(moving({ movement: calm }))?.leave).toBeCloseTo(76 - 75.5 / 1.008, 10);
  });

  it('are not known without a climate, and not there without an opening', () => {
    expect(gaps(drawer())).toBeUndefined();
    expect(
      gaps(moving({ space: { kind: 'size', size: { width: 279, height: 75, depth: 408 } } })),
    ).toBeUndefined();
  });
});
