import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing, Role } from '../../src/drawing/drawing.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { NO_SPLITS } from '../../src/paper/piece.ts';
import { splitToFit, TAB } from '../../src/paper/split.ts';
import { drawPart, joinCount, partsOf, type Tile } from '../../src/paper/tile.ts';
import { fakePiece } from './fakePiece.ts';
import { inkBox, isInside, lengthOf, overlaps, segmentsOf } from './ink.ts';

const draw = (part: Tile): Drawing => drawPart(part, part.piece.draw(part.splits), 'mm');

const wordsOf = ({ marks }: Drawing): string[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

const linesOf = ({ marks }: Drawing, role: Role) =>
  marks.flatMap((mark) =>
    mark.kind === 'stroke' && mark.role === role ? mark.paths.flatMap(segmentsOf) : [],
  );

describe('a piece that is not split', () => {
  test('is one part, drawn as it is, with its overhang', () => {
    const piece = fakePiece({ width: 80, height: 90 });
    const [part, ...others] = partsOf(piece, NO_SPLITS, 0);
    expect(others).toEqual([]);
    expect(part?.room).toEqual({ x0: -3.2, y0: -3.2, x1: 83.2, y1: 93.2 });
    expect(part && draw(part)).toEqual(piece.draw(NO_SPLITS));
  });
});

describe('a piece split once', () => {
  const piece = fakePiece({ name: 'cloth', width: 80, height: 480 });
  const parts = partsOf(piece, { x: [], y: [231] }, 0);
  const drawings = parts.map((part) => draw(part));

  test('has a lower part with a tab and an upper part that ends at the line', () => {
    expect(parts.map(({ window }) => [window.y0, window.y1])).toEqual([
      [-3.2, 241],
      [231, 483.2],
    ]);
  });

  test('has the same letter on both sides, its title on each part, and the length to measure', () => {
    expect(drawings.map(wordsOf)).toEqual([
      ['cloth', 'join E', 'when taped: reference edge to upper edge 480 mm'],
      ['cloth', 'join E'],
    ]);
    const [lower] = drawings.map((drawing) =>
      drawing.marks.find((mark) => mark.kind === 'text' && mark.text === 'join E'),
    );
    expect(lower?.kind === 'text' && lower.at[1]).toBeLessThan(231);
  });

  test('has two register crosses on the line, in the same places on both parts', () => {
    const [lower, upper] = drawings.map((drawing) => linesOf(drawing, 'scale'));
    expect(lower).toEqual(upper);
    expect(lower?.map(([a, b]) => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2])).toEqual([
      [16, 231],
      [16, 231],
      [64, 231],
      [64, 231],
    ]);
  });

  test('is cut out along the line on the part that covers the tab, and beyond the tab on the other', () => {
    const level = drawings.map((drawing) =>
      linesOf(drawing, 'outline')
        .filter(([a, b]) => a[1] === b[1])
        .map(([a]) => a[1])
        .sort((a, b) => a - b),
    );
    expect(level).toEqual([
      [0, 231, 241],
      [231, 480],
    ]);
  });
});

test('letters begin after those of corners and continue through the set, from Z to AA', () => {
  const piece = fakePiece({ width: 80, height: 480 });
  const letters = partsOf(piece, { x: [], y: [111, 231, 351] }, 21).flatMap(({ tabbed }) =>
    tabbed.map(({ letter }) => letter),
  );
  expect(letters).toEqual(['Z', 'AA', 'AB']);
});

test('in a grid every join has a letter of its own, the same on the two parts that it joins', () => {
  const piece = fakePiece({ width: 230, height: 480, folds: [50, 115, 180] });
  const splits = { x: [115, 180], y: [171, 321] };
  const parts = partsOf(piece, splits, 0);
  const letters = (joins: 'tabbed' | 'covering') =>
    parts.flatMap((part) => part[joins].map(({ letter }) => letter)).sort();
  expect(parts.length).toBe(9);
  expect(joinCount(splits)).toBe(12);
  expect(letters('tabbed')).toEqual([...'EFGHIJKLMNOP']);
  expect(letters('covering')).toEqual(letters('tabbed'));
});

test('a tab is shorter in a short tail, so that it reaches no sloped line, but long enough to tape', () => {
  const tab = (interval: readonly [number, number], at: number) => {
    const piece = { ...fakePiece({ width: 80, height: 480 }), splittable: { x: [], y: [interval] } };
    return partsOf(piece, { x: [], y: [at] }, 0)[0]?.tabbed[0]?.tab;
  };
  expect(tab([223, 239], 231)).toBe(8);
  expect(tab([211, 251], 231)).toBe(TAB.most);
  expect(tab([229, 233], 231)).toBe(TAB.least);
});

