import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply, IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing } from '../../src/drawing/drawing.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { type Paper, parsePaper } from '../../src/paper/paperSizes.ts';
import type { Piece } from '../../src/paper/piece.ts';
import type { Size } from '../../src/paper/printable.ts';
import { type Layout, layPages, type Sheets } from '../../src/paper/sheets.ts';
import { speak } from '../../src/units/phrase.ts';
import { value } from '../value.ts';
import { fakePiece } from './fakePiece.ts';
import { inkBox, isInside, lengthOf, overlaps } from './ink.ts';

const paperOf = (text: string): Paper => value(parsePaper(text));

const layout = (pieces: readonly Piece[], more: Partial<Layout> = {}): Layout => ({
  planName: 'Haberdashery chest',
  unit: 'mm',
  paper: paperOf('A4'),
  margin: 6,
  leading: () => [],
  pieces,
  ...more,
});

const lay = (pieces: readonly Piece[], more: Partial<Layout> = {}): Sheets =>
  value(layPages(layout(pieces, more)));

const complaintsOf = (pieces: readonly Piece[], more: Partial<Layout> = {}): string[] => {
  const sheets = layPages(layout(pieces, more));
  if (sheets.ok) return [];
  return sheets.complaints.map(
    ({ at, says, hint = [] }) => `${at.join('.')}: ${speak(says, 'mm')} (${speak(hint, 'mm')})`,
  );
};

const chest = [
  fakePiece({ name: 'buttons-left', width: 86, height: 75 }),
  fakePiece({ name: 'buttons-right', width: 86, height: 75 }),
  fakePiece({ name: 'cloth-left', width: 86, height: 560 }),
];

const wordsOn = (page: PrintPage): string[] =>
  page.placed.flatMap(({ drawing }) =>
    drawing.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  );

describe('pages', () => {
  test('have a legend at their foot where there is one, and all else above it', () => {
    const legend = (width: number): Drawing => ({
      box: { x0: 0, y0: 0, x1: width, y1: 20 },
      marks: [
        {
          kind: 'stroke',
          role: 'label',
          pen: 'thin',
          paths: [
            {
              points: [
                [0, 10],
                [width, 10],
              ],
            },
          ],
        },
      ],
    });
    for (const paper of ['A4', '610xroll'].map(paperOf)) {
      const [plain] = [...lay(chest.slice(0, 2), { paper }).pages()];
      const [page] = [...lay(chest.slice(0, 2), { paper, legend }).pages()];
      const foot = page?.placed.find(({ drawing }) => drawing.box.y1 === 20);
      // Beside the upright bar, 5 mm within the margin of 6, over the two lines of 4 mm and the gap of 1.6.
      expect(foot && apply(foot.at, [0, 0])).toEqual([11, expect.closeTo(6 + 9.6, 9)]);
      expect(foot?.drawing.box.x1).toBeCloseTo(paper.width - 6 - 11, 9);
      for (const { drawing, at } of page?.placed.slice(0, 2) ?? [])
        expect(inkBox(drawing.marks, at).y0).toBeGreaterThan(6 + 9.6 + 20);
      // A roll's sheet is longer by it.
      expect((page?.height ?? 0) - (plain?.height ?? 0)).toBeCloseTo(paper.roll ? 20 : 0, 9);
    }
  });

  test('are counted before any is drawn, and each piece is found on its pages', () => {
    const drawn: string[] = [];
    const pieces = chest.map(
      (piece): Piece => ({
        ...piece,
        draw: (splits) => {
          drawn.push(piece.name);
          return piece.draw(splits);
        },
      }),
    );
    const sheets = lay(pieces);
    expect(sheets.count).toBe(2);
    expect([...sheets.pagesOf]).toEqual([
      ['buttons-left', [1]],
      ['buttons-right', [1]],
      ['cloth-left', [1, 2]],
    ]);
    expect(drawn).toEqual([]);
    const pages = [...sheets.pages()];
    expect(pages.map((page) => wordsOn(page).filter((text) => text.startsWith('page')))).toEqual([
      ['page 1 of 2 · A4 · print at 100 %'],
      ['page 2 of 2 · A4 · print at 100 %'],
    ]);
    pages.forEach((page, i) => {
      for (const [name, numbers] of sheets.pagesOf)
        expect(wordsOn(page).includes(name)).toBe(numbers.includes(i + 1));
    });
  });

  test('before the pieces are drawn for the area left to them, with the pages of every piece', () => {
    const blank = (width: number, height: number): Drawing => ({
      box: { x0: 0, y0: 0, x1: width, y1: height },
      marks: [],
    });
    const found: (readonly number[] | undefined)[] = [];
    const sheets = lay(chest, {
      leading: ({ width, height }) =>
        [2, 1].map((count) => ({
          count,
          draw: (pagesOf) => {
            found.push(pagesOf.get('cloth-left'));
            return Array.from({ length: count }, () => [{ drawing: blank(width, height), at: IDENTITY }]);
          },
        })),
    });
    expect(sheets.count).toBe(5);
    const pages = [...sheets.pages()];
    expect(pages.length).toBe(5);
    expect(found).toEqual([
      [4, 5],
      [4, 5],
    ]);
    const first = pages[0]?.placed[0];
    const corner = first && apply(first.at, [first.drawing.box.x1, first.drawing.box.y1]);
    expect(corner?.map((value) => Number(value.toFixed(6)))).toEqual([204, 291]);
  });

  test('of a roll are as wide as it is and as long as their pieces', () => {
    const [page, ...others] = [...lay(chest, { paper: paperOf('610xroll') }).pages()];
    expect(others).toEqual([]);
    expect(page?.width).toBe(610);
    expect(page?.height).toBeGreaterThan(170);
    expect(page?.height).toBeLessThan(290);
  });

  test('without pieces are those before the pieces alone', () => {
    expect(lay([]).count).toBe(0);
  });
});

