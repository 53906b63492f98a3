import { describe, expect, it } from 'vitest';
import { cornerSteps } from '../../src/wood/cornerSteps.ts';
import type { Wood } from '../../src/wood/species.ts';

const plum: Wood = { name: 'Plum', radial: 0.002, tangential: 0.003, source: 'own' };
const pear: Wood = { name: 'Pear', radial: 0.001, tangential: 0.0025, source: 'own' };
const front = { wood: plum, cut: 'flatsawn', thickness: 20 } as const;
const side = { wood: pear, cut: 'flatsawn', thickness: 10 } as const;

describe('cornerSteps', () => {
  it('lifts or sinks the edge of the side that moves otherwise than the front', () => {
    expect(cornerSteps(front, side, 100, 8, 12).topEdge).toBeCloseTo(100 * (0.0025 - 0.003) * 4, 12);
    expect(cornerSteps(side, front, 100, 8, 12).topEdge).toBeCloseTo(0.2, 12);
  });

  it('sinks the ends of tails and pins below the faces that swell round them', () => {
    const damp = cornerSteps(front, side, 100, 8, 12);
    expect(damp.tailEnds).toBeCloseTo(-20 * 0.002 * 4, 12);
    expect(damp.pinEnds).toBeCloseTo(-10 * 0.001 * 4, 12);
  });

  it('leaves the ends of tails and pins proud of faces that shrink', () => {
    const dry = cornerSteps(front, side, 100, 12, 8);
    expect(dry.tailEnds).toBeCloseTo(0.16, 12);
    expect(dry.pinEnds).toBeCloseTo(0.04, 12);
  });

  it('leaves the edges flush where both boards are of one wood and one cut', () => {
    expect(cornerSteps(front, { ...front, thickness: 11 }, 100, 8, 12).topEdge).toBe(0);
  });

  it('knows quartersawn boards, which move most through their thickness', () => {
    const quartered = cornerSteps(
      { ...front, cut: 'quartersawn' },
      { ...side, cut: 'quartersawn' },
      100,
      8,
      12,
    );
    expect(quartered.topEdge).toBeCloseTo(100 * (0.001 - 0.002) * 4, 12);
    expect(quartered.tailEnds).toBeCloseTo(-20 * 0.003 * 4, 12);
    expect(quartered.pinEnds).toBeCloseTo(-10 * 0.0025 * 4, 12);
  });
});
