import { describe, expect, it } from 'vitest';
import { checkBoards } from '../../../src/drawer/check/checkBoards.ts';
import { frontJointSpec, type Sizes, sizesOf } from '../../../src/drawer/drawerSizes.ts';
import type { DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { refuse } from '../../../src/units/complaint.ts';
import { complaintsOf } from '../../value.ts';
import { drawer, inOpening, joint } from '../chest.ts';

const { stock, bottom, groove } = drawer();
const wrongWith = (spec: DrawerSpec, sizes: Partial<Sizes> = {}) =>
  complaintsOf(refuse(...checkBoards(spec, { ...sizesOf(spec), ...sizes })));
const slips = (width: number, height: number): Partial<DrawerSpec> => ({
  bottom: { ...bottom, hold: { kind: 'slips', width, height } },
});

describe('the boards of a drawer may have', () => {
  it.each<[string, Partial<DrawerSpec>]>([
    ['a groove that leaves 2 mm of the sides', { groove: { ...groove, depth: 9 } }],
    ['a groove that leaves 2 mm of the slips', { groove: { ...groove, depth: 10 }, ...slips(12, 20) }],
    ['a bottom of which 1 mm is held', { bottom: { ...bottom, slack: 4 } }],
    ['a bottom flush with the lower edges', { stock: { ...stock, bottom: { thickness: 16 } } }],
    // The bottom lies in the front's groove, 5 mm deep in sockets of 15.
    ['a groove in the sides that begins where the bottom does', { groove: { ...groove, stopped: 10 } }],
    ['a groove in the sides that leaves 1 mm of them', { groove: { ...groove, stopped: 1 } }],
    // 75 - 16 - 54.
    ['a back 5 mm high', { backDrop: 54 }],
    ['slips 2 mm higher than their groove', slips(12, 18)],
    ['slips as high as the sides', slips(12, 75)],
    // (279 - 22 - 20) / 2.
    ['slips that leave 20 mm between them', slips(118.5, 20)],
    [
      'sides as proud at the back as at the front',
      { joint: { ...joint, proud: 0.5 }, backJoint: { spacing: { kind: 'even' }, proud: 0.5 } },
    ],
  ])('%s', (_, change) => {
    expect(wrongWith(drawer(change))).toEqual([]);
  });
});

describe('the boards of a drawer may not have', () => {
  it('a groove in the sides that stops the bottom, or that reaches their ends after all', () => {
    const stopped = (change: object, more: Partial<DrawerSpec> = {}) =>
      wrongWith(drawer({ groove: { ...groove, ...change }, ...more }));
    expect(stopped({ stopped: 10.5 })).toEqual([
      "groove.stopped: from the sides' front ends to their groove is 10.5 mm; it must be 1 mm to 10 mm; try auto",
    ]);
    expect(stopped({ stopped: 0.5 })).toHaveLength(1);
    const thin = { ...stock, front: { ...stock.front, thickness: 10.5 } };
    expect(stopped({ stopped: 1 }, { stock: thin })).toEqual([
      "groove.stopped: the groove in the front, 5 mm deep, comes within 0.5 mm of the sides' front ends: theirs cannot stop 1 mm short of them; try none, or make the groove less deep",
    ]);
    expect(stopped({ stopped: 5 }, slips(12, 20))).toEqual([
      "groove.stopped: slips carry the groove, and end at the front's inside face: no groove reaches the sides' ends; try none",
    ]);
  });

  it('a groove that goes too deep into thin sides or slips', () => {
    expect(wrongWith(drawer({ groove: { ...groove, depth: 9.5 } }))).toEqual([
      'groove.depth: the groove is 9.5 mm deep; the sides, 11 mm thick, must keep 2 mm behind it, so it may be at most 9 mm; try 9mm',
    ]);
    expect(wrongWith(drawer({ groove: { ...groove, depth: 7 }, ...slips(8, 20) }))).toEqual([
      'groove.depth: the groove is 7 mm deep; the slips, 8 mm thick, must keep 2 mm behind it, so it may be at most 6 mm; try 6mm',
    ]);
  });

  it('a groove that goes too deep into sides and front alike, of which the sides are named', () => {
    // 11 - 2 and 14 - 5.
    const alike = { ...stock, front: { ...stock.front, thickness: 14 } };
    expect(wrongWith(drawer({ stock: alike, groove: { ...groove, depth: 9.5 } }))).toEqual([
      'groove.depth: the groove is 9.5 mm deep; the sides, 11 mm thick, must keep 2 mm behind it, so it may be at most 9 mm; try 9mm',
    ]);
  });

  it('a groove at all in sides that are all wall, which no depth would help', () => {
    const thin = { ...stock, side: { thickness: 2 } };
    expect(wrongWith(drawer({ stock: thin, bottom: { ...bottom, slack: 0.5 } }))).toEqual([
      'groove.depth: the groove is 5 mm deep; the sides, 2 mm thick, must keep 2 mm behind it, so it may be at most 0 mm',
    ]);
  });

  it('a groove that opens into the lap, however thin the lap', () => {
    const thick = { ...stock, side: { thickness: 30 } };
    expect(
      wrongWith(
        drawer({
          stock: thick,
          joint: { ...joint, lap: 2 },
          groove: { ...groove, depth: 18.5 },
        }),
      ),
    ).toEqual([
      "groove.depth: the groove is 18.5 mm deep; at the front's ends it must stay within the sockets, so it may be at most 18 mm; try 18mm",
    ]);
  });

  it('a groove too shallow to hold anything', () => {
    expect(wrongWith(drawer({ groove: { ...groove, depth: 0.5 }, bottom: { ...bottom, slack: 0 } }))).toEqual(
      [
        'bottom.slack: a slack of 0 mm at each side leaves too little of the bottom in grooves 0.5 mm deep; at least 1 mm must be held; make the groove deeper (groove.depth)',
      ],
    );
    expect(wrongWith(drawer({ groove: { ...groove, depth: 1 } }))).toEqual([
      'bottom.slack: a slack of 0.5 mm at each side leaves too little of the bottom in grooves 1 mm deep; at least 1 mm must be held; try 0mm',
    ]);
  });

  it('a back too low, whether its drop or the drawer is to blame', () => {
    expect(wrongWith(drawer({ backDrop: 55 }))).toEqual([
      "back.drop: no height is left for the back: of the sides' 75 mm the groove takes 16 mm from below and the drop 55 mm from above; the back must be at least 5 mm high; make the drop smaller, or lower the groove (groove.offset)",
    ]);
    expect(wrongWith(inOpening(280, 21, 420))).toEqual([
      "opening.height: no height is left for the back: of the sides' 20 mm the groove takes 16 mm from below and the drop 4 mm from above; the back must be at least 5 mm high; make the drawer higher, or lower the groove (groove.offset)",
    ]);
    // 22 - 1 - 16 = 5 with no drop at all.
    expect(wrongWith(inOpening(280, 22, 420))[0]).toMatch(
      /make the drop smaller, or lower the groove \(groove\.offset\)$/u,
    );
  });

  it('slips higher than the sides, or that fill the drawer', () => {
    expect(wrongWith(drawer(slips(12, 76)))).toEqual([
      'bottom.slips.height: the slips are 76 mm high; above their groove they must keep 2 mm, and they may not rise above the sides, so it must be 18 mm to 75 mm; try 18mm',
    ]);
    expect(wrongWith(drawer(slips(12, 20)), { inside: { width: 20, depth: 377 } })).toEqual([
      'bottom.slips.width: slips 12 mm wide leave no width for the bottom between sides 20 mm apart; they may be at most 0 mm',
    ]);
  });
});

describe("a drawer's front joint", () => {
  const common = { width: 75, tailBoard: 11, pinBoard: 20, spacing: { kind: 'even' } };

  it('is as wide as the sides, and has the lap that is wished for or none of its own', () => {
    expect(frontJointSpec(drawer(), 75)).toEqual({ ...joint, ...common, lap: 5 });
    const { lap: _, ...noLap } = joint;
    const without = frontJointSpec(drawer({ joint: noLap }), 75);
    expect(without).toEqual({ ...noLap, ...common });
    expect('lap' in without).toBe(false);
  });

  it('has no lap where it is a through one', () => {
    const { lap: _, kind: __, ...common } = joint;
    const spec = drawer({ joint: { ...common, kind: 'through' } });
    expect('lap' in frontJointSpec(spec, 75)).toBe(false);
    expect(sizesOf(spec)).toMatchObject({ lap: 0 });
  });
});