describe('what does not fit the paper', () => {
  test('is named with the smallest known paper that would do, all at once', () => {
    const pieces = [
      fakePiece({ name: 'carcase', width: 280, height: 300 }),
      fakePiece({ name: 'buttons', width: 80, height: 90 }),
      fakePiece({ name: 'plinth', width: 400, height: 410 }),
    ];
    expect(complaintsOf(pieces)).toEqual([
      'paper: Fake carcase does not fit A4 and cannot be divided to fit (A3)',
      'paper: Fake plinth does not fit A4 and cannot be divided to fit (A2)',
    ]);
    expect(complaintsOf(pieces.slice(0, 1), { paper: paperOf('Letter') })[0]).toMatch(/\(Legal\)$/u);
  });

  test('a margin that no printer keeps is refused', () => {
    expect(complaintsOf(chest, { margin: 2 })).toEqual([
      'margin: the margin is 2 mm; it must be 5 mm to 20 mm (6 mm)',
    ]);
  });
});

describe('copies of pages', () => {
  /** Each fills more than half of a page, so none share one. */
  const large = (name: string, count: number) => fakePiece({ name, width: 180, height: 200, count });
  const small = (name: string, count: number) => fakePiece({ name, width: 80, height: 100, count });

  test('are drawn once each, and how often each is needed is told: as often as the most of its pieces', () => {
    const sheets = lay([large('a', 3), small('b', 2), small('c', 4)]);
    expect([...sheets.pages()]).toHaveLength(2);
    expect(sheets.copies).toEqual([3, 4]);
  });

  test('are repeated with their number where they are drawn as often as their pieces are made', () => {
    const sheets = lay([large('a', 3), large('b', 1)], { copies: 'made' });
    const feet = [...sheets.pages()].map((page) => wordsOn(page).find((text) => text.startsWith('page')));
    expect(feet).toEqual([
      'page 1 of 2, copy 1 of 3 · A4 · print at 100 %',
      'page 1 of 2, copy 2 of 3 · A4 · print at 100 %',
      'page 1 of 2, copy 3 of 3 · A4 · print at 100 %',
      'page 2 of 2 · A4 · print at 100 %',
    ]);
    expect(sheets.count).toBe(4);
    expect(sheets.copies).toEqual([3, 1]);
  });

  test('hold several of one piece where that saves paper', () => {
    const sheets = lay([small('a', 4), small('b', 1)], { copies: 'made' });
    const [first, ...others] = [...sheets.pages()].map(wordsOn);
    expect(others).toHaveLength(1);
    expect(first?.filter((text) => text === 'a')).toHaveLength(4);
    expect([...sheets.pagesOf]).toEqual([
      ['a', [1]],
      ['b', [2]],
    ]);
  });

  test('follow pages before the pieces, which are needed once', () => {
    const box = { x0: 0, y0: 0, x1: 10, y1: 10 };
    const told: (readonly number[])[] = [];
    const sheets = lay([large('a', 3), large('b', 1)], {
      leading: (_, needed) => {
        told.push(needed);
        return [{ count: 1, draw: () => [[{ drawing: { box, marks: [] }, at: IDENTITY }]] }];
      },
    });
    expect(sheets.copies).toEqual([1, 3, 1]);
    expect(told).toEqual([[3, 1]]);
  });

  test('hold every piece exactly as often as it is made, on sheets and on rolls', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            width: fc.double({ min: 30, max: 180, noNaN: true }),
            height: fc.double({ min: 40, max: 260, noNaN: true }),
            count: fc.oneof(fc.integer({ min: 1, max: 5 }), fc.constant(130)),
          }),
          { minLength: 1, maxLength: 10 },
        ),
        fc.constantFrom('A4', '610xroll').map(paperOf),
        (sizes, sheet) => {
          const pieces = sizes.map((size, i) => fakePiece({ ...size, name: `piece-${i}` }));
          const sheets = layPages(layout(pieces, { paper: sheet, copies: 'made' }));
          fc.pre(sheets.ok);
          if (!sheets.ok) return;
          const found = new Map<string, number>();
          let count = 0;
          for (const page of sheets.value.pages()) {
            count += 1;
            for (const word of wordsOn(page)) found.set(word, (found.get(word) ?? 0) + 1);
          }
          expect(count).toBe(sheets.value.count);
          for (const piece of pieces) expect(found.get(piece.name)).toBe(piece.count);
        },
      ),
      { numRuns: 15 },
    );
  });
});

