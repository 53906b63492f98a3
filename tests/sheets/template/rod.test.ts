import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NO_SPLITS, type Piece } from '../../../src/paper/piece.ts';
import { type KnownJoint, knownJoint } from '../anyCorner.ts';
import { cornerOf, everyPiece, wordsOf } from '../pieces.ts';
import { differences, type Segment, segmentsOf } from '../segments.ts';

const rodOf = (known: KnownJoint): Piece => {
  const rod = everyPiece(cornerOf(known), false).at(-1);
  if (rod === undefined) throw new Error('no rod');
  return rod;
};

describe('a rod', () => {
  it("has the tails' tips at its left edge and their bases at its right, at full size", () => {
    fc.assert(
      fc.property(knownJoint, (known) => {
        const rod = rodOf(known);
        const marks = known.tails.flatMap(({ tip, base }): Segment[] => [
          ...tip.map(
            (u): Segment => [
              [0, u],
              [7, u],
            ],
          ),
          ...base.map(
            (u): Segment => [
              [19, u],
              [26, u],
            ],
          ),
        ]);
        const drawing = rod.draw(NO_SPLITS);
        expect(differences(segmentsOf(drawing, 'square'), marks)).toEqual([]);
        const edge: Segment = [
          [0, 0],
          [26, 0],
        ];
        expect(differences(segmentsOf(drawing, 'outline', 'edge'), [edge])).toEqual([]);
        expect(rod.width).toBe(26);
        expect(rod.height).toBeGreaterThanOrEqual(known.width);
      }),
      { numRuns: 60 },
    );
  });

  it('names both edges, beside their marks where there is room, or else in its lettering', () => {
    let small = 0;
    fc.assert(
      fc.property(knownJoint, (known) => {
        const words = wordsOf(rodOf(known).draw(NO_SPLITS)).filter((word) => /TIPS|BASES/.test(word));
        const beside = ['TIPS', 'BASES'];
        // The lettering runs upward, so the left edge is above it and the right one below.
        const among = ['↑ TIPS', '↓ BASES'];
        small += words[0] === among[0] ? 1 : 0;
        expect([beside, among]).toContainEqual(words);
      }),
      { numRuns: 60 },
    );
    expect(small).toBeGreaterThan(0);
  });

  it('names its edges on every part that it is split into', () => {
    const wide = knownJoint.filter(({ tails }) => tails.every(({ base: [from, to] }) => to - from > 35));
    fc.assert(
      fc.property(wide, (known) => {
        const [[from, to] = [0, 0]] = known.tails.map(({ base }) => base);
        const y = (from + to) / 2;
        const words = wordsOf(rodOf(known).draw({ x: [], y: [y] }));
        expect(words.filter((word) => word === 'TIPS')).toHaveLength(2);
        expect(words.filter((word) => word === 'BASES')).toHaveLength(2);
      }),
      { numRuns: 20 },
    );
  });
});
