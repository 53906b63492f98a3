import fc from 'fast-check';
import type { Vec3 } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import type { CabinetPlace } from '../../src/cabinet/cabinetSpec.ts';
import { frameOf } from '../../src/cabinet/frameMembers.ts';
import type { FrameSpec } from '../../src/cabinet/frameSpec.ts';
import { openingsOf } from '../../src/cabinet/openings.ts';
import { readProject } from '../../src/project/readProject.ts';
import { value } from '../value.ts';
import { startSolids } from './jointSolids.ts';

// What a solid modeller (manifold-3d) finds of cabinets and the drawers in them.
const { Manifold } = await startSolids();
const block = (from: Vec3, to: Vec3) =>
  Manifold.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

describe('a frame of solid parts', () => {
  const places = fc.array(
    fc.constantFrom<CabinetPlace>(
      { name: 'Buttons' },
      { name: 'Thread', width: 90 },
      {
        rows: [[{ name: 'Ribbon' }], [{ name: 'Patches' }, { name: 'Notions' }]],
        heights: { kind: 'equal' },
        width: 160,
      },
    ),
    { minLength: 1, maxLength: 3 },
  );
  const cabinets = fc.record({
    width: fc.integer({ min: 700, max: 1200 }),
    height: fc.integer({ min: 900, max: 2000 }),
    rail: fc.integer({ min: 1, max: 25 }),
    divider: fc.integer({ min: 1, max: 20 }),
    rows: fc.array(
      places.map((row) => [...row, { name: 'Cloth' }]),
      { minLength: 1, maxLength: 4 },
    ),
  });
  const frames = fc.record<FrameSpec>({
    rails: fc.record({
      width: fc.constantFrom(45, 60),
      tenon: fc.constant(0),
      top: fc.constant(18),
      bottom: fc.constant(18),
    }),
    dividers: fc.constantFrom('short', 'full'),
    runners: fc.record({ width: fc.constantFrom(15, 30) }),
    guides: fc.record({ height: fc.constantFrom(10, 20), sides: fc.constantFrom(0, 12) }),
    vent: fc.constantFrom(0, 14),
  });

  it('has no two in one place, and none in the way of a drawer', () => {
    fc.assert(
      fc.property(cabinets, frames, (given, frame) => {
        const cabinet = { ...given, depth: 420, heights: { kind: 'equal' } as const };
        const openings = value(openingsOf(cabinet, 0.5));
        const members = frameOf({ ...cabinet, frame, openings });
        const solids = members.map(({ from, to }) => block([...from], [...to]));
        const whole = Manifold.union(solids);
        const sum = solids.reduce((volume, each) => volume + each.volume(), 0);
        expect(whole.volume() / sum).toBeCloseTo(1, 9);
        const ways = Manifold.union(
          openings.map(({ x, y, width, height }) => block([x, -100, y], [x + width, 420, y + height])),
        );
        expect(ways.intersect(whole).volume()).toBeLessThan(1e-6 * sum);
        // Under both sides of every drawer lies a runner, and over them a runner or a kicker.
        const half = frame.runners.width / 2;
        for (const { x, y, width, height } of openings)
          for (const [from, to] of [
            [x, x + 2 * half],
            [x + width - 2 * half, x + width],
          ] as const)
            for (const [low, high] of [
              [y - 0.5, y],
              [y + height, y + height + 0.5],
            ] as const) {
              const strip = block([from, 60, low], [to, 400, high]);
              expect(strip.intersect(whole).volume() / strip.volume()).toBeGreaterThan(0.5 - 1e-6);
            }
      }),
      { numRuns: 15 },
    );
  });
});

describe('a drawer in an opening that is out of square', () => {
  /** An opening whose corners are chosen, then measured as a maker would. */
  const measured = (upperLeft: readonly [number, number], upperRight: readonly [number, number]) => {
    const length = (value: number) => Number(value.toFixed(6));
    const rising = length(Math.hypot(...upperRight));
    const falling = length(Math.hypot(280 - upperLeft[0], upperLeft[1]));
    const left = length(Math.hypot(...upperLeft));
    const right = length(Math.hypot(upperRight[0] - 280, upperRight[1]));
    const reading = readProject(`
stock: {front: {thickness: 20}, side: {thickness: 11}}
fit: {side: 0.5, top: 1, behind: 12}
drawers:
  - name: Buttons
    opening: {width: 280, height: {left: ${left}, right: ${right}}, diagonals: {rising: ${rising}, falling: ${falling}}, depth: 420}
`);
    if (!reading.ok) throw new Error('this drawer can be made');
    const [drawer] = reading.value.set.drawers;
    if (drawer === undefined) throw new Error('there is one drawer');
    return drawer;
  };

  it('slides in from the front, 0.5 mm clear at each side, 1 mm above and 12 mm behind', () => {
    const lean = fc.double({ min: -3, max: 3, noNaN: true });
    const high = fc.double({ min: 100, max: 103, noNaN: true });
    fc.assert(
      fc.property(lean, high, lean, high, (left, leftHigh, right, rightHigh) => {
        const upperLeft = [left, leftHigh] as const;
        const upperRight = [280 + right, rightHigh] as const;
        const { sizes } = measured(upperLeft, upperRight);
        const front = [[0, 0], [280, 0], upperRight, upperLeft] as const;
        // The way in and the opening, with walls as far as its back.
        const hole = Manifold.hull([-500, 420].flatMap((y) => front.map(([x, z]): Vec3 => [x, y, z])));
        const walls = block([-60, -500, -60], [340, 440, 160]).subtract(hole);
        const from = Math.max(0, left) + 0.5;
        const drawer = (y: number, beside: number, above: number) =>
          block([from - beside, y, 0], [from + sizes.width + beside, y + sizes.depth, sizes.height + above]);
        const swept = Manifold.hull([drawer(-450, 0.499, 0.999), drawer(0, 0.499, 0.999)]);
        expect(swept.intersect(walls).volume()).toBeLessThan(1e-3);
        expect(drawer(12, 0.499, 0.999).intersect(walls).volume()).toBeLessThan(1e-3);
        expect(drawer(12.1, 0, 0).intersect(walls).volume()).toBeGreaterThan(1);
        // No more could be promised.
        expect(swept.volume()).toBeGreaterThan(0);
        expect(drawer(0, 0.6, 0).intersect(walls).volume()).toBeGreaterThan(0);
        expect(drawer(0, 0, 1.1).intersect(walls).volume()).toBeGreaterThan(0);
      }),
      { numRuns: 15 },
    );
  });
});
