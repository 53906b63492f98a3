import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { sketchAxes } from '../../../src/sheets/bench/sketchAxes.ts';
import { typeSizes } from '../../../src/sheets/typeset/typeSizes.ts';
import { inOpening } from '../../drawer/chest.ts';
import { anyDrawer, made } from '../anyDrawer.ts';

const axesOf = (spec: DrawerSpec, scale: number) => {
  const found = made(spec);
  if (found === undefined) throw new Error('this drawer can be made');
  return { axes: sketchAxes(found.drawer, scale, typeSizes(1)), drawer: found.drawer };
};

describe('the axes of a sketch', () => {
  it('have one scale where that leaves room for the lettering', () => {
    const { axes } = axesOf(inOpening(574, 190, 420), 0.125);
    expect(axes.toScale).toBe(true);
    expect([axes.across(573), axes.back(408), axes.up(189)]).toEqual([573 / 8, 51, 189 / 8]);
    // 11 mm of a side, 20 mm of the front, and a lip beyond the front's end.
    expect([axes.across(11), axes.back(20), axes.across(-8)]).toEqual([1.375, 2.5, -1]);
  });

  it('show what would be too small for its lettering larger, and are not to scale then', () => {
    const { axes } = axesOf(inOpening(574, 60, 420), 0.05);
    expect(axes.toScale).toBe(false);
    expect(axes.up(59)).toBeGreaterThan(4);
  });

  it('are to scale or keep the order of outer sizes and of thicknesses, and then never show less than the scale', () => {
    fc.assert(
      fc.property(anyDrawer, fc.double({ min: 0.01, max: 0.6, noNaN: true }), ({ drawer }, scale) => {
        const { across, back, up, toScale } = sketchAxes(drawer, scale, typeSizes(1));
        const { width, depth, height, wall } = drawer.sizes;
        const { front, back: rear } = drawer.spec.stock;
        const outer = [
          [width, across(width)],
          [depth, back(depth)],
          [height, up(height)],
        ] as const;
        const boards = [
          [wall.left, across(wall.left)],
          [wall.right, across(width) - across(width - wall.right)],
          [front.thickness, back(front.thickness)],
          [rear.thickness, back(depth) - back(depth - rear.thickness)],
        ] as const;
        for (const [real, shown] of [...outer, ...boards])
          if (toScale) expect(shown).toBeCloseTo(scale * real, 6);
          else expect(shown).toBeGreaterThan(scale * real - 1e-9);
        for (const group of drawer.boards.slip === undefined ? [outer, boards] : [outer])
          for (const [real, shown] of group)
            for (const [other, otherShown] of group)
              if (real > other + 1e-6) expect(shown).toBeGreaterThan(otherShown);
      }),
    );
  });
});
