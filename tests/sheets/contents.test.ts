import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawer } from '../../src/drawer/drawer.ts';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { PENS } from '../../src/drawing/pens.ts';
import type { Size } from '../../src/paper/printable.ts';
import type { PagesOfPieces } from '../../src/paper/sheets.ts';
import { piecesOf } from '../../src/project/piecesOf.ts';
import type { SingleCorner } from '../../src/project/project.ts';
import { contents } from '../../src/sheets/contents.ts';
import { BOTH_BOARDS } from '../../src/sheets/template/cornerPieces.ts';
import type { TemplatePiece } from '../../src/sheets/template/templatePiece.ts';
import { drawer, inOpening } from '../drawer/chest.ts';
import { inkBox } from '../paper/ink.ts';
import { singleCorner } from '../project/singleCorner.ts';
import { AREAS, anyDrawer, made } from './anyDrawer.ts';
import { sheetFaults, textsOf, wordsOf } from './sheetFaults.ts';

const projectOf = (drawers: readonly Drawer[], joints: readonly SingleCorner[] = []) => ({
  set: { drawers, advice: [] },
  joints,
  units: 'mm' as const,
});

const madeOf = (...specs: Parameters<typeof made>[0][]): TemplatePiece[] =>
  piecesOf(projectOf(specs.flatMap((spec) => made(spec)?.drawer ?? [])));

/** The pages, each as one drawing. */
const drawn = (
  pieces: readonly TemplatePiece[],
  area: Size,
  pagesOf: PagesOfPieces = onPages(pieces),
  needed: readonly number[] | 'made' = [],
): Drawing[] =>
  contents('Haberdashery chest', pieces, area, needed)
    .flatMap((run) => run.draw(pagesOf))
    .map((placed) => ({
      box: { x0: 0, y0: 0, x1: area.width, y1: area.height },
      marks: placed.flatMap(({ drawing }) => drawing.marks),
    }));

/** Every piece on a page of its own, from page 3 on. */
const onPages = (pieces: readonly TemplatePiece[]) => new Map(pieces.map(({ name }, i) => [name, [3 + i]]));

const pictureOf = (page: Drawing) => {
  const strokes = page.marks.filter((mark) => mark.kind === 'stroke' && mark.role === 'outline');
  return strokes.map((mark) => inkBox([mark], IDENTITY));
};

