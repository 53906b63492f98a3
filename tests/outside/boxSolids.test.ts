import fc from 'fast-check';
import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Drawer, drawersAndBoxes } from '../../src/drawer/drawer.ts';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { box } from '../drawer/chest.ts';
import { type DrawerSolids, drawerSolids, startSolids } from './drawerSolids.ts';

// The boards of boxes as solids of manifold-3d, each made from the parts list and its own marks.
let solids: ManifoldToplevel;
beforeAll(async () => {
  solids = await startSolids();
});

/** The skin of a box in which nothing may be missing, in mm. */
const SKIN = 0.3;
/** Smaller volumes are what floats leave, in mm³. */
const DUST = 1e-3;

const length = (least: number, most: number) =>
  fc.integer({ min: 10 * least, max: 10 * most }).map((n) => n / 10);

/** Boxes of through and of lapped corners, their bottoms in grooves or rebates, some with a lid to be sawn off. */
const anySpec: fc.Arbitrary<DrawerSpec> = fc
  .record({
    kind: fc.constantFrom('through', 'lapped'),
    size: fc.record({ width: length(120, 400), height: length(55, 160), depth: length(100, 300) }),
    front: length(10, 20),
    side: length(8, 16),
    back: length(10, 20),
    run: fc.integer({ min: 5, max: 9 }),
    offset: length(5, 12),
    depth: length(2, 4),
    isRebated: fc.boolean(),
    lid: fc.option(fc.record({ height: length(16, 50), kerf: length(0, 3) }), { nil: undefined }),
  })
  .map(({ kind, size, front, side, back, run, offset, depth, isRebated, lid }) =>
    box({
      space: { kind: 'size', size },
      stock: {
        front: { thickness: front },
        side: { thickness: side },
        back: { thickness: back },
        bottom: { thickness: 4 },
      },
      joint: { kind, slope: { run }, pin: 4, spacing: { kind: 'even' } },
      groove: {
        ...(isRebated ? { offset: 0, rebate: true } : { offset }),
        width: 4,
        depth,
        ...((isRebated || kind === 'through') && { stopped: 1.5 }),
      },
      box: lid === undefined ? {} : { lid },
    }),
  );

const made = (spec: DrawerSpec): Drawer | undefined => {
  const set = layOutSet([], undefined, {}, [spec]);
  return set.ok ? drawersAndBoxes(set.value)[0] : undefined;
};

const boardsOf = ({ front, left, right, back, bottom }: DrawerSolids): readonly Manifold[] => [
  front,
  left,
  right,
  back,
  bottom,
];

/** What is missing of the four outer faces. */
const missing = ({ sizes: { width, height, depth } }: Drawer, boards: readonly Manifold[]): number => {
  const { Manifold: M } = solids;
  const whole = M.cube([width, depth, height]);
  const core = M.cube([width - 2 * SKIN, depth - 2 * SKIN, height]).translate([SKIN, SKIN, 0]);
  return whole
    .subtract(core)
    .subtract(M.union([...boards]))
    .volume();
};

describe('a box as solids', () => {
  it('fits together without overlap, and shows wood all round: no groove, no rebate and no gap', () => {
    let count = 0;
    fc.assert(
      fc.property(anySpec, (spec) => {
        const drawer = made(spec);
        if (drawer === undefined) return;
        count++;
        const boards = boardsOf(drawerSolids(solids, drawer));
        boards.forEach((one, i) => {
          for (const other of boards.slice(i + 1)) expect(one.intersect(other).volume()).toBeLessThan(DUST);
        });
        expect(missing(drawer, boards)).toBeLessThan(DUST);
      }),
      { numRuns: 40 },
    );
    expect(count).toBeGreaterThan(15);
  });

  it('would show its groove where that ran through a through corner', () => {
    const drawer = made(box());
    if (drawer === undefined) throw new Error('no box');
    const { stopped: _, ...groove } = drawer.spec.groove;
    const running = drawerSolids(solids, { ...drawer, spec: { ...drawer.spec, groove } });
    // At each end of each side a groove of 4 by 4.
    expect(missing(drawer, boardsOf(running))).toBeCloseTo(4 * 4 * 4 * SKIN, 3);
  });

  it('has a bottom with its slack on all four sides', () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        const drawer = made(spec);
        if (drawer === undefined) return;
        const { left, front, back, right, bottom } = drawerSolids(solids, drawer);
        const { slack } = drawer.spec.bottom;
        const near = slack - 0.01;
        for (const [board, by] of [
          [left, [-near, 0, 0]],
          [right, [near, 0, 0]],
          [front, [0, -near, 0]],
          [back, [0, near, 0]],
        ] as const) {
          expect(
            bottom
              .translate([...by])
              .intersect(board)
              .volume(),
          ).toBeLessThan(DUST);
          const further = by.map((each) => (each / near) * (slack + 0.05)) as [number, number, number];
          expect(bottom.translate(further).intersect(board).volume()).toBeGreaterThan(DUST);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('is sawn apart through pins alone', () => {
    let count = 0;
    fc.assert(
      fc.property(anySpec, (spec) => {
        const drawer = made(spec);
        const cut = drawer?.front.sawCut;
        if (drawer === undefined || cut === undefined) return;
        count++;
        const { sizes, back } = drawer;
        const { left, right } = drawerSolids(solids, drawer);
        const { Manifold: M } = solids;
        const slab = (from: number, to: number) =>
          M.cube([sizes.width, to - from, cut[1] - cut[0] + 1]).translate([0, from, cut[0] - 0.5]);
        const tails = M.union([
          slab(0, spec.stock.front.thickness),
          slab(sizes.depth - back.pinBoard.thickness, sizes.depth),
        ]);
        for (const side of [left, right]) expect(side.intersect(tails).volume()).toBeLessThan(DUST);
      }),
      { numRuns: 40 },
    );
    expect(count).toBeGreaterThan(5);
  });
});
