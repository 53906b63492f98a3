import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pack } from '../../src/paper/pack.ts';

const area = { width: 190, height: 275 };

describe('few rectangles', () => {
  test('fill a page from its top left, in their order', () => {
    const places = pack(
      [
        { width: 90, height: 100 },
        { width: 90, height: 100 },
      ],
      area,
      2,
      false,
    );
    expect(places).toEqual([
      { page: 0, x: 0, y: expect.closeTo(175, 5), turned: false },
      { page: 0, x: 92, y: expect.closeTo(175, 5), turned: false },
    ]);
  });

  test('one that fits only turned is turned', () => {
    expect(pack([{ width: 270, height: 80 }], area, 2, false)).toEqual([
      { page: 0, x: 0, y: expect.closeTo(5, 5), turned: true },
    ]);
  });

  test('one is turned where that saves a page', () => {
    const places = pack(
      [
        { width: 188, height: 200 },
        { width: 70, height: 180 },
      ],
      area,
      2,
      false,
    );
    expect(places.map(({ page, turned }) => [page, turned])).toEqual([
      [0, false],
      [0, true],
    ]);
  });

  test('none is turned, and none is moved before another, where that saves none', () => {
    const places = pack(
      [
        { width: 60, height: 270 },
        { width: 180, height: 180 },
        { width: 60, height: 270 },
        { width: 180, height: 180 },
      ],
      area,
      2,
      false,
    );
    expect(places.every(({ turned }) => !turned)).toBe(true);
    expect(places.map(({ page }) => page)).toEqual([0, 1, 0, 2]);
  });

  test('on a roll they are side by side, to use little length', () => {
    const places = pack(
      Array.from({ length: 6 }, () => ({ width: 90, height: 250 })),
      { width: 600, height: 5000 },
      2,
      true,
    );
    expect(Math.min(...places.map(({ y }) => y))).toBeGreaterThan(4700);
  });
});

const rectangle = fc.record({
  width: fc.double({ min: 5, max: 190, noNaN: true }),
  height: fc.double({ min: 5, max: 190, noNaN: true }),
});

test('rectangles are inside their page and apart from each other, and are packed the same way every time', () => {
  fc.assert(
    fc.property(
      fc.array(rectangle, { minLength: 1, maxLength: 60 }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.boolean(),
      (sizes, gap, roll) => {
        const places = pack(sizes, area, gap, roll);
        expect(places.length).toBe(sizes.length);
        const boxes = places.map(({ page, x, y, turned }, i) => {
          const { width = 0, height = 0 } = sizes[i] ?? {};
          return { page, x, y, right: x + (turned ? height : width), top: y + (turned ? width : height) };
        });
        boxes.forEach((a, i) => {
          expect(Math.min(a.x, a.y)).toBeGreaterThanOrEqual(0);
          expect(a.right).toBeLessThanOrEqual(area.width + 2e-6);
          expect(a.top).toBeLessThanOrEqual(area.height + 2e-6);
          for (const b of boxes.slice(i + 1)) {
            if (a.page !== b.page) continue;
            const apart = Math.max(a.x - b.right, b.x - a.right, a.y - b.top, b.y - a.top);
            expect(apart).toBeGreaterThanOrEqual(gap - 2e-6);
          }
        });
        expect(pack(sizes, area, gap, roll)).toEqual(places);
      },
    ),
    { numRuns: 60 },
  );
});

test('a set larger than one batch leaves no page but the last nearly empty', () => {
  const sizes = Array.from({ length: 1000 }, (_, i) => ({
    width: 50 + ((i * 37) % 60),
    height: 60 + ((i * 53) % 150),
  }));
  const places = pack(sizes, area, 1, false);
  const covered: number[] = [];
  places.forEach(({ page }, i) => {
    const { width = 0, height = 0 } = sizes[i] ?? {};
    covered[page] = (covered[page] ?? 0) + width * height;
  });
  const shares = covered.map((sum) => sum / (area.width * area.height));
  expect(Math.min(...shares.slice(0, -1))).toBeGreaterThan(0.4);
  expect(shares.reduce((sum, share) => sum + share, 0) / shares.length).toBeGreaterThan(0.8);
});
