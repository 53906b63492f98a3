import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NO_SPLITS, type Piece } from '../../../src/paper/piece.ts';
import { jointOf } from '../../joint/told.ts';
import { type KnownJoint, knownJoint } from '../anyCorner.ts';
import { cornerOf, everyPiece, textsOf, wordsOf } from '../pieces.ts';
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

  it("hatches the tail board's waste at both edges, and says so of either board", () => {
    fc.assert(
      fc.property(knownJoint, (known) => {
        const drawing = rodOf(known).draw(NO_SPLITS);
        const levels = (which: 'tip' | 'base') => known.tails.map((tail) => tail[which]);
        const isTail = (x: number, y: number): boolean =>
          levels(x < 13 ? 'tip' : 'base').some(([from, to]) => y > from + 1e-9 && y < to - 1e-9);
        const waste = segmentsOf(drawing, 'waste');
        expect(waste.length).toBeGreaterThan(0);
        for (const [[ax, ay], [bx, by]] of waste) {
          for (const x of [ax, bx]) expect(x <= 7 + 1e-9 || x >= 19 - 1e-9).toBe(true);
          expect(isTail((ax + bx) / 2, (ay + by) / 2)).toBe(false);
          expect(Math.max(ay, by)).toBeLessThan(known.width + 1e-9);
        }
        for (const { text, at } of textsOf(drawing)) {
          if (!/^(TAIL|WASTE)$/.test(text)) continue;
          expect([text, isTail(at[0], at[1])]).toEqual([text, text === 'TAIL']);
        }
        const words = wordsOf(drawing);
        expect(words.some((word) => word.startsWith('hatched: waste'))).toBe(true);
        const ofFront = /^(on the front the tails are waste|front: tails are waste)$/;
        expect(words.some((word) => ofFront.test(word))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("starts at the side's own reference edge where the joint starts above it, and says where the back lies", () => {
    const joint = jointOf({
      kind: 'through',
      width: 90,
      tailBoard: 11,
      pinBoard: 11,
      spacing: { kind: 'even', tails: 4 },
    });
    const plain = cornerOf(
      { joint },
      {
        tailBoard: { part: 'left side', end: 'back end', jointFrom: 16 },
        pinBoard: { part: 'back', end: 'left end' },
      },
    );
    const rod = everyPiece(plain, false).at(-1);
    const drawing = rod?.draw(NO_SPLITS) ?? { box: { x0: 0, y0: 0, x1: 0, y1: 0 }, marks: [] };
    const squares = segmentsOf(drawing, 'square').flat();
    // A mark at both edges where the joint starts, and two a tail at either.
    expect(squares.filter(([, y]) => Math.abs(y - 16) < 1e-9)).toHaveLength(4);
    expect(squares).toHaveLength(4 + 2 * 2 * 2 * 4);
    for (const [, y] of [...squares, ...segmentsOf(drawing, 'waste').flat()])
      expect(y).toBeGreaterThan(16 - 1e-9);
    const words = wordsOf(drawing);
    expect(words.some((word) => /^back starts (at the line )?16 mm above$/.test(word))).toBe(true);
    expect(words.filter((word) => word === 'NO TAIL')).toHaveLength(2);
    expect(words.filter((word) => /edge$/.test(word))).toEqual(['← reference edge']);
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
