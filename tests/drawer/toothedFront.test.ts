import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec, JointWish } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { grouped } from '../../src/joint/groupedSpacing.ts';
import { complaintsOf, told, value } from '../value.ts';
import { drawer, inOpening, joint } from './chest.ts';

const { lap: _, ...common } = joint;
/** Tails 20 long at 1:7 lose 20/7; small pins of 3, the narrowest chisel, are 3 + 20/7 wide half way. */
const TOOTHED: JointWish = { ...common, kind: 'through', houndsTooth: {} };
const { groove } = drawer();

const made = (spec: DrawerSpec) => {
  const [first] = value(layOutSet([spec])).drawers;
  if (first === undefined) throw new Error('one drawer');
  return first;
};
const toothed = (change: Partial<DrawerSpec> = {}) => drawer({ joint: TOOTHED, ...change });
const refusals = (spec: DrawerSpec) => complaintsOf(layOutSet([spec]));

describe("a drawer whose front corners are a hound's tooth", () => {
  it('has so few tails that the groove, 10 to 17 with its spare, lies on one side of the lowest small pin', () => {
    // 75 - 2 x 6 - 5 leave 29 for each of two tails. The lowest one's middle is at 20.5, its small pin from 17.57 there.
    const { front, choices } = made(toothed());
    expect(choices.map(({ tails }) => tails)).toEqual([1, 2]);
    expect(front.tails[0]?.tip[0]).toBe(6);
    expect(front.smallPins?.[0]?.wide[0]).toBeCloseTo(6 + 29 / 2 - (3 + 20 / 7) / 2, 9);
  });

  it('may have more tails where the groove stops behind the small pins, 10 from the sides’ ends', () => {
    const stopped = (at: number) => toothed({ groove: { ...groove, stopped: at } });
    expect(made(stopped(10)).choices.length).toBeGreaterThan(2);
    expect(made(stopped(9.9)).choices).toHaveLength(2);
    // A groove that is deeper than the front's inside half would reach them from there.
    const deep = {
      groove: { ...groove, depth: 10.5, stopped: 9.5 },
      stock: { ...drawer().stock, side: { thickness: 18 } },
    };
    expect(made(toothed(deep)).choices).toHaveLength(2);
  });

  it('is refused where the groove would cross a small pin, and told what would help', () => {
    const [first = '', ...more] = refusals(
      toothed({ joint: { ...TOOTHED, spacing: { kind: 'even', tails: 3 } } }),
    );
    // With a half pin of 1 tails are 19.33 wide, and above the lowest small pin there is room from 13.6 up; the groove's is 10.
    expect(more).toEqual([]);
    expect(first).toMatch(
      /^drawers\.0\.groove\.offset: "Buttons": .* would show at the front or cross a small pin: it must lie inside the base of the lowest of 3 tails, on one side of its small pin, with 1 mm to spare, but it lies 3\.6 mm too low; /u,
    );
    expect(first).toContain('a groove that stops short of the small pins (groove.stopped)');
    expect(first).toContain('2 tails');
  });

  it('lets a groove lie above the small pin', () => {
    // One tail from 6 to 69 has its middle at 37.5.
    const high = toothed({
      groove: { offset: 45, width: 5, depth: 5 },
      joint: { ...TOOTHED, spacing: { kind: 'even', tails: 1 } },
    });
    const { front } = made(high);
    expect(front.smallPins?.[0]?.wide[1]).toBeLessThan(44);
    // The lowest tail listed keeps as it is.
    const listed = (offset: number) =>
      refusals(
        toothed({
          groove: { offset, width: 5, depth: 5 },
          joint: { ...TOOTHED, spacing: { kind: 'listed', tails: [63] } },
        }),
      );
    expect(listed(45)).toEqual([]);
    expect(listed(11)).toEqual([]);
    expect(listed(35)[0]).toContain('cross a small pin');
  });

  it('never has its groove across a small pin, and is not refused a count that leaves it room', () => {
    const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({ height: size(60, 260), offset: size(6, 40), width: size(3, 7), pin: size(3, 9) }),
        ({ height, offset, width, pin }) => {
          const laid = layOutSet([
            inOpening(280, height, 420, {
              joint: { ...TOOTHED, pin },
              groove: { offset, width, depth: 5 },
            }),
          ]);
          const room = height - 1;
          const [from, to] = [offset - 1, offset + width + 1];
          const [narrow, loss] = [Math.max(3, pin / 2), 20 / 7];
          // Every count and lower half pin tried in small steps: whether one has the band in a half of the lowest base.
          const hides = (count: number, half: number): boolean => {
            const tip = (room - half - 6 - (count - 1) * pin) / count;
            const [middle, wide] = [half + tip / 2, (narrow + loss) / 2];
            return (
              tip >= narrow + 6 + 2 * loss + 0.2 &&
              ((from >= half + loss && to <= middle - wide) ||
                (from >= middle + wide && to <= half + tip - loss))
            );
          };
          const halves = Array.from({ length: 400 }, (_, i) => 1 + i * 0.1);
          const possible = Array.from({ length: 12 }, (_, i) => i + 1).filter((count) =>
            halves.some((half) => hides(count, half)),
          );
          if (!laid.ok) {
            // What is refused for the groove cannot be had in another way.
            if (told(laid.complaints).some((each) => each.includes('cross a small pin')))
              expect(possible).toEqual([]);
            return;
          }
          const [made] = laid.value.drawers;
          const counts = made?.choices.map(({ tails }) => tails) ?? [];
          expect(possible.filter((count) => !counts.includes(count))).toEqual([]);
          for (const { wide } of made?.front.smallPins ?? [])
            expect(wide[1] <= from + 1e-6 || wide[0] >= to - 1e-6).toBe(true);
          const [low = 0, high = 0] = made?.front.tails[0]?.base ?? [];
          expect([low <= from + 1e-6, high >= to - 1e-6]).toEqual([true, true]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('cannot be cut by a guided cutter', () => {
    const cutter = { diameter: 12.7, angle: 8, length: 22 };
    expect(refusals(toothed({ cutter, joint: { ...TOOTHED, slope: { run: 7.12 } } }))).toContain(
      `drawers.0.joint.spacing: "Buttons": front corners: a hound's tooth cannot be cut along a guide: its small pins end half way, where a cutter would run on; try even, or cut the joint by hand, without a cutter`,
    );
  });

  it('is for through fronts, and for backs, whose groove runs below them', () => {
    expect(refusals(drawer({ joint: { ...joint, houndsTooth: {} } }))[0]).toContain(
      'the tails of a lapped joint end behind a lap, where no small pin would show; try even, or choose a through joint',
    );
    const back = made(drawer({ backJoint: { ...drawer().backJoint, houndsTooth: { smallPin: 4 } } })).back;
    expect(back.smallPins).toHaveLength(back.tails.length);
  });
});

describe('a drawer whose front tails are in groups', () => {
  it('has as many as the groups say, whatever the set’s tail width', () => {
    const grouping = { ...joint, spacing: grouped([1, 2], 9) };
    const set = value(
      layOutSet([inOpening(280, 76, 420, { joint: grouping }), inOpening(574, 190, 420, { name: 'Cloth' })]),
    );
    const [first] = set.drawers;
    expect(first?.choices.map(({ tails }) => tails)).toEqual([3]);
    expect(first?.front.alternatives).toEqual([]);
    // 75 = 6 + 6 + 5 + 9 + 49.
    expect(first?.front.pins.map(({ narrow: [from, to] }) => Math.round(1e6 * (to - from)) / 1e6)).toEqual([
      6, 9, 5, 6,
    ]);
    const wrong = refusals(inOpening(280, 76, 420, { joint: { ...joint, spacing: grouped([5, 5]) } }));
    expect(wrong[0]).toContain(
      'joint.groups: "Buttons": front corners: 10 tails in 2 groups are too many for 75 mm',
    );
  });

  it('has pins between groups as wide as a cutter’s cut at least', () => {
    const cutter = { diameter: 6, angle: 8, length: 20 };
    const wish = { kind: 'lapped', lap: 8, pin: 6, spacing: grouped([1, 1], 2) } as const;
    expect(refusals(drawer({ cutter, joint: wish }))[0]).toContain('a pin between groups is 2 mm wide');
  });
});
