import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../src/drawing/drawing.ts';
import { textBox } from '../../../src/drawing/textBox.ts';
import type { JointBoard } from '../../../src/joint/joint.ts';
import { NO_SPLITS } from '../../../src/paper/piece.ts';
import { jointsOf, shoulderedSpec } from '../../joint/anySpec.ts';
import { jointOf } from '../../joint/told.ts';
import { knownJoint } from '../anyCorner.ts';
import { expectedBands } from '../expectedLines.ts';
import { cornerOf, grooved, pieceOf, textsOf } from '../pieces.ts';

const told = (piece: ReturnType<typeof pieceOf>, splits = NO_SPLITS) =>
  textsOf(piece.draw(splits)).filter(({ text }) => text === 'WASTE');

const isIn = (area: readonly Point[], [x, y]: Point): boolean => {
  const sides = area.map(([ax, ay], i) => {
    const [bx, by] = area[(i + 1) % area.length] ?? [ax, ay];
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  });
  return sides.every((side) => side > 0) || sides.every((side) => side < 0);
};

describe('the word on waste', () => {
  it('is wholly on wood that is cut away from a face, once on each face at most', () => {
    let found = 0;
    fc.assert(
      fc.property(
        knownJoint,
        fc.constantFrom<JointBoard>('tail', 'pin'),
        fc.constantFrom('left' as const, 'right' as const),
        (known, board, hand) => {
          const piece = pieceOf(cornerOf(known, { hand }), board);
          const bands = expectedBands(known, board, hand);
          const whole = bands.reduce((sum, { width }) => sum + width, 0);
          // A tag lies left of the board, but where an end is leftmost.
          let x = bands[0]?.name === 'end' ? 0 : piece.width - whole;
          const areas = bands.map(({ name, width, waste }) => {
            const left = x;
            x += width;
            return name === 'end' ? [] : waste.map((area) => area.map(([u, y]): Point => [left + u, y]));
          });
          const words = told(piece);
          found += words.length;
          const on = words.map((word) => {
            const { x0, y0, x1, y1 } = textBox(word);
            const corners: Point[] = [
              [x0, y0],
              [x1, y0],
              [x1, y1],
              [x0, y1],
            ];
            return areas.findIndex((each) =>
              each.some((area) => corners.every((corner) => isIn(area, corner))),
            );
          });
          expect(on).not.toContain(-1);
          expect(new Set(on).size).toBe(on.length);
        },
      ),
    );
    expect(found).toBeGreaterThan(0);
  });

  it('is never on a tail, also where shoulders are mitred and tails are cut back by the lap', () => {
    let found = 0;
    fc.assert(
      fc.property(jointsOf(shoulderedSpec), (joint) => {
        for (const { text, at } of textsOf(pieceOf(cornerOf({ joint }), 'tail').draw(NO_SPLITS))) {
          if (text !== 'WASTE') continue;
          found++;
          expect(joint.tails.some(({ base: [from, to] }) => at[1] > from && at[1] < to)).toBe(false);
        }
      }),
    );
    expect(found).toBeGreaterThan(0);
  });

  const lapped = (width: number, tails: number) =>
    jointOf({
      kind: 'lapped',
      width,
      tailBoard: 11,
      pinBoard: 20,
      lap: 5,
      spacing: { kind: 'even', tails },
    });

  it('is in the middle socket where there is room, and nowhere where there is none', () => {
    const [word, ...more] = told(pieceOf(cornerOf({ joint: lapped(96, 3) }), 'pin'));
    expect(more).toEqual([]);
    expect(word?.turn).toBe(90);
    expect(word?.at[1]).toBeCloseTo(48, 9);
    expect(told(pieceOf(cornerOf({ joint: lapped(96, 7) }), 'pin'))).toEqual([]);
  });

  it('is clear of a groove, and repeated on every part', () => {
    const joint = lapped(96, 1);
    expect(told(pieceOf(cornerOf({ joint }), 'pin'))).toHaveLength(1);
    expect(told(pieceOf(grooved(cornerOf({ joint }), { offset: 45, width: 5 }), 'pin'))).toEqual([]);
    const long = pieceOf(cornerOf({ joint: lapped(200, 5) }), 'pin');
    const [, , [from, to] = [0, 0]] = long.splittable.y;
    expect(told(long, { x: [], y: [(from + to) / 2] })).toHaveLength(2);
  });
});