const piecesOf = fc
  .array(
    fc.record({
      width: fc.double({ min: 30, max: 180, noNaN: true }),
      height: fc.double({ min: 40, max: 700, noNaN: true }),
      overhang: fc.double({ min: 0.2, max: 4, noNaN: true }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((sizes) => sizes.map((size, i) => fakePiece({ ...size, name: `piece-${i}`, pitch: 25 })));

const correction = fc.option(
  fc.record({
    x: fc.double({ min: 0.98, max: 1.02, noNaN: true }),
    y: fc.double({ min: 0.98, max: 1.02, noNaN: true }),
    skew: fc.double({ min: -0.005, max: 0.005, noNaN: true }),
  }),
);

const paper = fc.constantFrom('A5', 'A4', 'A3', 'Letter', '250x180', '610xroll').map(paperOf);

test('every piece is on paper whole and at full size, inside the margins, and no two things overlap', () => {
  fc.assert(
    fc.property(piecesOf, paper, correction, (pieces, sheet, error) => {
      const more = error === null ? {} : { correction: { printer: 'workshop', error } };
      const wish = layout(pieces, { paper: sheet, ...more });
      const sheets = layPages(wish);
      fc.pre(sheets.ok);
      if (!sheets.ok) return;
      const pages = [...sheets.value.pages()];
      expect(pages.length).toBe(sheets.value.count);
      let slopes = 0;
      for (const page of pages) {
        const margins = { x0: 6, y0: 6, x1: page.width - 6, y1: page.height - 6 };
        const boxes = page.placed.map(({ drawing, at }) => {
          // Undone by the printer's error, what is placed is turned at most.
          const [a, b, c, d] = at;
          if (error === null) expect([a, b, c, d].map(Math.abs).sort()).toEqual([0, 0, 1, 1]);
          const area = a * d - b * c;
          const upright = error === null ? 1 : error.x * error.y * Math.sqrt(1 - error.skew ** 2);
          expect(area * upright).toBeCloseTo(1, 9);
          for (const mark of drawing.marks)
            if (mark.kind === 'stroke' && mark.role === 'slope') slopes += lengthOf(mark.paths);
          const ink = inkBox(drawing.marks, at);
          expect(isInside(ink, margins)).toBe(true);
          return ink;
        });
        // The last one is the frame, which runs round two sides of the rest.
        const content = boxes.slice(0, -1);
        content.forEach((box, i) => {
          for (const other of content.slice(i + 1)) expect(overlaps(box, other)).toBe(false);
        });
      }
      const whole = pieces
        .flatMap((piece) => piece.draw({ x: [], y: [] }).marks)
        .flatMap((mark) => (mark.kind === 'stroke' && mark.role === 'slope' ? mark.paths : []));
      // Tabs repeat some of it.
      expect(slopes).toBeGreaterThanOrEqual(lengthOf(whole) - 1e-6);
    }),
    { numRuns: 60 },
  );
});

describe('a roll too narrow for a printer with skew', () => {
  const leaning = (skew: number) => ({ printer: 'office', error: { x: 1, y: 1, skew } });

  test('is refused, since the skew over all of its length uses up its width', () => {
    // 90 mm less two margins of 6 and a gutter of 5: 73. A lean of 0.005 over 4988 mm takes 25 of that, of 0.03 more than all.
    expect(complaintsOf([], { paper: paperOf('90xroll') })).toEqual([]);
    expect(complaintsOf([], { paper: paperOf('90xroll'), correction: leaning(0.005) })).toEqual([]);
    expect(complaintsOf([], { paper: paperOf('90xroll'), correction: leaning(0.03) })).toEqual([
      "paper: 90xroll leaves 0 mm across to draw on, once the printer's skew is corrected over its whole length; it must be 40 mm or more ()",
    ]);
    expect(complaintsOf([], { paper: paperOf('610xroll'), correction: leaning(0.03) })).toEqual([]);
  });

  test('leaves the pages before the pieces high enough for their content', () => {
    const areas: Size[] = [];
    const leading = (area: Size) => {
      areas.push(area);
      return [];
    };
    // 90 mm less two margins of 6 and what the frame takes; lying down such a sheet would be some 52 mm high.
    // They are laid out when the sheets are counted.
    expect(lay([], { paper: paperOf('90xroll'), leading }).count).toBe(0);
    expect(lay([], { paper: paperOf('610xroll'), leading }).count).toBe(0);
    const [narrow, wide] = areas;
    expect(narrow?.width).toBeCloseTo(73, 9);
    expect(narrow?.height).toBe(130);
    expect(wide?.height).toBeCloseTo((wide?.width ?? 0) / Math.SQRT2, 9);
  });
});