describe('the contents', () => {
  it('give the name, quantity and page of every piece', () => {
    const pieces = madeOf(drawer({ count: 2 }));
    const [page, ...more] = drawn(pieces, AREAS.A4);
    expect(more).toEqual([]);
    const text = page === undefined ? '' : wordsOf(page);
    expect(text).toContain('Haberdashery chest');
    expect(pieces).toHaveLength(8);
    expect(text).toContain('Buttons left side · A front end quantity 2 page 3');
    expect(text).toContain('Buttons front · A left end quantity 2 page 4');
    expect(text).toContain('Buttons back · D left end quantity 2 page 10');
  });

  it('distinguish the flat templates of a board by their faces, and mention no folds where there are none', () => {
    const pieces = piecesOf(projectOf([made(drawer())?.drawer ?? []].flat()), {
      ...BOTH_BOARDS,
      flat: true,
      rods: true,
    });
    const textOf = (shown: typeof pieces): string => {
      const [page] = drawn(shown, AREAS.A4);
      return page === undefined ? '' : wordsOf(page);
    };
    const text = textOf(pieces);
    const unfolded = pieces.filter(({ name }) => !name.endsWith('-end'));
    expect(text).toContain('Cut out on the outline, fold on the long-dash-dot lines. Buttons left side · A');
    expect(textOf(unfolded)).toContain('Cut out on the outline. Buttons left side · A');
    for (const face of ['inside face', 'end grain', 'outside face'])
      expect(text).toContain(`Buttons left side · A front end ${face} quantity 1`);
    const captions = pieces.map(({ caption }) => caption.join());
    expect(new Set(captions).size).toBe(captions.length);
  });

  it('name all pages of a piece that is tiled, or the first and the last where they are many', () => {
    const pieces = madeOf(drawer()).slice(0, 2);
    const [left, front] = pieces.map(({ name }) => name);
    const pagesOf = new Map([
      [left ?? '', [4, 5]],
      [front ?? '', Array.from({ length: 30 }, (_, i) => i + 6)],
    ]);
    const [page] = drawn(pieces, AREAS.A4, pagesOf);
    expect(page && wordsOf(page)).toContain('pages 4, 5');
    expect(page && wordsOf(page)).toContain('pages 6 to 35');
  });

  it('give a long name whole, on several lines, where there is room', () => {
    const [page] = drawn(madeOf(drawer({ name: 'Letters, papers and old receipts, lower' })), AREAS.A4);
    const lines = page === undefined ? [] : textsOf(page).map(({ text }) => text);
    expect(lines.slice(2, 4).join(' ')).toBe('Letters, papers and old receipts, lower');
    expect(lines[4]).toBe('left side · A');
    expect(page && sheetFaults(page)).toEqual([]);
  });

  it('picture boards of one width to one scale', () => {
    const pieces = madeOf(drawer()).slice(0, 2);
    const [page] = drawn(pieces, AREAS.A4);
    const heights = page === undefined ? [] : pictureOf(page).map(({ y0, y1 }) => y1 - y0);
    expect(new Set(heights.map((height) => height.toFixed(6))).size).toBe(2); // the outline, and the edge's line
    expect(Math.max(...heights)).toBeGreaterThan(20);
  });

  /** How high each piece is in its picture, over its own height: the outline's first path goes round all of it. */
  const scalesOf = (pieces: readonly TemplatePiece[]): string[] => {
    const [page] = drawn(pieces, AREAS.A4);
    const cuts = (page?.marks ?? []).filter((mark) => mark.kind === 'stroke' && mark.role === 'outline');
    const heights = cuts
      .map((mark) => inkBox([mark], IDENTITY))
      .map(({ y0, y1 }) => y1 - y0 - PENS.thin.width)
      .filter((height) => height > 1);
    expect(heights).toHaveLength(pieces.length);
    return [...new Set(heights.map((height, i) => (height / (pieces[i]?.height ?? 0)).toFixed(4)))];
  };

  it('picture all pieces to one scale, unless the least of them would be too small', () => {
    const [low, high] = [76, 190].map((height, i) =>
      madeOf(inOpening(280, height, 420, { name: `Drawer ${i + 1}` })).slice(0, 4),
    );
    expect(scalesOf([...(low ?? []), ...(high ?? [])])).toHaveLength(1);
    // 34 mm are left for a height of 900: a drawer 86 mm wide would be shown 3 mm wide.
    const carcase = singleCorner('Carcase', {
      kind: 'through',
      width: 900,
      tailBoard: 19,
      pinBoard: 19,
      spacing: { kind: 'even' },
    });
    const tall = piecesOf(projectOf([], [carcase]));
    expect(scalesOf([...(low ?? []), ...tall]).length).toBeGreaterThan(1);
  });

  it('continue on further pages, every piece once and in order', () => {
    const pieces = madeOf(
      ...[76, 110, 146, 190].map((height, i) => inOpening(280, height, 420, { name: `Drawer ${i + 1}` })),
    );
    // Two columns of six.
    const pages = drawn(pieces, { width: AREAS.A5.width, height: 90 });
    expect(pages).toHaveLength(3);
    const numbers = pages.flatMap(textsOf).flatMap(({ text }) => /\bpage (\d+)$/u.exec(text)?.[1] ?? []);
    expect(numbers.map(Number)).toEqual(pieces.map((_, i) => 3 + i));
  });

  it('are a page of A4 for sixty pieces, and as full as each other where they are more', () => {
    const pieces = madeOf(
      ...Array.from({ length: 8 }, (_, i) => inOpening(280, 76 + 9 * i, 420, { name: `Drawer ${i + 1}` })),
    );
    // The legend takes a line, and the list of copies up to three.
    const area = { ...AREAS.A4, height: AREAS.A4.height - 5.5 };
    const needed = Array.from({ length: 30 }, (_, i) => (i % 5) + 1);
    const on = (count: number) => drawn(pieces.slice(0, count), area, undefined, needed);
    expect(on(40)).toHaveLength(1);
    expect(on(60)).toHaveLength(1);
    expect(on(64).map((page) => wordsOf(page).match(/quantity 1/gu)?.length)).toEqual([32, 32]);
    expect([on(40), on(60), on(64)].flat().flatMap(sheetFaults)).toEqual([]);
  });

  it('say how often to print each page, or that all copies are here, and nothing where one of each is needed', () => {
    const pieces = madeOf(drawer({ count: 2 }));
    const words = (needed: readonly number[] | 'made', area = AREAS.A4) =>
      drawn(pieces, area, undefined, needed).map(wordsOf).join(' ');
    expect(words([2, 1, 2])).toContain(
      'For a template of every part, print once: pages 1, 3; twice: pages 2, 4.',
    );
    expect(words('made')).toContain('Every template is here as often as it is needed.');
    expect(words([1, 1])).not.toContain('print');
    const many = Array.from({ length: 300 }, (_, i) => (i % 2) + 1);
    expect(words(many)).toContain('Print each page as often as the largest quantity on it.');
  });

  it('have nothing over anything else and nothing outside, whatever the drawers', () => {
    fc.assert(
      fc.property(
        fc.array(anyDrawer, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(...Object.values(AREAS), { width: 73, height: 68 }),
        fc.oneof(fc.constant('made' as const), fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 60 })),
        (all, area, needed) => {
          const pieces = piecesOf(projectOf(all.map((each) => each.drawer)));
          const pages = drawn(pieces, area, undefined, needed);
          expect(pages.flatMap(sheetFaults)).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
  });
});
