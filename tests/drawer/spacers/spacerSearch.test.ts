import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countRanges, halfPinsFor } from '../../../src/drawer/spacers/countRanges.ts';
import { type Seeker, type SpacerAnswer, searchSpacers } from '../../../src/drawer/spacers/spacerSearch.ts';
import { exhaustive, type Front } from './exhaustive.ts';

const RUN = 7;
const DEPTH = 14;

const seekerOf = ({ width, pin, halfPin, band, origin }: Front): Seeker => ({
  origin,
  counts: countRanges(
    { width, pin, halfPin, depth: DEPTH, slope: { run: RUN } },
    // The groove keeps 1 mm to spare on either side.
    { offset: band[0] + 1, width: band[1] - band[0] - 2, depth: 5 },
    origin,
  ),
});

const anyFront = (origin: number) =>
  fc
    .record({
      width: fc.integer({ min: 500, max: 1400 }),
      lower: fc.integer({ min: 20, max: 90 }),
      upper: fc.integer({ min: 20, max: 90 }),
      pin: fc.constantFrom(5, 8.5),
      from: fc.integer({ min: 70, max: 140 }),
    })
    .map(
      ({ width, lower, upper, pin, from }): Front => ({
        width: width / 10,
        pin,
        halfPin: { lower: lower / 10, upper: upper / 10 },
        loss: DEPTH / RUN,
        band: [from / 10, from / 10 + 7],
        origin,
      }),
    );

const anySet = fc
  .constantFrom(12.7, 15, 18)
  .chain((origin) => fc.array(anyFront(origin), { minLength: 1, maxLength: 4 }));

const TARGET = { least: 14, most: 28 };
const search = (fronts: readonly Front[], spacers: number): SpacerAnswer | undefined =>
  searchSpacers({ seekers: fronts.map(seekerOf), kept: [], keptSpacers: [], target: TARGET, spacers });

describe('the search for few spacers', () => {
  it('finds what trying every count and every sharing of spacers finds', () => {
    let met = 0;
    let none = 0;
    fc.assert(
      fc.property(anySet, fc.integer({ min: 0, max: 3 }), (fronts, spacers) => {
        const found = search(fronts, spacers);
        const tried = exhaustive(fronts, TARGET, spacers);
        expect(found === undefined).toBe(tried === undefined);
        if (found === undefined || tried === undefined) {
          none++;
          return;
        }
        met++;
        expect(found.sum).toBeCloseTo(tried.sum, 7);
        expect(found.change).toBeCloseTo(tried.change, 4);
      }),
      { numRuns: 150 },
    );
    expect(Math.min(met, none)).toBeGreaterThan(10);
  });

  it('fills every width exactly, with half pins in their range and the groove in the lowest tail', () => {
    fc.assert(
      fc.property(anySet, fc.integer({ min: 1, max: 3 }), (fronts, spacers) => {
        const found = search(fronts, spacers);
        found?.layouts.forEach(({ tails, tip, halfPin: { lower, upper } }, i) => {
          const front = fronts[i];
          if (front === undefined) return;
          const { width, pin, halfPin, loss, band, origin } = front;
          expect(lower + upper + tails * tip + (tails - 1) * pin).toBeCloseTo(width, 9);
          for (const [now, wished] of [
            [lower, halfPin.lower],
            [upper, halfPin.upper],
          ] as const) {
            expect(now).toBeGreaterThanOrEqual(Math.max(1, wished / 2) - 1e-9);
            expect(now).toBeLessThanOrEqual(2 * wished + 1e-9);
          }
          expect(lower + loss).toBeLessThanOrEqual(band[0] + 1e-9);
          expect(lower + tip - loss).toBeGreaterThanOrEqual(band[1] - 1e-9);
          expect(tip).toBeGreaterThanOrEqual(origin - 1e-9);
        });
        const used = new Set(found?.layouts.map(({ tip }, i) => (tip - (fronts[i]?.origin ?? 0)).toFixed(6)));
        used.delete('0.000000');
        used.delete('-0.000000');
        expect(used.size).toBeLessThanOrEqual(spacers);
        if (found) expect(found.spacers).toBe(used.size);
      }),
      { numRuns: 300 },
    );
  });

  it('is no worse with a spacer more', () => {
    fc.assert(
      fc.property(anySet, (fronts) => {
        const sums = [0, 1, 2, 3].map((spacers) => search(fronts, spacers)?.sum ?? Number.POSITIVE_INFINITY);
        sums.slice(1).forEach((sum, i) => {
          if (Number.isFinite(sum)) expect(sum).toBeLessThanOrEqual((sums[i] ?? sum) + 1e-9);
        });
      }),
      { numRuns: 100 },
    );
  });

  it('lets others use the spacer of a drawer that keeps its layout, which counts', () => {
    // One tail of 60 - 2 h: with half pins of 5 to 20, 20 to 50; of 100 - 2 h, 60 to 90.
    const front = (width: number): Front => ({
      width,
      pin: 5,
      halfPin: { lower: 10, upper: 10 },
      loss: 2,
      band: [21, 22],
      origin: 15,
    });
    const ask = (keptSpacers: number[], spacers: number) => {
      const [seeker] = [seekerOf(front(60))].map(({ origin, counts }) => ({
        origin,
        counts: counts.filter(({ tails }) => tails === 1),
      }));
      return searchSpacers({
        seekers: seeker ? [seeker] : [],
        kept: [40],
        keptSpacers,
        target: { least: 40, most: 80 },
        spacers,
      });
    };
    expect(ask([25], 0)).toBeUndefined();
    expect(ask([25], 1)?.layouts[0]?.tip).toBeCloseTo(40, 9);
    expect(ask([21], 1)?.layouts[0]?.tip).toBeCloseTo(36, 9);
    expect(ask([21], 2)?.layouts[0]?.tip).toBeCloseTo(40, 9);
  });

  it('changes both half pins as little as the groove lets it', () => {
    // 40 - 22 leave 18: 9 each, but the groove asks for at most 10 - 2 below.
    const [range] = countRanges(
      { width: 40, pin: 5, halfPin: { lower: 10, upper: 10 }, depth: 14, slope: { run: 7 } },
      { offset: 11, width: 5, depth: 5 },
      12,
    );
    if (range === undefined) throw new Error('one tail fits');
    expect(halfPinsFor(range, 22)).toMatchObject({ lower: 8, upper: 10, change: 4 });
  });

  it('takes less than a second for three spacers and twelve drawers', () => {
    const fronts = Array.from(
      { length: 12 },
      (_, i): Front => ({
        width: 60 + ((i * 7919) % 190),
        pin: 8.5,
        halfPin: { lower: 6, upper: 6 },
        loss: 2,
        band: [10, 17],
        origin: 14,
      }),
    );
    const start = performance.now();
    expect(search(fronts, 3)).toBeDefined();
    expect(performance.now() - start).toBeLessThan(1000);
  });
});
