import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { accuracyText, finenessOf, proofAccuracy } from '../../src/paper/proofAccuracy.ts';
import { readProof } from '../../src/paper/readProof.ts';
import { value } from '../value.ts';

const nominal = { x: 150, y: 200, d1: 250, d2: 250 };

describe('the fineness of readings', () => {
  test.each([
    [['149.7', '200.1'], 'mm', 0.1],
    [['149', '200'], 'mm', 1],
    [['149.0', '200.0'], 'mm', 0.1],
    [['149.5', '200.0'], 'mm', 0.5],
    [['149.5', '200'], 'mm', 0.5],
    [['149,72', '200.1mm'], 'mm', 0.01],
    [['14.97cm', '20 cm'], 'mm', 0.1],
    [['6-47/64', '9'], 'in', 25.4 / 64],
    [['6 91/128"', '9in'], 'mm', 25.4 / 128],
    [['6 ¾', '9'], 'in', 25.4 / 4],
    [['6.74', '9.01 in.'], 'in', 0.254],
    [['6.735', '9.010in'], 'in', 0.127],
    [['171.3mm', '228'], 'in', 0.1],
  ] as const)('%s in %s is of %f mm', (readings, unit, wanted) => {
    expect(finenessOf(readings, unit)).toBeCloseTo(wanted, 9);
  });
});

/** Every way in which true lengths can lie half a mark from their readings. */
const extremes = [-1, 1].flatMap((a) =>
  [-1, 1].flatMap((b) => [-1, 1].flatMap((c) => [-1, 1].map((d) => [a, b, c, d] as const))),
);

describe('how true a corrected page is', () => {
  const share = fc.double({ min: 0.98, max: 1.02, noNaN: true });

  test('is the worst of all true lengths that give these readings', () => {
    const fineness = fc.constantFrom(0.05, 0.5, 1, 25.4 / 64, 25.4 / 32);
    const lean = fc.double({ min: -0.009, max: 0.009, noNaN: true });
    fc.assert(
      fc.property(share, share, lean, fineness, (across, up, skew, mark) => {
        const [x, y] = [150 * across, 200 * up];
        const measured = {
          x,
          y,
          d1: Math.sqrt(x * x + y * y + 2 * x * y * skew),
          d2: Math.sqrt(x * x + y * y - 2 * x * y * skew),
        };
        const said = proofAccuracy(nominal, measured, { sides: mark, diagonals: mark });
        const read = value(readProof(nominal, measured));
        const worst = { across: 0, up: 0, skew: 0 };
        for (const [a, b, c, d] of extremes) {
          const [tx, ty] = [x + (a * mark) / 2, y + (b * mark) / 2];
          const [t1, t2] = [measured.d1 + (c * mark) / 2, measured.d2 + (d * mark) / 2];
          // A length of 1 that is corrected, and then printed.
          worst.across = Math.max(worst.across, Math.abs(tx / 150 / read.x - 1));
          worst.up = Math.max(worst.up, Math.abs(ty / 200 / read.y - 1));
          worst.skew = Math.max(worst.skew, Math.abs((t1 * t1 - t2 * t2) / (4 * tx * ty) - read.skew));
        }
        expect(said.across).toBeCloseTo(worst.across, 9);
        expect(said.up).toBeCloseTo(worst.up, 9);
        expect(Math.abs((said.skew ?? 0) / worst.skew - 1)).toBeLessThan(0.01);
      }),
    );
  });

  test('holds for readings of a vernier that is printed with the error it measures', () => {
    fc.assert(
      fc.property(share, (error) => {
        const truly = 150 * error;
        // The mark k of the vernier is printed k times 1.1 mm before the end, and meets a mark of the rule.
        const [meets] = Array.from({ length: 10 }, (_, k) => {
          const place = truly - 1.1 * k * error;
          return { k, off: Math.abs(place - Math.round(place)) };
        }).sort((a, b) => a.off - b.off);
        const k = meets?.k ?? 0;
        const reading = Math.round(truly - 1.1 * k * error) + k + 0.1 * k;
        const { across } = proofAccuracy(nominal, { x: reading, y: 200 }, { sides: 0.1, diagonals: 0.1 });
        // The reading, not the true length, is what the bound is reckoned from: 9.9 mm of 150 mm more at most.
        expect(Math.abs(truly - reading) / reading).toBeLessThanOrEqual(across * (1 + 9.9 / 150) + 1e-9);
      }),
    );
  });

  test('is said over a length that one can think of, with a finer reading where there is one', () => {
    const said = (x: number, y: number, sides: number, unit: 'mm' | 'in') =>
      accuracyText(nominal, { x, y }, { sides, diagonals: 0.1 }, unit);
    // 200 mm times half of 0.1 mm in 150 mm, rounded up.
    expect(said(150, 200, 0.1, 'mm')).toBe(
      'Read to 0.1 mm, a corrected 200 mm is true within 0.07 mm across and 0.05 mm up. The skew was not measured.',
    );
    expect(said(150, 200, 0.5, 'mm')).toBe(
      'Read to 0.5 mm, a corrected 200 mm is true within 0.34 mm across and 0.25 mm up. The skew was not measured. The verniers on the proof sheet read to 0.1 mm: then it is true within 0.07 mm across and 0.05 mm up.',
    );
    // 8 in times 1/128 in in 150 mm (5.906 in), and in 200 mm.
    expect(said(150, 200, 25.4 / 64, 'in')).toMatch(
      /^Read to 1\/64", a corrected 8" is true within \.011" across and \.008" up\./u,
    );
  });
});
