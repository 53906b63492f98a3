import { describe, expect, it } from 'vitest';
import { gauges } from '../../../src/joint/gauges.ts';
import { routerCut } from '../../../src/router/passes/routerCut.ts';
import { CUTTER, cutOf, LAPPED, STRAIGHT, THROUGH } from '../example.ts';

const TAN = Math.tan((8 * Math.PI) / 180);

describe('a tail board that extends beyond the pin board', () => {
  it('has no passes in the half spaces there, and all others as they were', () => {
    const { joint, guided } = cutOf(THROUGH);
    const passes = (lower: boolean, upper: boolean) =>
      routerCut(joint, CUTTER, STRAIGHT, { lower, upper }).passes;
    expect(guided.passes).toHaveLength(4);
    expect(passes(false, false)).toEqual(guided.passes);
    expect(passes(true, false)).toEqual([[], ...guided.passes.slice(1)]);
    expect(passes(true, true)).toEqual([[], ...guided.passes.slice(1, -1), []]);
    // No pass that is left comes past the edges with its largest diameter.
    const centres = passes(true, true).flat();
    expect(Math.min(...centres)).toBeGreaterThan(12.7 / 2);
    expect(Math.max(...centres)).toBeLessThan(150 - 12.7 / 2);
  });
});

describe('routerCut', () => {
  it('clears as many spaces as there are pins, at the depth of the joint', () => {
    for (const spec of [LAPPED, THROUGH]) {
      const { joint, guided } = cutOf(spec);
      expect(guided.passes.length).toBe(joint.pins.length);
      expect(guided.depth).toBe(joint.depth);
    }
  });

  it('leaves half the diameter as a round in a lapped socket, and none in a through one', () => {
    expect(cutOf(LAPPED).guided.socketRadius).toBe(6.35);
    expect(cutOf(THROUGH).guided.socketRadius).toBe(0);
  });

  it('says the least pin at its depth', () => {
    expect(cutOf(LAPPED).guided.leastPin).toBeCloseTo(12.7 - 30 * TAN, 12);
    expect(cutOf(THROUGH).guided.leastPin).toBeCloseTo(12.7 - 32 * TAN, 12);
  });

  it('cuts lapped sockets with the same cutter, and through ones with a straight one as deep as the tail board', () => {
    const lapped = cutOf(LAPPED);
    expect(lapped.guided.pinCut).toMatchObject({ kind: 'round', socket: { length: 14 } });
    expect(lapped.guided.pinCut.passes.length).toBe(lapped.joint.tails.length);
    expect(cutOf(THROUGH).guided.pinCut).toMatchObject({ kind: 'straight', diameter: STRAIGHT, depth: 14 });
    const proud = cutOf({ ...THROUGH, proud: 0.5 });
    expect(proud.guided.pinCut).toMatchObject({ depth: gauges(proud.joint).pinBoardFace });
  });
});
