import { describe, expect, it } from 'vitest';
import { roundSocket } from '../../../src/router/passes/roundSocket.ts';
import { CUTTER, cutOf, LAPPED } from '../example.ts';

const AT_FACE = 6.35 - 15 * Math.tan((8 * Math.PI) / 180);

describe('roundSocket', () => {
  it('is as long as the tail board is thick, where it can be seen (common practice)', () => {
    const { length, stop } = roundSocket(cutOf(LAPPED).joint, CUTTER);
    expect(length).toBe(14);
    expect(stop).toBeCloseTo(14 - AT_FACE, 12);
  });

  it('is shorter by what the tail board is to be proud', () => {
    expect(roundSocket(cutOf({ ...LAPPED, proud: 0.5 }).joint, CUTTER).length).toBe(13.5);
  });

  it("eases a quarter circle off the tails' base, and less off their tip, where the round is larger", () => {
    const { radius, ease } = roundSocket(cutOf(LAPPED).joint, CUTTER);
    expect(radius).toBe(6.35);
    expect(ease.fromFace).toBeCloseTo(AT_FACE, 12);
    expect(ease.atBase).toBeCloseTo(AT_FACE, 12);
    // Pythagoras: a circle of 6.35 is 6.35 - √(6.35² - 4.24²) short of its tangent, 4.24 along it.
    expect(ease.atTip).toBeCloseTo(6.35 - Math.sqrt(6.35 ** 2 - AT_FACE ** 2), 12);
    expect(ease.atTip).toBeLessThan(ease.atBase);
  });
});
