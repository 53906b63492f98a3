import { describe, expect, it } from 'vitest';
import { cabinetOf } from '../../src/drawer/arrangement/cabinetOf.ts';
import type { Drawer } from '../../src/drawer/drawer.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import type { Mark } from '../../src/drawing/drawing.ts';
import { elevation } from '../../src/sheets/elevation.ts';
import { inOpening } from '../drawer/chest.ts';
import { AREAS, made } from './anyDrawer.ts';

const drawerOf = (spec: DrawerSpec): Drawer => {
  const found = made(spec);
  if (found === undefined) throw new Error('this drawer can be made');
  return found.drawer;
};

const draw = (drawers: readonly Drawer[], area = AREAS.A4) => {
  const names = drawers.map(({ spec: { name } }) => ({ name }));
  return elevation(names, cabinetOf(drawers), area).marks(0, area.height);
};

const wordsOf = (marks: readonly Mark[]): string =>
  marks
    .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
    .join(' ')
    .replaceAll('\u00A0', ' ');

/** Width and height of every closed line of a role. */
const outlinesOf = (marks: readonly Mark[], role: 'outline' | 'lap'): [number, number][] =>
  marks.flatMap((mark) =>
    mark.kind === 'stroke' && mark.role === role
      ? mark.paths.map(({ points }): [number, number] => {
          const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
          return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
        })
      : [],
  );

describe('the fronts of a set', () => {
  it('are drawn to the scale that is stated, each with its number and name', () => {
    const marks = draw([
      drawerOf(inOpening(280, 76, 420, { name: 'Buttons', count: 2 })),
      drawerOf(inOpening(574, 190, 420, { name: 'Cloth' })),
    ]);
    const words = wordsOf(marks);
    expect(words).toMatch(/1 Buttons 1 Buttons 2 Cloth$/u);
    expect(words).toContain('The plan gives no arrangement');
    const n = Number(/1 : ([\d.]+)/u.exec(words)?.[1]);
    const outlines = outlinesOf(marks, 'outline').map(([x, y]) => [x * n, y * n]);
    [
      [279, 75],
      [279, 75],
      [573, 189],
    ].forEach(([width = 0, height = 0], i) => {
      expect(outlines[i]?.[0]).toBeCloseTo(width, 6);
      expect(outlines[i]?.[1]).toBeCloseTo(height, 6);
    });
    expect(outlinesOf(marks, 'lap')).toEqual([]);
  });

  it('show a lip outside the dashed box behind it', () => {
    const lip = { sides: 8, top: 6, bottom: 0 };
    const marks = draw([drawerOf(inOpening(280, 110, 420, { lip }))]);
    const words = wordsOf(marks);
    const n = Number(/1 : ([\d.]+)/u.exec(words)?.[1]);
    expect(words).toContain('Dashed: the box behind a lip.');
    // The lip overlaps the opening: 280 + 16 by 110 + 6; the box is 279 by 109.
    expect(
      outlinesOf(marks, 'outline')
        .flat()
        .map((length) => Math.round(1e6 * length * n) / 1e6),
    ).toEqual([296, 116]);
    expect(
      outlinesOf(marks, 'lap')
        .flat()
        .map((length) => Math.round(1e6 * length * n) / 1e6),
    ).toEqual([279, 109]);
  });

  it('say how many drawers are not drawn, and where fronts are too small for their numbers', () => {
    const many = { ...drawerOf(inOpening(280, 76, 420)) };
    const eighty = { ...many, spec: { ...many.spec, count: 80 } };
    expect(wordsOf(draw([eighty]))).toContain('20 more drawers are not drawn.');
    const all = Array.from({ length: 400 }, () => many);
    expect(wordsOf(draw(all, AREAS.A5))).toBe(
      'There are too many fronts to show them together on this paper.',
    );
  });
});
