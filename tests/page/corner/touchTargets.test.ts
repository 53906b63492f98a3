import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  lineTarget,
  spacerTarget,
  type Target,
  uprightTarget,
} from '../../../src/page/corner/touchTargets.ts';

const overlap = (a: Target, b: Target): boolean =>
  a.x0 < b.x1 - 1e-9 && b.x0 < a.x1 - 1e-9 && a.top < b.bottom - 1e-9 && b.top < a.bottom - 1e-9;

describe('where a finger takes hold', () => {
  it('is 44 px wide and high where lines are far apart', () => {
    expect(lineTarget([300, 200, 100], 1, 50, 0)).toEqual({ x0: 50, x1: 94, top: 178, bottom: 222 });
    expect(lineTarget([300, 200, 100], 2, 50, 0)).toEqual({ x0: 6, x1: 50, top: 78, bottom: 122 });
  });

  it('stands aside of the next line, and halves the way to the next but one', () => {
    const lines = [300, 284, 270];
    expect(lineTarget(lines, 0, 50, 0)).toEqual({ x0: 6, x1: 50, top: 285, bottom: 322 });
    expect(lineTarget(lines, 1, 50, 0)).toEqual({ x0: 50, x1: 94, top: 262, bottom: 306 });
  });

  it('has no height less than nothing where its line is higher than it may reach', () => {
    expect(lineTarget([300, 200, 100], 2, 50, 150)).toEqual({ x0: 6, x1: 50, top: 150, bottom: 150 });
  });

  it('lies over the edge at which a spacer is, or as near to it as its neighbours at either hand let it', () => {
    const anywhere = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
    expect(spacerTarget(100, 50, anywhere)).toEqual({ x0: 78, x1: 122, top: 28, bottom: 72 });
    expect(spacerTarget(100, 50, { ...anywhere, to: 110 })).toEqual({ x0: 66, x1: 110, top: 28, bottom: 72 });
    expect(spacerTarget(100, 50, { from: 80, to: 110 })).toEqual({ x0: 80, x1: 110, top: 28, bottom: 72 });
  });

  it('never overlaps, contains its line, and is 24 px high where four lines leave so much', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 6, max: 80, noNaN: true }), { minLength: 2, maxLength: 40 }),
        (steps) => {
          let y = 2000;
          const lines = steps.map((step) => {
            y -= step;
            return y;
          });
          const targets = lines.map((_, i) => lineTarget(lines, i, 100, -1000));
          targets.forEach((target, i) => {
            const line = lines[i] ?? 0;
            expect(target.top).toBeLessThan(line);
            expect(target.bottom).toBeGreaterThan(line);
            expect(target.x1 - target.x0).toBe(44);
            // Four steps are 24 px at least.
            expect(target.bottom - target.top).toBeGreaterThanOrEqual(24 - 1e-9);
            for (const other of targets.slice(i + 1)) expect(overlap(target, other)).toBe(false);
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is shared between uprights that are near each other', () => {
    expect(uprightTarget(100, [100, 130, 400], 60)).toEqual({ x0: 78, x1: 115, top: 16, bottom: 60 });
    expect(uprightTarget(130, [100, 130, 400], 60)).toEqual({ x0: 115, x1: 152, top: 16, bottom: 60 });
  });
});
