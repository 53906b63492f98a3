import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Drawing } from '../../../src/drawing/drawing.ts';
import type { Block } from '../../../src/sheets/typeset/block.ts';
import { flow, type Group } from '../../../src/sheets/typeset/flow.ts';
import { isInside, overlaps } from '../../paper/ink.ts';

/** A block that is seen as a filled box; each has its own tone, to tell it by. */
const block = (height: number, width: number, tone: number): Block => ({
  height,
  marks: (left, top) => [
    {
      kind: 'fill',
      role: 'waste',
      tone,
      paths: [
        {
          points: [
            [left, top - height],
            [left + width, top],
          ],
          closed: true,
        },
      ],
    },
  ],
});

interface Placed extends Box {
  readonly tone: number;
}

const placed = ({ marks }: Drawing): Placed[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== 'fill') return [];
    const [a, b] = mark.paths[0]?.points ?? [];
    return a && b ? [{ tone: mark.tone, x0: a[0], y0: a[1], x1: b[0], y1: b[1] }] : [];
  });

const AREA = { width: 100, height: 200 };
const HEAD = [block(10, 100, 0), block(5, 100, 0)] as const;

describe('blocks on pages', () => {
  it('fill columns of like height, below the blocks as wide as the page', () => {
    const wide = [[block(20, 100, 1)]];
    const narrow = [2, 3, 4, 5].map((tone): Group => [block(30, 48, tone)]);
    const [page, ...more] = flow({ head: HEAD, wide, narrow, columns: 2, gap: 4 }, AREA).draw();
    expect(more).toEqual([]);
    expect(page && placed(page)).toEqual([
      { tone: 0, x0: 0, x1: 100, y0: 190, y1: 200 },
      { tone: 1, x0: 0, x1: 100, y0: 166, y1: 186 },
      { tone: 2, x0: 0, x1: 48, y0: 132, y1: 162 },
      { tone: 3, x0: 0, x1: 48, y0: 98, y1: 128 },
      { tone: 4, x0: 52, x1: 100, y0: 132, y1: 162 },
      { tone: 5, x0: 52, x1: 100, y0: 98, y1: 128 },
    ]);
  });

  it('continue on another page, under the later head', () => {
    const narrow = [1, 2, 3].map((tone): Group => [block(100, 100, tone)]);
    const pages = flow({ head: HEAD, wide: [], narrow, columns: 1, gap: 4 }, AREA).draw().map(placed);
    expect(pages.map((page) => page.map(({ tone }) => tone))).toEqual([
      [0, 1],
      [0, 2],
      [0, 3],
    ]);
    expect(pages[1]?.[0]?.y0).toBe(195);
  });

  it('keep a group together where a page can hold it, and divide it where none can', () => {
    const whole = [block(60, 100, 1), block(60, 100, 2)];
    const tall = [block(100, 100, 3), block(150, 100, 4)];
    const narrow = [[block(100, 100, 5)], whole, tall];
    const pages = flow({ head: HEAD, wide: [], narrow, columns: 1, gap: 4 }, AREA).draw().map(placed);
    expect(pages.map((page) => page.slice(1).map(({ tone }) => tone))).toEqual([[5], [1, 2], [3], [4]]);
  });

  it('change their order where only that fits them all on one page', () => {
    // 186 mm of room: 110 and 60 with their gap fill one column, 90 and 80 the other.
    const narrow = [110, 90, 80, 60].map((height, i): Group => [block(height, 48, i + 1)]);
    const [page, ...more] = flow({ head: HEAD, wide: [], narrow, columns: 2, gap: 4 }, AREA)
      .draw()
      .map(placed);
    expect(more).toEqual([]);
    expect(page?.slice(1).map(({ tone, x0, y1 }) => [tone, x0, y1])).toEqual([
      [1, 0, 186],
      [4, 0, 72],
      [2, 52, 186],
      [3, 52, 92],
    ]);
    // 94 and 90 with their gap are 2 mm too tall for one column: they go on in their order.
    const taller = [110, 94, 90, 60].map((height, i): Group => [block(height, 48, i + 1)]);
    const pages = flow({ head: HEAD, wide: [], narrow: taller, columns: 2, gap: 4 }, AREA).draw().map(placed);
    expect(pages.map((each) => each.slice(1).map(({ tone }) => tone))).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it('never overlap or exceed the page, are in order down each column, and none is lost', () => {
    const heights = fc.array(fc.array(fc.integer({ min: 1, max: 180 }), { minLength: 1, maxLength: 4 }), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(heights, heights, fc.integer({ min: 1, max: 3 }), (wideHeights, narrowHeights, columns) => {
        let tone = 0;
        const groups = (all: number[][], width: number) =>
          all.map((group) =>
            group.map((height) => {
              tone += 1;
              return block(height, width, tone);
            }),
          );
        const gap = 4;
        const wide = groups(wideHeights, AREA.width);
        const narrow = groups(narrowHeights, (AREA.width - (columns - 1) * gap) / columns);
        const pages = flow({ head: HEAD, wide, narrow, columns, gap }, AREA).draw().map(placed);
        const upTo = (tones: readonly number[]) => tones.toSorted((a, b) => a - b);
        const tones = pages.map((page) => page.flatMap((box) => (box.tone === 0 ? [] : [box.tone])));
        // Page after page; on the last one columns may be out of order.
        expect(tones.flatMap(upTo)).toEqual(Array.from({ length: tone }, (_, i) => i + 1));
        for (const page of pages)
          for (const { x0 } of page) {
            const column = page.filter((box) => box.tone > 0 && box.x0 === x0).map((box) => box.tone);
            expect(column).toEqual(upTo(column));
          }
        for (const page of pages)
          page.forEach((box, i) => {
            expect(isInside(box, { x0: 0, y0: 0, x1: AREA.width, y1: AREA.height })).toBe(true);
            expect(page.slice(i + 1).some((other) => overlaps(box, other))).toBe(false);
          });
      }),
    );
  });
});
