import fc from 'fast-check';
import type { Manifold as Solid, Vec3 } from 'manifold-3d';
import { describe, expect, it } from 'vitest';
import { type Drawer, madeOf } from '../../src/drawer/drawer.ts';
import type { BuiltBoard, DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { madeSet } from '../../src/drawer/made/madeSet.ts';
import { drawer, joint } from '../drawer/chest.ts';
import { value } from '../value.ts';
import { drawerSolids, everyBoard, startSolids } from './drawerSolids.ts';

// Drawers put together as solids with manifold-3d, which knows nothing of drawers.

const solids = await startSolids();
const { Manifold } = solids;

const laidOut = (spec: DrawerSpec): Drawer => {
  const [first] = value(madeSet(value(layOutSet([spec])))).drawers;
  if (first === undefined) throw new Error('a set of one has a drawer');
  return first;
};

/** How much wood is in two places at once, in mm³. */
const overlap = (boards: readonly Solid[], whole = Manifold.union(boards)): number =>
  boards.reduce((sum, board) => sum + board.volume(), 0) - whole.volume();

/** How much of a box some boards leave empty, in mm³. */
const gaps = (boards: readonly Solid[], from: Vec3, to: Vec3): number => {
  const box = Manifold.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);
  return box.subtract(Manifold.union(boards)).volume();
};

const SKIN = 0.01;
const NOTHING = 1e-3;

/** What can be seen through, in mm³, in the skin of the closed drawer's left side and of its front. */
const seenThrough = (made: Drawer, { front, left, right, back } = drawerSolids(solids, made)) => {
  const { sizes } = made;
  const behindLip = made.spec.lip === undefined ? 0 : sizes.lap;
  const [box] = made.boards.front.boxes;
  if (box === undefined) throw new Error('a drawer has a front');
  return {
    side: gaps([front, left, back], [0, behindLip, 0], [SKIN, sizes.depth, sizes.height]),
    front: gaps([front, left, right], [box.from[0], 0, box.from[2]], [box.to[0], SKIN, box.to[2]]),
  };
};

const size = (least: number, most: number) =>
  fc.integer({ min: 2 * least, max: 2 * most }).map((half) => half / 2);

const specs: fc.Arbitrary<DrawerSpec> = fc
  .record({
    opening: fc.record({ width: size(150, 700), height: size(55, 260), depth: size(200, 550) }),
    fit: fc.record({ side: size(0, 2), top: size(0, 3), behind: size(0, 30) }),
    lip: fc.option(fc.record({ sides: size(0, 12), top: size(0, 12), bottom: size(0, 12) }), {
      nil: undefined,
    }),
    own: fc.boolean(),
    thickness: fc.record({ front: size(16, 26), side: size(9, 16), back: size(8, 16), bottom: size(3, 9) }),
    run: fc.integer({ min: 5, max: 10 }),
    backRun: fc.integer({ min: 5, max: 10 }),
    pin: size(3, 9),
    lap: size(2, 6),
    proud: fc.constantFrom(0, 0, 0.3),
    graded: fc.option(fc.double({ min: 0.8, max: 1.25, noNaN: true }), { nil: undefined }),
    groove: fc.record({ offset: size(6, 16), width: size(3, 7), depth: size(3, 6) }),
    stopped: fc.constantFrom(0, 0, 0.5, 1),
    backDrop: size(0, 8),
    solid: fc.boolean(),
    slack: size(0, 2),
    slips: fc.option(fc.record({ width: size(8, 16), height: size(16, 28) }), { nil: undefined }),
  })
  .map((wish): DrawerSpec => {
    const { opening, fit, own, thickness, proud, graded } = wish;
    return {
      name: 'Thread',
      count: 1,
      space: own ? { kind: 'size', size: opening } : { kind: 'opening', opening, fit },
      ...(wish.lip === undefined ? {} : { lip: wish.lip }),
      stock: {
        front: { thickness: thickness.front },
        side: { thickness: thickness.side },
        back: { thickness: thickness.back },
        bottom: { thickness: thickness.bottom },
      },
      joint: {
        kind: 'lapped',
        lap: wish.lap,
        slope: { run: wish.run },
        pin: wish.pin,
        proud,
        spacing: graded === undefined ? { kind: 'even' } : { kind: 'graded', ratio: graded, from: 'edge' },
      },
      backJoint: { slope: { run: wish.backRun }, proud, spacing: { kind: 'even' } },
      // A share of the furthest that the sides' groove may begin from their ends.
      groove: {
        ...wish.groove,
        ...(wish.stopped > 0 &&
          wish.slips === undefined && {
            stopped: wish.stopped * (thickness.front - wish.lap - wish.groove.depth),
          }),
      },
      backDrop: wish.backDrop,
      bottom: {
        kind: wish.solid ? 'solid' : 'panel',
        slack: wish.slack,
        hold: wish.slips === undefined ? { kind: 'groove' } : { kind: 'slips', ...wish.slips },
      },
    };
  });

