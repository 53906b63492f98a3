import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../src/drawer/arrangement/cabinetOf.ts';
import type { Drawing, FillMark } from '../../src/drawing/drawing.ts';
import { tailOutline } from '../../src/joint/tailOutline.ts';
import { frontCorners } from '../../src/project/project.ts';
import { type ComparedCorner, comparison } from '../../src/sheets/comparisonSheet.ts';
import type { Unit } from '../../src/units/unit.ts';
import { drawer, inOpening } from '../drawer/chest.ts';
import { AREAS, anyDrawer, made } from './anyDrawer.ts';
import { sheetFaults, wordsOf } from './sheetFaults.ts';

const row = (height: number, name = `Drawer of ${height}`, count = 1): ComparedCorner => {
  const joint = made(inOpening(280, height, 420))?.drawer.front;
  if (joint === undefined) throw new Error('this drawer can be made');
  return { name, count, joint };
};

const CHEST = [row(76, 'Buttons', 2), row(110, 'Ribbon', 2), row(146, 'Notions'), row(190, 'Cloth')];

const draw = (rows: readonly ComparedCorner[], area = AREAS.A4, units: Unit = 'mm') =>
  comparison(rows, { title: 'Haberdashery chest', family: { target: 19.78, spread: 1.434 }, units, area });

/** The shaded tails of each corner, from the top of the sheet down. */
const tailsOf = ({ marks }: Drawing): FillMark['paths'][] =>
  marks.flatMap((mark) => (mark.kind === 'fill' ? [mark.paths] : []));

const heightOf = (paths: FillMark['paths'], i: number): number => {
  const heights = paths[i]?.points.map(([, y]) => y) ?? [];
  return Math.max(...heights) - Math.min(...heights);
};

describe('the comparison', () => {
  it('stacks every drawer in the order of the cabinet on one page, with its figures', () => {
    const [page] = draw(CHEST);
    const text = page === undefined ? '' : wordsOf(page).replaceAll('\u00A0', ' ');
    expect(text).toMatch(/Buttons, quantity 2 .*Ribbon, quantity 2 .*Notions .*Cloth /u);
    // Three tails share 75 - 6 - 6 - 2 × 5; each is glued along 15 √(1 + 1/49) by 11, on two sides.
    expect(text).toContain('3 tails of 17.67 mm, pins 5 mm, 3.5 : 1, glue 10 cm²');
    expect(2 * 3 * 15 * Math.hypot(1, 1 / 7) * 11).toBeCloseTo(1000, -1);
    expect(text).toContain('The set’s tail width is 19.78 mm; its widest tail is 1.43 times its narrowest.');
    const tops = (page === undefined ? [] : tailsOf(page)).map((paths) => paths[0]?.points[0]?.[1] ?? 0);
    expect(tops).toEqual(tops.toSorted((a, b) => b - a));
  });

  it('shows all to one scale', () => {
    const [page] = draw(CHEST);
    const scales = (page === undefined ? [] : tailsOf(page)).map((paths, i) => {
      const tip = CHEST[i]?.joint.tails[0]?.tip ?? [0, 0];
      return heightOf(paths, 0) / (tip[1] - tip[0]);
    });
    expect(scales).toHaveLength(4);
    for (const scale of scales) expect(scale).toBeCloseTo(scales[0] ?? 0, 9);
  });

  it('sets the narrowest and the widest side by side at full size', () => {
    const pages = draw(CHEST);
    expect(pages).toHaveLength(2);
    const [narrow, wide] = pages[1] === undefined ? [] : tailsOf(pages[1]);
    for (const [paths, joint] of [
      [narrow, CHEST[0]?.joint],
      [wide, CHEST[3]?.joint],
    ] as const) {
      expect(paths).toHaveLength(joint?.tails.length ?? 0);
      joint?.tails.forEach((tail, i) => {
        // The same outline, turned: its tip points left.
        const wanted = tailOutline(tail, joint).map(([u, y]) => [-y, u] as const);
        const points = paths?.[i]?.points ?? [];
        const [dx, dy] = [0, 1].map((axis) => (points[0]?.[axis] ?? 0) - (wanted[0]?.[axis] ?? 0));
        wanted.forEach(([x, y], j) => {
          expect(points[j]?.[0]).toBeCloseTo(x + (dx ?? 0), 9);
          expect(points[j]?.[1]).toBeCloseTo(y + (dy ?? 0), 9);
        });
      });
    }
    expect(narrow?.[0]?.points[0]?.[1]).toBeCloseTo(wide?.[0]?.points[0]?.[1] ?? 0, 9);
  });

  it('leaves out the full size where one page cannot hold both, or where all are as wide', () => {
    expect(draw(CHEST, AREAS.A5)).toHaveLength(1);
    expect(draw([row(110, 'Ribbon'), row(110, 'Patches')])).toHaveLength(1);
  });

  it('continues on further pages where one scale would be too small for its figures', () => {
    const many = Array.from({ length: 60 }, (_, i) => row(76 + (i % 4) * 30, `Drawer ${i + 1}`));
    const pages = draw(many);
    expect(pages.length).toBeGreaterThan(2);
    expect(
      pages
        .map(wordsOf)
        .join(' ')
        .match(/Drawer \d+/gu)
        ?.slice(0, 60),
    ).toEqual(many.map(({ name }) => name));
  });

  it('shows a lip beyond the side’s edges, to the same scale', () => {
    const lip = { sides: 8, top: 6, bottom: 9 };
    const lipped = made(inOpening(280, 110, 420, { lip }))?.drawer;
    if (lipped === undefined) throw new Error('this drawer can be made');
    const [page] = draw(frontCorners({ drawers: [lipped] }));
    const [outline] = (page?.marks ?? []).flatMap((mark) =>
      mark.kind === 'stroke' && mark.role === 'outline' ? mark.paths.slice(0, 1) : [],
    );
    const levels = [...new Set(outline?.points.map(([, y]) => y))].toSorted((a, b) => a - b);
    // At 1 : 2: 9 below, a side of 109, and the gap above of 1 with the 6 of the lip.
    const [foot = 0] = levels;
    expect(levels.map((y) => Math.round(1e6 * (y - foot)) / 1e6)).toEqual([0, 4.5, 59, 62.5]);
    expect(page && wordsOf(page)).toContain('1\u00A0:\u00A02');
  });

  it('states that tails differ where they do', () => {
    const graded = { ...drawer().joint, spacing: { kind: 'graded', ratio: 1.2, from: 'edge' } as const };
    const joint = made(drawer({ joint: graded }))?.drawer.front;
    const [page] = joint === undefined ? [] : draw([{ name: 'Thread', count: 1, joint }]);
    expect(page && wordsOf(page)).toContain('tails of on average');
  });

  it('has nothing over anything else and nothing outside, whatever the set', () => {
    fc.assert(
      fc.property(
        fc.array(anyDrawer, { minLength: 1, maxLength: 12 }),
        fc.constantFrom<Unit>('mm', 'in'),
        fc.constantFrom(...Object.values(AREAS)),
        (all, units, area) => {
          const drawers = all.map(({ drawer: made }) => made);
          const pages = comparison(frontCorners({ drawers }), {
            title: 'Any set',
            family: { target: 20, spread: 1 },
            cabinet: cabinetOf(drawers),
            units,
            area,
          });
          expect(pages.flatMap(sheetFaults)).toEqual([]);
        },
      ),
      { numRuns: 20 },
    );
  });
});
