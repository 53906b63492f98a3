import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/joint/joint.ts';
import { layOut } from '../../../src/joint/layOut.ts';
import { type Cutter, leastPin } from '../../../src/router/limits/cutter.ts';
import { layOutForCutter } from '../../../src/router/limits/layOutForCutter.ts';
import { evenCentres, pastTheEdges, socketPasses, tailPasses } from '../../../src/router/passes/passes.ts';

const CUTTER: Cutter = { diameter: 12.7, angle: 8, length: 20 };
const TAN = Math.tan((8 * Math.PI) / 180);

const joint = (pin: number, lower: number, upper: number): Joint => {
  const laid = layOutForCutter(
    {
      kind: 'lapped',
      width: 200,
      tailBoard: 14,
      pinBoard: 20,
      lap: 5,
      pin,
      halfPin: { lower, upper },
      spacing: { kind: 'even', tails: 4 },
    },
    CUTTER,
  );
  if (!laid.ok) throw new Error(JSON.stringify(laid.complaints));
  return laid.value;
};

describe('evenCentres', () => {
  it('is one centre where there is no way to go, and evenly many where there is', () => {
    expect(evenCentres(5, 5, 2)).toEqual([5]);
    expect(evenCentres(0, 4, 2)).toEqual([0, 2, 4]);
    expect(evenCentres(0, 4.5, 2)).toEqual([0, 1.5, 3, 4.5]);
  });
});

describe('tailPasses', () => {
  it('clears each space of the least pin in one pass, at its middle', () => {
    const least = leastPin(CUTTER, 15);
    const even = joint(least, least, least);
    const passes = tailPasses(even, CUTTER);
    expect(passes.map((space) => space.length)).toEqual([1, 1, 1, 1, 1]);
    // The end spaces are cut from their inner side; the cutter reaches the board's edge there.
    expect(passes[0]?.[0]).toBeCloseTo(least / 2, 9);
    expect(passes[4]?.[0]).toBeCloseTo(200 - least / 2, 9);
    const [, second] = even.pins;
    expect(passes[1]?.[0]).toBeCloseTo(((second?.narrow[0] ?? 0) + (second?.narrow[1] ?? 0)) / 2, 9);
  });

  it("hangs over the board's edge in a narrow half space", () => {
    const [lower, , , , upper] = tailPasses(joint(9, 2, 3), CUTTER);
    // The half space is 2 + 15 tan 8° wide at the baseline, where the cutter's radius is 6.35.
    expect(lower).toEqual([expect.closeTo(2 + 15 * TAN - 6.35, 9)]);
    expect(upper).toEqual([expect.closeTo(200 - (3 + 15 * TAN - 6.35), 9)]);
  });

  it('touches both sides of every space, and overlaps from pass to pass at its narrowest', () => {
    const least = leastPin(CUTTER, 15);
    fc.assert(
      fc.property(
        fc.double({ min: 8.5, max: 29, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        (pin, lower, upper) => {
          const cut = joint(pin, lower, upper);
          tailPasses(cut, CUTTER).forEach((centres, i) => {
            const [from, to] = cut.pins[i]?.wide ?? [0, 0];
            const [first = 0, last = 0] = [centres[0], centres.at(-1)];
            // A single pass stands for two that are no more than two hundredths apart, a hundredth off each at most.
            const off = centres.length === 1 ? 0.01 + 1e-6 : 1e-9;
            if (i > 0) expect(Math.abs(first - (from + 6.35))).toBeLessThan(off);
            else expect(first - least / 2).toBeLessThan(off);
            if (i < 4) expect(Math.abs(last - (to - 6.35))).toBeLessThan(off);
            else expect(last + least / 2).toBeGreaterThan(200 - off);
            centres.slice(1).forEach((centre, k) => {
              expect(centre - (centres[k] ?? 0)).toBeLessThan(least);
            });
            // One pass fewer would not reach: it has one step less, and none is over nine tenths of the narrowest cut.
            if (centres.length > 1) expect(last - first).toBeGreaterThan((centres.length - 2) * 0.9 * least);
          });
        },
      ),
    );
  });
});

describe('a space hardly wider than the cutter', () => {
  const least = leastPin(CUTTER, 15);

  it('is cleared by one pass through its middle, and by two where that would leave more than a hundredth', () => {
    const passes = (pin: number) => tailPasses(joint(pin, 9, 9), CUTTER)[1];
    const { wide } = joint(least + 0.018, 9, 9).pins[1] ?? { wide: [0, 0] };
    expect(passes(least + 0.018)).toEqual([expect.closeTo((wide[0] + wide[1]) / 2, 9)]);
    expect(passes(least + 0.022)).toHaveLength(2);
  });
});

describe('socketPasses', () => {
  it('has no more passes than overlap by a tenth where the cutter is narrowest', () => {
    // Tips of (200 - 18 - 3 x 9) / 4 = 38.75: 26.05 to travel in steps of 0.9 x 8.484 = 7.635.
    expect(socketPasses(joint(9, 9, 9), CUTTER).map((centres) => centres.length)).toEqual([5, 5, 5, 5]);
  });

  it('keeps the largest diameter inside the tips of each tail, touching them', () => {
    const cut = joint(9, 9, 9);
    socketPasses(cut, CUTTER).forEach((centres, i) => {
      const [from, to] = cut.tails[i]?.tip ?? [0, 0];
      expect(centres[0]).toBeCloseTo(from + 6.35, 9);
      expect(centres.at(-1)).toBeCloseTo(to - 6.35, 9);
    });
  });
});

describe('how far a cutter runs past the edges', () => {
  it('is by what its half diameter exceeds the base of a half pin', () => {
    const slope = { run: 1 / Math.tan((8 * Math.PI) / 180) };
    const laid = layOut({
      kind: 'through',
      width: 55,
      tailBoard: 11,
      pinBoard: 11,
      slope,
      pin: 9.62,
      halfPin: { lower: 6, upper: 7 },
      spacing: { kind: 'even', tails: 1 },
    });
    if (!laid.ok) throw new Error('this corner can be cut');
    const { lower, upper } = pastTheEdges(laid.value, { diameter: 12.7, angle: 8, length: 20 });
    // At the base, 11 mm from the tips, a half pin is wider by 11 tan 8 degrees = 1.546 mm; the cutter is 12.7 mm wide there.
    expect(lower).toBeCloseTo(12.7 - 6 - 1.546, 3);
    expect(upper).toBeCloseTo(12.7 - 7 - 1.546, 3);
  });
});
