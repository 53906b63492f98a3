import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Drawing, Mark } from '../../../src/drawing/drawing.ts';
import type { PENS } from '../../../src/drawing/pens.ts';
import type { BoardView } from '../../../src/sheets/boards/boardView.ts';
import { drawBoard } from '../../../src/sheets/boards/drawBoard.ts';
import type { DefectKind } from '../../../src/stock/plank.ts';
import { plank, rectangle } from '../../stock/randomBoards.ts';
import { sheetFaults, textsOf, wordsOf } from '../sheetFaults.ts';
import { anyBoard, blank } from './anyBoard.ts';

const boxOf = (points: readonly (readonly [number, number])[]): Box => ({
  x0: Math.min(...points.map(([x]) => x)),
  y0: Math.min(...points.map(([, y]) => y)),
  x1: Math.max(...points.map(([x]) => x)),
  y1: Math.max(...points.map(([, y]) => y)),
});

const strokesOf = ({ marks }: Drawing, pen: keyof typeof PENS) =>
  marks.flatMap((mark) => (mark.kind === 'stroke' && mark.pen === pen ? mark.paths : []));

const fillsOf = (marks: readonly Mark[], tone: (tone: number) => boolean) =>
  marks.flatMap((mark) => (mark.kind === 'fill' && tone(mark.tone) ? mark.paths : []));

/** A board of 1000 x 200 with one front of 400 x 100, sawn by three cuts. */
const view = (turned = false, kinds: readonly DefectKind[] = []): BoardView => ({
  plank: plank(rectangle(0, 0, 1000, 200), {
    defects: kinds.map((kind, i) => ({ kind, outline: rectangle(500 + 100 * i, 40, 60, 50) })),
  }),
  kerf: 3,
  blanks: [blank(400, 100)],
  layout: {
    blanks: [
      { wanted: 0, turned, x: 25, y: 0, length: 400, width: 100, piece: 5, why: { kind: 'least waste' } },
    ],
    cuts: [
      { kind: 'crosscut', piece: 0, at: 22 },
      { kind: 'crosscut', piece: 2, at: 425 },
      { kind: 'rip', piece: 3, at: 100 },
    ],
    offcuts: [{ x: 428, y: 0, length: 547, width: 200 }],
  },
});

describe('the picture of a board', () => {
  it('has nothing small, nothing over anything else, and nothing outside it, whatever the board', () => {
    fc.assert(
      fc.property(anyBoard, fc.constantFrom(4, 8, 12, 20), fc.boolean(), (board, n, whole) => {
        const stretch = whole ? {} : { stretch: [300, 1100] as const };
        const { drawing, shown } = drawBoard(board, { scale: 1 / n, ...stretch });
        expect(sheetFaults(drawing)).toEqual([]);
        expect(
          [...shown.blanks].every((wanted) => board.layout.blanks.some((b) => b.wanted === wanted)),
        ).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('is to scale, saw cuts too', () => {
    const { drawing } = drawBoard(view(), { scale: 1 / 4 });
    const outline = boxOf(strokesOf(drawing, 'medium')[0]?.points ?? []);
    expect(outline).toEqual({ x0: 0, y0: 0, x1: 250, y1: 50 });
    const kerfs = fillsOf(drawing.marks, (tone) => tone > 0).map(({ points }) => boxOf(points));
    expect(kerfs).toEqual([
      { x0: 5.5, y0: 0, x1: 6.25, y1: 50 },
      { x0: 106.25, y0: 0, x1: 107, y1: 50 },
      { x0: 6.25, y0: 25, x1: 106.25, y1: 25.75 },
    ]);
  });

  it('letters the blank, numbers the cuts and says where its ends are', () => {
    const { drawing, shown } = drawBoard(view(), { scale: 1 / 4 });
    expect(textsOf(drawing).map(({ text }) => text)).toEqual(
      expect.arrayContaining([
        'E',
        '1',
        '2',
        '3',
        'Buttons front 1',
        'left end',
        'right end',
        'grain direction',
      ]),
    );
    expect([shown.blanks.size, shown.cuts.size]).toEqual([1, 3]);
  });

  it('has the reference edge of a turned blank at its upper side, and the joints at both ends', () => {
    const [edge, turned] = [view(), view(true)].map((each) => {
      const { drawing } = drawBoard(each, { scale: 1 / 4 });
      const joints = strokesOf(drawing, 'groove').map(({ points }) => boxOf(points).x0);
      // The joint and the clear wood beyond it reach 25 mm from either end.
      expect(joints.toSorted((a, b) => a - b)).toEqual([12.5, 100]);
      return boxOf(strokesOf(drawing, 'edge')[0]?.points ?? []).y0;
    });
    expect(edge).toBeLessThan(2);
    expect(turned).toBeGreaterThan(23);
    expect(turned).toBeLessThan(25);
  });

  it('marks the front end of a side: of a left one at the right, turned at the left', () => {
    const tips = (
      [
        [1, false],
        [2, false],
        [1, true],
      ] as const
    ).map(([index, turned]) => {
      const side = { ...view(turned), blanks: [blank(400, 100, { part: 'side', index })] };
      const [triangle] = fillsOf(drawBoard(side, { scale: 1 / 4 }).drawing.marks, (tone) => tone === 0);
      return triangle?.points[0]?.[0] ?? 0;
    });
    expect(tips[0]).toBeGreaterThan(105);
    expect(tips[1]).toBeLessThan(7);
    expect(tips[2]).toBeLessThan(7);
  });

  it('names every defect, and hatches no two kinds alike', () => {
    const kinds: readonly DefectKind[] = [
      ...(['sound knot', 'loose knot', 'check', 'shake', 'wane'] as const),
      ...(['sapwood', 'pith', 'wormhole', 'stain'] as const),
    ];
    const hatchings = kinds.map((kind) => {
      const { drawing } = drawBoard(view(false, [kind]), { scale: 1 / 4 });
      expect(wordsOf(drawing)).toContain(`a ${kind}`);
      const angles = strokesOf(drawing, 'hatch').map(({ points: [a, b] }) =>
        a && b ? Math.round((Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI) : 0,
      );
      return `${[...new Set(angles)].toSorted()} ${angles.length}`;
    });
    expect(new Set(hatchings).size).toBe(kinds.length);
  });

  it('shows no hatching beyond the board of a defect that hangs over its edge', () => {
    const board = view();
    const over = {
      ...board,
      plank: plank(
        [
          [0, 0],
          [1000, 0],
          [1000, 100],
          [0, 200],
        ],
        {
          defects: [{ kind: 'wane' as const, outline: rectangle(600, 80, 500, 200) }],
        },
      ),
    };
    const { drawing } = drawBoard(over, { scale: 1 / 4 });
    const hatching = strokesOf(drawing, 'hatch').flatMap(({ points }) => points);
    expect(hatching.length).toBeGreaterThan(4);
    for (const [x, y] of hatching) expect(y).toBeLessThanOrEqual(50 - x / 10 + 1e-6);
  });

  it('shows a stretch of a board alone, without the ends that it does not have', () => {
    const { drawing } = drawBoard(view(), { scale: 1 / 2, stretch: [0, 430] });
    expect(wordsOf(drawing)).toContain('left end');
    expect(wordsOf(drawing)).not.toContain('right end');
    expect(drawing.box.x1).toBeLessThan(216);
  });
});
