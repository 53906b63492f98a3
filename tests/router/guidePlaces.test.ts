import { describe, expect, it } from 'vitest';
import { flatten } from '../../src/drawing/outline.ts';
import { type GuideBoard, guideBoard } from '../../src/router/guide/guideBoard.ts';
import { value } from '../value.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from './example.ts';

const made = (cut: ReturnType<typeof cutOf>, board: 'tail' | 'pin', bush: number): GuideBoard =>
  value(guideBoard(cut.joint, CUTTER, cut.guided, board, bush));
/** The least and the greatest of both coordinates of its outline. */
const reach = ({ outline }: GuideBoard) => {
  const { points } = flatten(outline);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { x: [Math.min(...xs), Math.max(...xs)], y: [Math.min(...ys), Math.max(...ys)] };
};

describe('the guide for lapped tails', () => {
  const cut = cutOf(LAPPED);
  const guide = made(cut, 'tail', 16);
  const { passes } = cut.guided;

  it('reaches 50 mm behind its slots or 21 mm behind its fence, 3 mm beyond the cutter, and 30 mm beyond slots or work', () => {
    const { x, y } = reach(guide);
    // The slots end 2 mm behind the work with the bush's 8: -60. The fence's 40 mm and the strip of 21 ask for more.
    expect(x[0]).toBe(-40 - 21);
    // A bush of 17 mm needs as much behind it: -60.5; one of 20, -62.
    expect(reach(made(cut, 'tail', 17)).x[0]).toBe(-61);
    expect(reach(made(cut, 'tail', 20)).x[0]).toBe(-62);
    // The work is 14 thick, the cutter 6.35 from its centre.
    expect(x[1]).toBeCloseTo(14 + 6.35 + 3, 9);
    expect(y[0]).toBeCloseTo(Math.min(0, (passes[0]?.[0] ?? 0) - 8) - 30, 9);
    expect(y[1]).toBeCloseTo(Math.max(120, (passes.at(-1)?.at(-1) ?? 0) + 8) + 30, 9);
  });

  it('has its fence behind the work, and a strip for its facts behind the fence', () => {
    expect(guide.fence).toEqual([-40, 0]);
    expect(guide.work).toEqual([0, 14]);
    expect(guide.cutter).toEqual({ kind: 'dovetail', diameter: 12.7, depth: 15 });
  });

  it('has a centre line in each slot, from 3 mm behind it to 3 mm before its mouth', () => {
    expect(guide.centreLines).toEqual(
      passes.map((centres) => {
        const middle = ((centres[0] ?? 0) + (centres.at(-1) ?? 0)) / 2;
        return {
          points: [
            [-2 - 8 - 3, expect.closeTo(middle, 9)],
            [expect.closeTo(23.35 + 3, 9), expect.closeTo(middle, 9)],
          ],
        };
      }),
    );
  });
});

describe('the guide for lapped sockets', () => {
  const cut = cutOf(LAPPED);
  const guide = made(cut, 'pin', 16);
  const { pinCut } = cut.guided;
  const socket = pinCut.kind === 'round' ? pinCut.socket : undefined;

  it('has its fence before the work, the slots open through it', () => {
    expect(guide.fence).toEqual([0, 40]);
    expect(guide.work).toEqual([-(socket?.length ?? 0), 0]);
    expect(reach(guide).x[1]).toBe(40);
    // The cutter stops in the work, the bush 8 mm further, and 50 mm are left.
    expect(reach(guide).x[0]).toBeCloseTo(-(socket?.stop ?? 0) - 58, 9);
    expect(guide.cutter).toEqual({ kind: 'dovetail', diameter: 12.7, depth: 15 });
  });
});

describe('the guide for through pins', () => {
  const cut = cutOf(THROUGH);
  const guide = made(cut, 'pin', 11);
  const passes = cut.guided.pinCut.kind === 'straight' ? cut.guided.pinCut.passes : [];

  it('opens 3 mm beyond the straight cutter, behind it the fence', () => {
    expect(reach(guide).x[1]).toBe(16 + 4 + 3);
    expect(guide.fence).toEqual([-40, 0]);
    expect(guide.work).toEqual([0, 16]);
    expect(guide.cutter).toMatchObject({ kind: 'straight', diameter: 8 });
  });

  it('has three centre lines in each slot: its middle, and along either wall the way of a pass', () => {
    expect(guide.centreLines).toHaveLength(3 * passes.length);
    passes.forEach((slot, i) => {
      const [middle, lower, upper] = guide.centreLines.slice(3 * i, 3 * i + 3);
      const [first, last] = [slot[0], slot.at(-1)];
      const centre = ((first?.inside ?? 0) + (last?.inside ?? 0)) / 2;
      for (const [, y] of middle?.points ?? []) expect(y).toBeCloseTo(centre, 9);
      for (const [path, pass] of [
        [lower, first],
        [upper, last],
      ] as const) {
        const { inside = 0, outside = 0 } = pass ?? {};
        expect(path?.points).toHaveLength(2);
        // From the inside face, at 0, to the outside face, at 16, and on in the same line.
        for (const [x, y] of path?.points ?? [])
          expect(y).toBeCloseTo(inside + ((outside - inside) * x) / 16, 9);
        expect(path?.points[1]?.[0]).toBe(23 + 3);
      }
      expect(lower?.points[0]?.[0]).toBeLessThan(-5.5 - 3);
    });
  });

  it('ends where the passes along both walls meet, if that is within 2 mm of the work', () => {
    passes.forEach((slot, i) => {
      const [first, last] = [slot[0], slot.at(-1)];
      const gap = (last?.inside ?? 0) - (first?.inside ?? 0);
      const lean = ((last?.outside ?? 0) - (last?.inside ?? 0)) / 16;
      const [x = 0] = guide.centreLines[3 * i]?.points[0] ?? [];
      expect(x).toBeCloseTo(-Math.min(2, gap / 2 / lean) - 5.5 - 3, 9);
    });
  });
});

describe('a guide bush', () => {
  const cut = cutOf(LAPPED);

  it('may be as wide as the cutter that goes through it, no narrower', () => {
    expect(guideBoard(cut.joint, CUTTER, cut.guided, 'tail', 12.7).ok).toBe(true);
    expect(guideBoard(cut.joint, CUTTER, cut.guided, 'tail', 12.69).ok).toBe(false);
  });
});
