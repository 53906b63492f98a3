import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { IDENTITY } from '../../src/drawing/affine.ts';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { contents } from '../../src/template/contents.ts';
import { BOTH_BOARDS, cornerPieces } from '../../src/template/corner.ts';
import { cornersOf } from '../../src/template/corners.ts';
import type { TemplatePiece } from '../../src/template/wrap.ts';
import { drawer, inOpening } from '../drawer/chest.ts';
import { inkBox } from '../paper/ink.ts';
import { AREAS, anyDrawer, made } from './anyDrawer.ts';
import { sheetFaults, textsOf, wordsOf } from './sheetFaults.ts';

const piecesOf = (...drawers: Parameters<typeof cornersOf>[0]['drawers']): TemplatePiece[] =>
  cornersOf({ drawers, joints: [], units: 'mm' }).flatMap((corner) => cornerPieces(corner, BOTH_BOARDS));

const madeOf = (...specs: Parameters<typeof made>[0][]) =>
  piecesOf(...specs.flatMap((spec) => made(spec)?.drawer ?? []));

/** Every piece on a page of its own, from page 3 on. */
const onPages = (pieces: readonly TemplatePiece[]) => new Map(pieces.map(({ name }, i) => [name, [3 + i]]));

const pictureOf = (page: Drawing) => {
  const strokes = page.marks.filter((mark) => mark.kind === 'stroke' && mark.role === 'outline');
  return strokes.map((mark) => inkBox([mark], IDENTITY));
};

describe('the contents', () => {
  it('say of every piece what it is, how many to make and on which page it is', () => {
    const pieces = madeOf(drawer({ count: 2 }));
    const [page, ...more] = contents('Haberdashery chest', pieces, AREAS.A4).draw(onPages(pieces));
    expect(more).toEqual([]);
    const text = page === undefined ? '' : wordsOf(page);
    expect(text).toContain('Haberdashery chest');
    expect(pieces).toHaveLength(8);
    expect(text).toContain('Buttons left side · A front end make 2 page 3');
    expect(text).toContain('Buttons front · A left end make 2 page 4');
    expect(text).toContain('Buttons back · D left end make 2 page 10');
  });

  it('name all pages of a piece that is tiled, or the first and the last where they are many', () => {
    const pieces = madeOf(drawer()).slice(0, 2);
    const [left, front] = pieces.map(({ name }) => name);
    const pagesOf = new Map([
      [left ?? '', [4, 5]],
      [front ?? '', Array.from({ length: 30 }, (_, i) => i + 6)],
    ]);
    const [page] = contents('Chest', pieces, AREAS.A4).draw(pagesOf);
    expect(page && wordsOf(page)).toContain('pages 4, 5');
    expect(page && wordsOf(page)).toContain('pages 6 to 35');
  });

  it('picture boards of one width to one scale', () => {
    const pieces = madeOf(drawer()).slice(0, 2);
    const [page] = contents('Chest', pieces, AREAS.A4).draw(onPages(pieces));
    const heights = page === undefined ? [] : pictureOf(page).map(({ y0, y1 }) => y1 - y0);
    expect(new Set(heights.map((height) => height.toFixed(6))).size).toBe(2); // the outline, and the edge's line
    expect(Math.max(...heights)).toBeGreaterThan(20);
  });

  it('go on on further pages, every piece once and in order', () => {
    const pieces = madeOf(
      ...[76, 110, 146, 190].map((height, i) => inOpening(280, height, 420, { name: `Drawer ${i + 1}` })),
    );
    const pages = contents('Chest', pieces, AREAS.A5).draw(onPages(pieces));
    expect(pages).toHaveLength(4); // two columns of four
    const numbers = pages.flatMap(textsOf).flatMap(({ text }) => /^page (\d+)$/u.exec(text)?.[1] ?? []);
    expect(numbers.map(Number)).toEqual(pieces.map((_, i) => 3 + i));
  });

  it('have nothing over anything else and nothing outside, whatever the drawers', () => {
    fc.assert(
      fc.property(
        fc.array(anyDrawer, { minLength: 1, maxLength: 3 }),
        fc.constantFrom(...Object.values(AREAS), { width: 73, height: 68 }),
        (all, area) => {
          const pieces = piecesOf(...all.map((each) => each.drawer));
          const pages = contents('Haberdashery chest', pieces, area).draw(onPages(pieces));
          expect(pages.flatMap(sheetFaults)).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
  }, 30_000);
});
