import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import type { FittingsWish } from '../../../src/drawer/fittings/fittingSpec.ts';
import { setFittings } from '../../../src/drawer/fittings/setFittings.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { NO_SPLITS } from '../../../src/paper/piece.ts';
import { splitToFit } from '../../../src/paper/split.ts';
import { drillingOf } from '../../../src/project/drillingOf.ts';
import { drawer, inOpening } from '../../drawer/chest.ts';
import { value } from '../../value.ts';
import { anySpec } from '../anyDrawer.ts';
import { faults } from '../faults.ts';
import { wordsOf } from '../sheetFaults.ts';

const A4 = { width: 189, height: 262 };

const piecesOf = (specs: readonly DrawerSpec[]) => {
  const set = layOutSet(specs);
  return set.ok ? drillingOf({ set: set.value, joints: [], units: 'mm' }) : [];
};

const fitted = (fittings: FittingsWish, spec = drawer()): DrawerSpec => ({ ...spec, fittings });

const anyWish: fc.Arbitrary<FittingsWish> = fc.record({
  pulls: fc.record({
    number: fc.constantFrom(1, 2),
    above: fc.constantFrom(0, 3, { share: 0.05 }, { share: 0.1 }),
    fromEnds: fc.constantFrom({ share: 0.25 }, { share: 0.3 }, 45),
    holes: fc.record({ diameter: fc.constantFrom(3, 5, 8), spacing: fc.constantFrom(0, 0, 32, 96) }),
  }),
  locks: fc.record({ number: fc.constantFrom(0, 0, 1) }),
});

describe('the templates to drill a front by', () => {
  it('are one from each end for two pulls, and one alone for a pull in the middle and for a short front', () => {
    const names = (fittings: FittingsWish, spec?: DrawerSpec) =>
      piecesOf([fitted(fittings, spec)]).map(({ name }) => name);
    expect(names({ pulls: {} })).toEqual(['buttons-front-drilling-left']);
    expect(names({ pulls: { number: 2 } })).toEqual([
      'buttons-front-drilling-left',
      'buttons-front-drilling-right',
    ]);
    expect(names({ pulls: { number: 2 } }, inOpening(160, 80, 300))).toEqual(['buttons-front-drilling-left']);
    expect(names({ locks: {} })).toEqual(['buttons-front-drilling-left']);
    expect(names({ stops: {} })).toEqual([]);
  });

  it('are drawn once for fronts that are equal, named for them all', () => {
    const [piece, ...others] = piecesOf([
      fitted({ pulls: {} }, drawer({ count: 2 })),
      fitted({ pulls: {} }, drawer({ name: 'Thread', count: 3 })),
    ]);
    expect(others).toEqual([]);
    expect([piece?.count, piece?.copies]).toEqual([5, 1]);
    expect(piece?.title).toBe('Buttons, Thread, front, drilling template, left end, corner A');
  });

  it('show a mirror image at the other end', () => {
    const [left, right] = piecesOf([fitted({ pulls: { number: 2, above: 4 } }, inOpening(575, 120, 420))]);
    const holes = (piece: typeof left) =>
      piece
        ?.draw(NO_SPLITS)
        .marks.flatMap((mark) => (mark.kind === 'stroke' && mark.role === 'hole' ? mark.paths : []))
        .filter(({ closed }) => closed === true)
        .map(({ points }) => points.reduce((sum, [x]) => sum + x, 0) / points.length);
    // The fold at the end is 12 mm from the outline, on the left of one and on the right of the other.
    expect(holes(left)?.map((x) => x - 12)).toEqual([expect.closeTo(143.5, 9)]);
    expect(holes(right)?.map((x) => (right?.width ?? 0) - 12 - x)).toEqual([expect.closeTo(143.5, 9)]);
  });

  it('show the groove, the sockets and the side behind the face', () => {
    const [piece] = piecesOf([fitted({ pulls: {} })]);
    const marks = piece?.draw(NO_SPLITS).marks ?? [];
    const fold = marks.flatMap((mark) => (mark.kind === 'stroke' && mark.role === 'fold' ? mark.paths : []));
    const [, lower = Number.NaN] = fold[0]?.points[0] ?? [];
    const ys = (role: string) =>
      marks
        .flatMap((mark) => (mark.kind === 'stroke' && mark.role === role ? mark.paths : []))
        .filter(({ points: [a, b] }) => a?.[1] === b?.[1])
        .map(({ points: [a] }) => Number(((a?.[1] ?? 0) - lower).toFixed(4)));
    expect(ys('groove')).toEqual([11, 16]);
    const set = value(layOutSet([drawer()]));
    const tips = set.drawers[0]?.front.tails.flatMap(({ tip }) => [...tip]) ?? [];
    expect(ys('square')).toEqual(tips.map((y) => Number(y.toFixed(4))));
    const words = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(words).toEqual(expect.arrayContaining(['groove', 'joint', 'pull']));
  });

  it('have labels that are legible and clear of lines, of each other and of the splits, on any front', () => {
    let tried = 0;
    fc.assert(
      fc.property(anySpec, anyWish, (spec, fittings) => {
        const specs = [{ ...spec, fittings }];
        const set = layOutSet(specs);
        if (!set.ok || !setFittings(set.value.drawers).ok) return;
        for (const piece of piecesOf(specs)) {
          tried += 1;
          expect([piece.name, ...faults(piece)]).toEqual([piece.name]);
          // Whatever is shortened, which face it is laid on is said.
          expect(wordsOf(piece.draw(NO_SPLITS))).toContain('OUTSIDE');
          const splits = splitToFit(piece, A4);
          expect(splits).toBeDefined();
          if (splits !== undefined) expect([piece.name, ...faults(piece, splits)]).toEqual([piece.name]);
        }
      }),
      { numRuns: 40 },
    );
    expect(tried).toBeGreaterThan(10);
  });
});
