import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import dxfParser, { type ILwpolylineEntity } from 'dxf-parser';
import type { Manifold } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { folder, GUIDED_CHEST, halfpin } from '../cli/program.ts';
import { box, hullOf, sweep } from './guidedSolids.ts';

/** In Node the package is the class itself, whatever its types say. */
const Parser = dxfParser as unknown as typeof dxfParser.DxfParser;

type Interval = [number, number];
interface Corner {
  readonly name: string;
  readonly kind: 'through' | 'lapped';
  readonly width: number;
  readonly depth: number;
  readonly tailBoard: { readonly thickness: number };
  readonly tails: readonly { readonly tip: Interval; readonly base: Interval }[];
  readonly guided: { readonly passes: readonly (readonly number[])[]; readonly depth: number };
}

/** The cutter of the example's plan, and the largest ridge or bite that is let pass, in mm. */
const CUTTER = { diameter: 12.7, angle: 8 };
const TRUE = 0.01;

const corners: readonly Corner[] = JSON.parse(halfpin(['lay', GUIDED_CHEST, '--json']).out).joints;
/** The corners that differ in more than their names. */
const shapes = [
  ...new Map(corners.map((corner) => [JSON.stringify([corner.width, corner.kind]), corner])).values(),
];

/** How far the sides stand out past the back in these solids; the plan's go on past its lower and its upper edge. */
const PAST = 20;
const overhang = ({ name }: Corner): boolean => name.endsWith(' back');

/** The tail board as the program tells a maker to cut it: u, its thickness, height above the baseline. */
const cut = (corner: Corner): Manifold => {
  const {
    width,
    depth,
    tailBoard: { thickness },
    guided,
  } = corner;
  const past = overhang(corner) ? PAST : 0;
  return guided.passes.flat().reduce(
    (left: Manifold, u) =>
      left.subtract(
        sweep(CUTTER, depth - guided.depth, guided.depth + 0.5, [
          [u, -CUTTER.diameter],
          [u, thickness + CUTTER.diameter],
        ]),
      ),
    box([-past, 0, -20], [width + past, thickness, depth]),
  );
};

/** The tails as it lists them, fatter by `more` on each side; of sides also all beyond the outermost, which is cut by hand. */
const listed = (corner: Corner, more: number): Manifold => {
  const {
    width,
    depth,
    tailBoard: { thickness },
    tails,
  } = corner;
  const past = overhang(corner) ? PAST : 0;
  const beyond = overhang(corner)
    ? box([-past, 0, 0], [tails[0]?.base[0] ?? 0, thickness, depth]).add(
        box([tails.at(-1)?.base[1] ?? 0, 0, 0], [width + past, thickness, depth]),
      )
    : box([0, 0, 0], [0, 0, 0]);
  return tails.reduce(
    (sum: Manifold, { tip, base }) =>
      sum.add(
        hullOf(
          [0, thickness].flatMap((y): [number, number, number][] => [
            [base[0] - more, y, 0],
            [base[1] + more, y, 0],
            [tip[1] + more, y, depth],
            [tip[0] - more, y, depth],
          ]),
        ),
      ),
    beyond.add(box([-past, 0, -20], [width + past, thickness, more])),
  );
};

describe('the example chest for a router, cut as the program says', () => {
  it('has all its corners cut', () => {
    expect(corners.map(({ guided }) => guided.passes.length > 0)).toEqual(new Array(12).fill(true));
    expect(shapes.length).toBe(8);
  });

  it.each(shapes.map((corner) => [corner.name, corner] as const))(
    'leaves the listed tails without a ridge or a bite (manifold-3d): %s',
    (_, corner) => {
      const board = cut(corner);
      expect(board.volume()).toBeGreaterThan(1000);
      expect(board.subtract(listed(corner, TRUE)).volume()).toBeLessThan(1e-6);
      expect(listed(corner, -TRUE).subtract(board).volume()).toBeLessThan(1e-6);
    },
  );
});

describe('the sides of the example chest, past its backs', () => {
  const backs = shapes.filter(overhang);
  const beyond = ({ width, depth, tailBoard: { thickness } }: Corner): Manifold =>
    box([-PAST, 0, -20], [0, thickness, depth]).add(box([width, 0, -20], [width + PAST, thickness, depth]));

  it.each(backs.map((corner) => [corner.name, corner] as const))(
    'stay whole (manifold-3d), and would not if the outer spaces were cut as the others are: %s',
    (_, corner) => {
      const whole = beyond(corner);
      expect(whole.subtract(cut(corner)).volume()).toBeLessThan(1e-6);
      // The cutter at its largest against the sides of the outermost tails, at the baseline.
      const radius = CUTTER.diameter / 2;
      const outer = [
        (corner.tails[0]?.base[0] ?? 0) - radius,
        ...corner.guided.passes.flat(),
        (corner.tails.at(-1)?.base[1] ?? 0) + radius,
      ];
      const bitten = cut({ ...corner, guided: { ...corner.guided, passes: [outer] } });
      expect(whole.subtract(bitten).volume()).toBeGreaterThan(100);
    },
  );
});

describe('its guides as DXF, read again by dxf-parser', () => {
  it('are one closed outline each, in mm, as wide as the work and its lands', () => {
    const where = folder();
    expect(halfpin(['draw', GUIDED_CHEST, '--as', 'dxf', '--out', where]).status).toBe(0);
    const files = readdirSync(where);
    expect(files).toHaveLength(15);
    for (const file of files) {
      const dxf = new Parser().parseSync(readFileSync(join(where, file), 'utf8'));
      // Autodesk's DXF reference: $INSUNITS 4 is millimetres; versions AC1009 (R12) and up.
      expect(dxf?.header.$INSUNITS).toBe(4);
      expect(String(dxf?.header.$ACADVER) >= 'AC1009').toBe(true);
      const outlines = dxf?.entities.filter(({ layer }) => layer === 'OUTLINE') as ILwpolylineEntity[];
      expect(outlines.map(({ shape }) => shape)).toEqual([true]);
      const corner = corners.find(({ name }) => file.startsWith(name.toLowerCase().replace(' ', '-')));
      const ys = outlines.flatMap(({ vertices }) => vertices.map(({ y }) => y));
      expect(Math.min(...ys)).toBeLessThanOrEqual(-30);
      expect(Math.max(...ys)).toBeGreaterThanOrEqual((corner?.width ?? 1000) + 30);
    }
  });
});
