import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fingersMoved, type PairsOnBar, settingOrder } from '../../../src/router/fingers/settingOrder.ts';

const pairs = (...edges: readonly (readonly [number, number])[]): PairsOnBar =>
  edges.map(([from, to]) => ({ from, to }));

describe('fingersMoved', () => {
  it('counts every finger that changes its place, and two for each pair more or fewer', () => {
    const before = pairs([10, 30], [50, 70]);
    expect(fingersMoved(before, before)).toEqual({ fingers: 0, distance: 0 });
    // One finger by 2, another by 1; then a pair more.
    expect(fingersMoved(before, pairs([10, 32], [49, 70]))).toEqual({ fingers: 2, distance: 3 });
    expect(fingersMoved(before, pairs([10, 30], [50, 70], [90, 110]))).toEqual({ fingers: 2, distance: 0 });
    expect(fingersMoved(before, [])).toEqual({ fingers: 4, distance: 0 });
  });
});

/** Few places, so that many fingers stay where they are. */
const anySetting: fc.Arbitrary<PairsOnBar> = fc
  .array(fc.record({ from: fc.integer({ min: 0, max: 2 }), to: fc.integer({ min: 5, max: 7 }) }), {
    maxLength: 4,
  })
  .map((all) => all.map(({ from, to }, i) => ({ from: from + 10 * i, to: to + 10 * i })));

const everyOrder = (places: readonly number[]): number[][] =>
  places.length === 0
    ? [[]]
    : places.flatMap((place) =>
        everyOrder(places.filter((other) => other !== place)).map((rest) => [place, ...rest]),
      );

/** Fingers and mm moved over settings in an order, from what is on the bar before. */
const moved = (settings: readonly PairsOnBar[], order: readonly number[], start: PairsOnBar) => {
  let [before, fingers, distance] = [start, 0, 0];
  for (const place of order) {
    const after = settings[place] ?? [];
    const move = fingersMoved(before, after);
    [before, fingers, distance] = [after, fingers + move.fingers, distance + move.distance];
  }
  return { fingers, distance };
};

describe('settingOrder', () => {
  it('moves the fewest fingers of all orders, and of those the least', () => {
    fc.assert(
      fc.property(fc.array(anySetting, { maxLength: 5 }), anySetting, (settings, start) => {
        const order = settingOrder(settings, start);
        expect(order.toSorted((a, b) => a - b)).toEqual(settings.map((_, i) => i));
        const own = moved(settings, order, start);
        for (const other of everyOrder(settings.map((_, i) => i))) {
          const { fingers, distance } = moved(settings, other, start);
          expect(fingers).toBeGreaterThanOrEqual(own.fingers);
          if (fingers === own.fingers) expect(distance).toBeGreaterThanOrEqual(own.distance);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('goes from each of very many settings to the nearest that is left', () => {
    const far = Array.from({ length: 14 }, (_, i) => pairs([10 + ((i * 5) % 14), 30 + ((i * 5) % 14)]));
    const places = settingOrder(far, far[0]).map((place) => far[place]?.[0]?.from);
    expect(places).toEqual(Array.from({ length: 14 }, (_, i) => 10 + i));
  });
});
