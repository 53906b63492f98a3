import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardSizes, fittedInto, resized } from '../../../../src/page/model/boards/boardShape.ts';
import { moved } from '../../../../src/page/model/boards/heldBoard.ts';
import type { Plank } from '../../../../src/stock/plank.ts';
import { extentsOf, rectangle } from '../../../../src/stock/polygon.ts';

const plank: Plank = {
  name: 'Ash 1',
  copy: 1,
  stocks: ['side'],
  thickness: 16,
  outline: [
    [0, 0],
    [2000, 0],
    [2000, 210],
    [0, 190],
  ],
  defects: [
    { kind: 'check', outline: rectangle({ x0: 0, y0: 0, x1: 80, y1: 210 }) },
    { kind: 'check', outline: rectangle({ x0: 1900, y0: 0, x1: 2000, y1: 210 }) },
    { kind: 'loose knot', outline: rectangle({ x0: 300, y0: 50, x1: 340, y1: 80 }) },
  ],
  clean: { left: false, right: false },
  keep: false,
};

describe('what is held of a board', () => {
  it('is its length at the right end, and both widths at the upper edge, to whole mm', () => {
    expect(moved(plank, 'length', [-99.7, 40], 'mm')).toEqual({
      is: 'sizes',
      sizes: { length: 1900, left: 190, right: 210 },
    });
    expect(moved(plank, 'width', [40, -10.2], 'mm')).toEqual({
      is: 'sizes',
      sizes: { length: 2000, left: 180, right: 200 },
    });
  });

  it('moves by sixteenths of an inch where the plan is in inches', () => {
    const held = moved(plank, 'length', [1.5, 0], 'in');
    const length = held?.is === 'sizes' ? held.sizes.length : 0;
    expect((length / 25.4) * 16).toBeCloseTo(Math.round((2001.5 / 25.4) * 16), 9);
  });

  it('stays a board however far it is dragged', () => {
    for (const [grip, by] of [
      ['length', [-1e6, 0]],
      ['length', [1e6, 0]],
      ['width', [0, -1e6]],
      ['width', [0, 1e6]],
    ] as const) {
      const held = moved(plank, grip, by, 'mm');
      const { length, left, right } = held?.is === 'sizes' ? held.sizes : { length: 0, left: 0, right: 0 };
      expect(length).toBeGreaterThanOrEqual(20);
      expect(length).toBeLessThanOrEqual(20_000);
      expect(Math.min(left, right)).toBeGreaterThanOrEqual(10);
      expect(Math.max(left, right)).toBeLessThanOrEqual(5000);
    }
  });

  it('is how far a check reaches from its end, and the place of any other defect', () => {
    const box = (defect: number, by: readonly [number, number]) => {
      const held = moved(plank, `defect ${defect}`, by, 'mm');
      return held?.is === 'defect' ? held.box : undefined;
    };
    expect(box(0, [20, 70])).toEqual({ x0: 0, y0: 0, x1: 100, y1: 210 });
    expect(box(1, [20, 70])).toEqual({ x0: 1920, y0: 0, x1: 2000, y1: 210 });
    expect(box(2, [20, -10])).toEqual({ x0: 320, y0: 40, x1: 360, y1: 70 });
    // Its middle stays on the board.
    expect(box(2, [-5000, 5000])).toEqual({ x0: -20, y0: 195, x1: 20, y1: 225 });
    expect(moved(plank, 'defect 9', [1, 1], 'mm')).toBeUndefined();
  });

  it('is a rectangle on the board where a defect is drawn, from any corner to any other', () => {
    const anywhere = fc.tuple(
      fc.double({ min: -500, max: 2500, noNaN: true }),
      fc.double({ min: -90, max: 300, noNaN: true }),
    );
    fc.assert(
      fc.property(anywhere, anywhere, (from, by) => {
        const held = moved(plank, 'drawing', by, 'mm', from);
        if (held?.is !== 'drawn') throw new Error('nothing drawn');
        const { x0, y0, x1, y1 } = held.box;
        expect(Math.min(x0, y0)).toBeGreaterThanOrEqual(0);
        expect(x1).toBeLessThanOrEqual(2000);
        expect(y1).toBeLessThanOrEqual(210);
        expect(Math.min(x1 - x0, y1 - y0)).toBeGreaterThanOrEqual(1);
      }),
    );
    const there = moved(plank, 'drawing', [60, 40], 'mm', [100, 20]);
    expect(moved(plank, 'drawing', [-60, -40], 'mm', [160, 60])).toEqual(there);
  });
});

describe('the shape of a board', () => {
  const corner = fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 40 }));

  it('has the sizes that it is given, whatever its corners', () => {
    fc.assert(
      fc.property(
        corner,
        corner,
        corner,
        corner,
        fc.integer({ min: 700, max: 5000 }),
        fc.integer({ min: 90, max: 500 }),
        (a, b, c, d, length, width) => {
          const outline = [
            [a[0], a[1]],
            [2000 + b[0], b[1]],
            [2000 + c[0], 200 + c[1]],
            [d[0], 200 + d[1]],
          ] as const;
          const made = resized(outline, { length, left: width, right: width });
          const { x0, y0, x1, y1 } = extentsOf(made);
          expect(x1 - x0).toBeCloseTo(length, 6);
          const sizes = boardSizes(outline);
          if (sizes.left === sizes.right) expect(y1 - y0).toBeCloseTo(width, 6);
          expect(made[0]).toEqual(outline[0]);
        },
      ),
    );
  });

  it('fits into other extents as a whole', () => {
    const box = { x0: 5, y0: 6, x1: 105, y1: 26 };
    expect(extentsOf(fittedInto(plank.outline, box))).toEqual(box);
  });
});
