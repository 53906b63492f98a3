import fc from 'fast-check';
import { expect, it } from 'vitest';
import { scaleInto } from '../../../src/page/browser/letters.ts';

it('a drawing fits its room, and is never less than nothing, however little room there is', () => {
  const size = fc.record({
    width: fc.double({ min: 50, max: 5000, noNaN: true }),
    height: fc.double({ min: 50, max: 5000, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2560 }), size, (width, drawn) => {
      const scale = scaleInto({ width, height: 520 }, 10, drawn);
      expect(scale).toBeGreaterThan(0);
      if (width < 100) return;
      expect(drawn.width * scale + 20).toBeLessThanOrEqual(width + 1e-9);
      expect(drawn.height * scale + 20).toBeLessThanOrEqual(520 + 1e-9);
    }),
  );
  // A window of 390 px, in which the cabinet is hidden.
  expect(20 + 800 * scaleInto({ width: 0, height: 520 }, 10, { width: 600, height: 800 })).toBeGreaterThan(
    20,
  );
});