/** How far boards reach across, back and up, of which nothing counts before `from`. */
const extent = (whole: Solid, from = 0): Vec3 => {
  const { min, max } = whole.trimByPlane([0, 1, 0], from).boundingBox();
  return [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
};

const expectClose = (found: Vec3, wanted: Vec3) => {
  found.forEach((length, i) => {
    expect(length).toBeCloseTo(wanted[i] ?? Number.NaN, 6);
  });
};

describe('a drawer put together', () => {
  it('fills its place without two boards in one, whatever is wished', () => {
    let made = 0;
    fc.assert(
      fc.property(specs, (spec) => {
        const set = layOutSet([spec]);
        fc.pre(set.ok);
        const done = laidOut(spec);
        made++;
        const together = drawerSolids(solids, done);
        const boards = everyBoard(together);
        const whole = Manifold.union(boards);
        expect(overlap(boards, whole)).toBeLessThan(NOTHING);

        const { space, lip, joint } = spec;
        const room = space.kind === 'opening' ? space.opening : space.size;
        const fit = space.kind === 'opening' ? space.fit : { side: 0, top: 0, behind: 0 };
        const lipThickness = lip === undefined ? 0 : (joint.lap ?? Number.NaN);
        const own = space.kind === 'size';
        // Behind its lip, where it has one, it is the opening less the fit; a size of its own has the lip in it.
        expectClose(extent(whole, lipThickness + SKIN), [
          room.width - 2 * fit.side - (own ? 2 * (lip?.sides ?? 0) : 0),
          room.depth - fit.behind - (own ? lipThickness : 0) - SKIN,
          room.height - fit.top - (own ? (lip?.top ?? 0) + (lip?.bottom ?? 0) : 0),
        ]);
        const overall: Vec3 =
          lip === undefined
            ? [room.width - 2 * fit.side, room.depth - fit.behind, room.height - fit.top]
            : [
                room.width + (own ? 0 : 2 * lip.sides),
                room.depth - fit.behind + (own ? 0 : lipThickness),
                room.height + (own ? 0 : lip.top + lip.bottom),
              ];
        expectClose(extent(whole), overall);
        expect(seenThrough(done, together)).toEqual({
          side: expect.closeTo(0, 3),
          front: expect.closeTo(0, 3),
        });
      }),
      { numRuns: 50 },
    );
    expect(made).toBeGreaterThanOrEqual(50);
  });

  it('holds its bottom in the grooves, up and down, with its slack from side to side', () => {
    const holds = (spec: DrawerSpec) => {
      const { bottom, ...others } = drawerSolids(solids, laidOut(spec));
      const rest = [others.front, others.left, others.right, others.back, ...others.slips];
      const moved = (by: Vec3) => overlap([bottom.translate(by), ...rest]);
      expect(moved([0, 0, 0])).toBeLessThan(NOTHING);
      expect(moved([0, 0, 0.1])).toBeGreaterThan(1);
      expect(moved([0, 0, -0.1])).toBeGreaterThan(1);
      expect(moved([0.5, 0, 0])).toBeLessThan(NOTHING);
      expect(moved([0.6, 0, 0])).toBeGreaterThan(1);
      expect(moved([-0.6, 0, 0])).toBeGreaterThan(1);
    };
    holds(drawer());
    holds(drawer({ bottom: { kind: 'solid', slack: 0.5, hold: { kind: 'slips', width: 12, height: 20 } } }));
    holds(drawer({ stock: { ...drawer().stock, bottom: { thickness: 8 } } }));
  });

  it('would be seen to gape if the groove ran into a pin', () => {
    const done = laidOut(drawer());
    const { groove } = done.spec;
    const tail = done.front.tails[0];
    expect(seenThrough(done).side).toBeLessThan(NOTHING);
    // Raised until 2 mm of it lie above the lowest tail's base. In the front's end that leaves open what the tail, which
    // gains 1 mm in 7 towards its tip, does not fill of 2 by 5.
    const offset = (tail?.base[1] ?? 0) + 2 - groove.width;
    const raised = { ...done, spec: { ...done.spec, groove: { ...groove, offset } } };
    expect(seenThrough(raised).side).toBeCloseTo(SKIN * (2 * 5 - 5 ** 2 / (2 * 7)), 5);
  });

  it('shows the groove at the front of through corners, as the advice says', () => {
    const { lap: _, ...noLap } = joint;
    const done = laidOut(drawer({ joint: { ...noLap, kind: 'through' } }));
    // On either side the groove's end, 5 by 5.
    expect(seenThrough(done).front).toBeCloseTo(2 * 5 * 5 * SKIN, 4);
    expect(seenThrough(laidOut(drawer())).front).toBeLessThan(NOTHING);
    const stopped = drawer({
      joint: { ...noLap, kind: 'through' },
      groove: { ...done.spec.groove, stopped: 15 },
    });
    expect(seenThrough(laidOut(stopped)).front).toBeLessThan(NOTHING);
  });

  it('goes together without overlap or gap where one side came out thinner or thicker than the other', () => {
    for (const [hand, thickness] of [
      ['left', 10.6],
      ['right', 10.6],
      ['left', 12.2],
    ] as const) {
      const [done] = laidOut(drawer({ asBuilt: [{ part: 'side', hand, thickness }] })).made ?? [];
      if (done === undefined) throw new Error('it is not as planned');
      const together = drawerSolids(solids, done);
      expect(overlap(everyBoard(together))).toBeLessThan(NOTHING);
      expect(seenThrough(done, together)).toEqual({
        side: expect.closeTo(0, 3),
        front: expect.closeTo(0, 3),
      });
      // Inside its two ends the drawer is solid: side, front and back leave nothing open in any corner.
      const { width, depth } = done.sizes;
      const { front, left, right, back } = together;
      const up: readonly [number, number] = [16, 71];
      for (const [from, to] of [
        [0, done.sizes.wall.left],
        [width - done.sizes.wall.right, width],
      ] as const) {
        expect(gaps([front, left, right], [from, 0, up[0]], [to, 20, up[1]])).toBeLessThan(NOTHING);
        expect(gaps([back, left, right], [from, depth - 11, up[0]], [to, depth, up[1]])).toBeLessThan(
          NOTHING,
        );
      }
      // The bottom has its half millimetre at each side, as planned.
      const { bottom, ...others } = together;
      const rest = [others.front, others.left, others.right, others.back];
      const moved = (across: number) => overlap([bottom.translate([across, 0, 0]), ...rest]);
      for (const across of [0.5, -0.5]) expect(moved(across)).toBeLessThan(NOTHING);
      for (const across of [0.6, -0.6]) expect(moved(across)).toBeGreaterThan(1);
    }
  });

  it('has no two boards in one wherever its boards came out so that it can be made', () => {
    let done = 0;
    const near = (planned: number, less: number, more: number) =>
      fc.option(fc.double({ min: planned - less, max: planned + more, noNaN: true }), { nil: undefined });
    const side = (hand: 'left' | 'right') =>
      fc
        .record({ thickness: near(11, 3, 3), width: near(75, 4, 1) })
        .map((measures): BuiltBoard => ({ part: 'side', hand, ...given(measures) }));
    const built = fc.tuple(
      side('left'),
      side('right'),
      fc
        .record({ thickness: near(20, 3, 3), width: near(75, 4, 1), length: near(279, 4, 1) })
        .map((measures): BuiltBoard => ({ part: 'front', ...given(measures) })),
      fc
        .record({ thickness: near(11, 3, 3), width: near(55, 9, 0) })
        .map((measures): BuiltBoard => ({ part: 'back', ...given(measures) })),
      fc
        .record({ width: near(266, 3, 1), length: near(393, 5, 5) })
        .map((measures): BuiltBoard => ({ part: 'bottom', ...given(measures) })),
    );
    fc.assert(
      fc.property(built, (asBuilt) => {
        const set = madeSet(value(layOutSet([drawer({ asBuilt })])));
        fc.pre(set.ok);
        const [made] = set.ok ? madeOf(set.value) : [];
        if (made === undefined) throw new Error('a set of one has a drawer');
        done++;
        expect(overlap(everyBoard(drawerSolids(solids, made)))).toBeLessThan(NOTHING);
      }),
      { numRuns: 8 },
    );
    expect(done).toBeGreaterThanOrEqual(8);
  });
});

/** What of some measures is given. */
const given = <T extends object>(measures: T) =>
  Object.fromEntries(Object.entries(measures).filter(([, length]) => length !== undefined));