test('where a part has no clear place, the length to measure is printed on its tab', () => {
  const bare = fakePiece({ name: '', width: 26, height: 480, pitch: 20 });
  const [lower] = partsOf(
    {
      ...bare,
      draw: (splits) => {
        const drawing = bare.draw(splits);
        const grid = Array.from({ length: 13 }, (_, i) => i * 2).map((x) => ({
          points: [
            [x, 0],
            [x, 480],
          ] as const,
        }));
        return {
          ...drawing,
          marks: [...drawing.marks, { kind: 'stroke', role: 'square', pen: 'saw', paths: grid }],
        };
      },
    },
    { x: [], y: [231] },
    0,
  );
  if (lower === undefined) throw new Error('no part');
  const check = draw(lower).marks.findLast((mark) => mark.kind === 'text');
  expect(check?.kind === 'text' && check.text).toBe('taped: 480 mm');
  expect(check?.kind === 'text' && textBox(check).y0).toBeGreaterThan(231);
});

const split = fc
  .record({
    width: fc.double({ min: 60, max: 260, noNaN: true }),
    height: fc.double({ min: 280, max: 900, noNaN: true }),
    pitch: fc.double({ min: 16, max: 60, noNaN: true }),
    overhang: fc.double({ min: 1, max: 4, noNaN: true }),
  })
  .map(({ width, height, pitch, overhang }) => {
    const piece = fakePiece({
      name: 'Buttons',
      width,
      height,
      pitch,
      overhang,
      folds: [width * 0.3, width * 0.55, width * 0.8],
    });
    return { piece, splits: splitToFit(piece, { width: 136, height: 190 }) };
  });

test('parts keep every line of the piece where it is: their cells together hold each exactly once', () => {
  fc.assert(
    fc.property(split, ({ piece, splits }) => {
      fc.pre(splits !== undefined && joinCount(splits) > 0);
      if (splits === undefined) return;
      const whole = piece.draw(splits);
      const parts = partsOf(piece, splits, 0).map((part) => ({ part, drawing: draw(part) }));
      for (const [a, b] of linesOf(whole, 'slope')) {
        // Sloped lines are never split upward, so each lies in one row of parts, cut at upright joins only.
        const held = parts.flatMap(({ part: { cell }, drawing }) => {
          const middleOf = ([p, q]: readonly [readonly [number, number], readonly [number, number]]) =>
            [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2] as const;
          const onLine = ([x, y]: readonly [number, number]) =>
            Math.abs((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) < 1e-7;
          return linesOf(drawing, 'slope')
            .filter(([p, q]) => onLine(p) && onLine(q))
            .filter((segment) => {
              const [, y] = middleOf(segment);
              return y >= cell.y0 && y <= cell.y1;
            })
            .map(([p, q]) => ({
              points: [
                [Math.max(p[0], cell.x0), p[1]],
                [Math.min(q[0], cell.x1), q[1]],
              ] as const,
            }))
            .map(({ points: [p, q] }) => Math.max(0, q[0] - p[0]));
        });
        expect(held.reduce((sum, length) => sum + length, 0)).toBeCloseTo(b[0] - a[0], 6);
      }
      const hatch = (drawing: Drawing) => lengthOf(linesOf(drawing, 'waste').map((points) => ({ points })));
      expect(parts.reduce((sum, { drawing }) => sum + hatch(drawing), 0)).toBeGreaterThanOrEqual(
        hatch(whole) - 1e-6,
      );
    }),
    { numRuns: 30 },
  );
});

test('parts stay inside their room, their words overlap nothing but waste, and every title is on one part', () => {
  fc.assert(
    fc.property(split, ({ piece, splits }) => {
      fc.pre(splits !== undefined && joinCount(splits) > 0);
      if (splits === undefined) return;
      const parts = partsOf(piece, splits, 0);
      const drawings = parts.map((part) => draw(part));
      const titles = drawings.flatMap(wordsOf).filter((text) => text === 'Buttons');
      expect(titles.length).toBe(splits.y.length + 1);
      drawings.forEach((drawing, i) => {
        const room = parts[i]?.room;
        expect(room !== undefined && isInside(inkBox(drawing.marks, IDENTITY), room)).toBe(true);
        const boxes = drawing.marks.filter((mark) => mark.kind === 'text').map(textBox);
        boxes.forEach((box, j) => {
          for (const other of boxes.slice(j + 1)) expect(overlaps(box, other)).toBe(false);
        });
      });
    }),
    { numRuns: 30 },
  );
});
