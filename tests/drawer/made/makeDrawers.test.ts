import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawer } from '../../../src/drawer/drawer.ts';
import { madeOf } from '../../../src/drawer/drawer.ts';
import type { BuiltBoard, DrawerSpec } from '../../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../../src/drawer/layOutSet.ts';
import { drawerCorners } from '../../../src/drawer/made/drawerCorners.ts';
import { madeSet } from '../../../src/drawer/made/madeSet.ts';
import { parts } from '../../../src/drawer/partsList.ts';
import { sentence } from '../../../src/units/complaint.ts';
import { value } from '../../value.ts';
import { drawer, joint } from '../chest.ts';

const set = (asBuilt: readonly BuiltBoard[], change: Partial<DrawerSpec> = {}) =>
  value(madeSet(value(layOutSet([drawer({ asBuilt, ...change })]))));

/** The only drawer that is made. */
const made = (asBuilt: readonly BuiltBoard[], change: Partial<DrawerSpec> = {}): Drawer => {
  const [first] = madeOf(set(asBuilt, change));
  if (first === undefined) throw new Error('a set of one has a drawer');
  return first;
};

const refusal = (asBuilt: readonly BuiltBoard[], change: Partial<DrawerSpec> = {}): string[] => {
  const laid = madeSet(value(layOutSet([drawer({ asBuilt, ...change })])));
  return laid.ok
    ? []
    : laid.complaints.map((each) => `${each.at.slice(2).join('.')} ${sentence(each, 'mm')}`);
};

const advice = (asBuilt: readonly BuiltBoard[], change: Partial<DrawerSpec> = {}): string[] =>
  made(asBuilt, change).advice.map((each) => `${each.at.join('.')} ${sentence(each, 'mm')}`);

const thin: BuiltBoard = { part: 'side', hand: 'left', thickness: 10.6 };

describe('a side that came out thinner', () => {
  it('has shallower sockets and shorter pins at its own corners, and corners of their own', () => {
    const done = made([thin]);
    const corners = drawerCorners(done).map(({ letters, name, joint: { tailBoard, depth, width } }) => [
      letters.join(''),
      name,
      tailBoard.thickness,
      depth,
      width,
    ]);
    // The front's joint is as deep as its 20 mm less the lap of 5, the back's as the back is thick; the back stands from
    // the groove's upper edge, 16 up, to 4 below the sides' 75.
    expect(corners).toEqual([
      ['A', 'Buttons front A', 10.6, 15, 75],
      ['B', 'Buttons front B', 11, 15, 75],
      ['C', 'Buttons back C', 11, 11, 55],
      ['D', 'Buttons back D', 10.6, 11, 55],
    ]);
  });

  it('has its tails where the plan has them, so that both ends of the front look alike', () => {
    const done = made([thin]);
    expect(done.front.tails).toEqual(done.right?.front.tails);
    // Without a pin in the plan it is half the side as planned, 5.5 mm, at either end.
    const { pin: _, halfPin: __, ...noPin } = joint;
    const free = made([thin], { joint: noPin });
    expect(free.front.pins.map(({ narrow: [a, b] }) => b - a)[1]).toBeCloseTo(5.5, 9);
    expect(free.front.tails).toEqual(free.right?.front.tails);
  });

  it('leaves more room inside, and a bottom that is wider by as much', () => {
    const { sizes, boards } = made([thin]);
    // 279 less 10.6 and 11; and from groove to groove, 5 deep, 10 more, less half a millimetre at each side.
    expect(sizes.inside.width).toBeCloseTo(257.4, 9);
    expect(boards.bottom.width).toBeCloseTo(266.4, 9);
    expect(boards.side.thickness).toBe(10.6);
    expect(boards.rightSide?.thickness).toBe(11);
    expect(boards.rightSide?.boxes[0]?.from[0]).toBeCloseTo(268, 9);
  });

  it('is a row of its own in the parts list', () => {
    expect(
      parts(set([thin])).map(({ part, hand, count, thickness }) => [part, hand, count, thickness]),
    ).toEqual([
      ['front', undefined, 1, 20],
      ['side', 'left', 1, 10.6],
      ['side', 'right', 1, 11],
      ['back', undefined, 1, 11],
      ['bottom', undefined, 1, 5],
    ]);
  });

  it('is the mirror image of the same at the right', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 9.5, max: 14, noNaN: true }),
        fc.option(fc.double({ min: 72, max: 75.9, noNaN: true }), { nil: undefined }),
        (thickness, width) => {
          const built = { part: 'side', thickness, ...(width !== undefined && { width }) } as const;
          const [left, right] = [made([{ ...built, hand: 'left' }]), made([{ ...built, hand: 'right' }])];
          expect([left.front, left.back]).toEqual([right.right?.front, right.right?.back]);
          expect([left.right?.front, left.right?.back]).toEqual([right.front, right.back]);
          const [box] = left.boards.bottom.boxes;
          const [other] = right.boards.bottom.boxes;
          expect(box?.from[0]).toBeCloseTo(279 - (other?.to[0] ?? 0), 9);
          expect(left.boards.side.thickness).toBe(right.boards.rightSide?.thickness);
        },
      ),
      { numRuns: 20 },
    );
  });

  it('is refused where its groove would leave too little of it, with the nearest that can be made', () => {
    expect(refusal([{ part: 'side', hand: 'left', thickness: 6.5 }])).toEqual([
      'groove.depth "Buttons": with its boards as they came out, the groove is 5 mm deep; the sides, 6.5 mm thick, must keep 2 mm behind it, so it may be at most 4.5 mm; try 4.5mm',
    ]);
  });
});

describe('boards as planned', () => {
  it('change nothing where they are given all the same', () => {
    const plain = set([]);
    const [planned] = plain.drawers;
    const all = (['front', 'back', 'bottom'] as const).map((part): BuiltBoard => {
      const { thickness, width, length } = planned?.boards[part] ?? { thickness: 0, width: 0, length: 0 };
      return { part, thickness, width, length };
    });
    const { thickness, width, length } = planned?.boards.side ?? { thickness: 0, width: 0, length: 0 };
    const given = set([...all, { part: 'side', hand: 'right', thickness, width, length }]);
    expect(madeOf(given)).toEqual(given.drawers);
    expect(given.drawers.map(({ spec: { asBuilt: _, ...spec }, ...rest }) => ({ spec, ...rest }))).toEqual(
      plain.drawers.map(({ spec: { asBuilt: _, ...spec }, ...rest }) => ({ spec, ...rest })),
    );
    expect(given.advice).toEqual(plain.advice);
  });
});

describe('equal drawers', () => {
  it('are made together where they are alike, and named by their numbers where they are not', () => {
    const several = madeOf(
      set(
        [
          { ...thin, index: 2 },
          { ...thin, index: 5 },
          { part: 'back', thickness: 10, index: 3 },
        ],
        { count: 6 },
      ),
    );
    expect(several.map(({ spec: { name, count } }) => [name, count])).toEqual([
      ['Buttons 1,4,6', 3],
      ['Buttons 2,5', 2],
      ['Buttons 3', 1],
    ]);
    expect(several[2]?.back.depth).toBe(10);
    expect(
      parts(set([{ ...thin, index: 2 }], { count: 3 })).map(({ copies, part }) => [copies, part])[1],
    ).toEqual([[1, 3], 'side']);
  });

  it('leave the tail width of the set as it was planned', () => {
    const plan = [drawer({ count: 2 }), drawer({ name: 'Cloth' })];
    const planned = value(layOutSet(plan)).family;
    const built = plan.map((spec, i) =>
      i === 0 ? { ...spec, asBuilt: [{ part: 'front', width: 73, index: 1 } as const] } : spec,
    );
    const family = value(madeSet(value(layOutSet(built)))).family;
    expect([family?.target, family?.pin]).toEqual([planned?.target, planned?.pin]);
  });

  it('may not have the name that another drawer has', () => {
    const planned = layOutSet([
      drawer({ count: 2, asBuilt: [{ ...thin, index: 1 }] }),
      drawer({ name: 'buttons 1' }),
    ]);
    const laid = madeSet(value(planned));
    expect(laid.ok ? [] : laid.complaints.map(({ at }) => at)).toEqual([['drawers', 1, 'name']]);
  });
});

describe('a front that came out thinner', () => {
  it('has a joint less deep, and keeps its lap, so that the sides are as long as planned', () => {
    const done = made([{ part: 'front', thickness: 19.4 }]);
    // 19.4 less the lap of 5.
    expect(done.front.depth).toBeCloseTo(14.4, 9);
    expect(done.boards.side.length).toBe(403);
    expect(done.right).toBeUndefined();
    // The bottom lies 5 deep in the front: 408 less 19.4, and 5 more.
    expect(done.boards.bottom.length).toBeCloseTo(393.6, 9);
  });
});

describe('a side of another width than the front', () => {
  it('has its joint set out over the narrower of the two', () => {
    const narrower = made([{ part: 'side', hand: 'right', width: 74.2 }]);
    expect([narrower.front.width, narrower.right?.front.width]).toEqual([75, 74.2]);
    // The back is as wide as the narrower side leaves it: 74.2 less 16 and 4.
    expect(narrower.boards.back.width).toBeCloseTo(54.2, 9);
    expect([narrower.back.width, narrower.right?.back.width].map((width) => width?.toFixed(6))).toEqual([
      '54.200000',
      '54.200000',
    ]);
    const wider = made([{ part: 'side', hand: 'left', width: 75.6 }]);
    expect([wider.front.width, wider.right?.front.width]).toEqual([75, 75]);
    expect(advice([{ part: 'side', hand: 'left', width: 75.6 }])[0]).toBe(
      "asBuilt.0.width the left side stands 0.6 mm above the front: its front corner is set out over the front's width; plane it level",
    );
  });

  it('takes what is missing from the upper half pin where the tails are listed', () => {
    // 6 + 18 + 5 + 17 + 5 + 18 + 6 is 75.
    const listed = { ...joint, spacing: { kind: 'listed', tails: [18, 17, 18], pins: [5, 5] } } as const;
    const done = made([{ part: 'side', hand: 'left', width: 74.2 }], { joint: listed });
    expect(done.front.tails.map(({ tip }) => tip)).toEqual(done.right?.front.tails.map(({ tip }) => tip));
    expect(done.front.width - (done.front.tails[2]?.tip[1] ?? 0)).toBeCloseTo(5.2, 9);
  });

  it('stands no higher than the opening', () => {
    expect(refusal([{ part: 'side', hand: 'left', width: 76.5 }])).toEqual([
      'asBuilt.0.width "Buttons": the width of the left side came out 76.5 mm; the opening is 76 mm high, so it may be at most 76 mm; try 76mm',
    ]);
  });
});

describe('a length that came out short or long', () => {
  it('of the front makes the drawer and its back as much narrower, and says what is left at the sides', () => {
    const short: BuiltBoard = { part: 'front', length: 278 };
    const { sizes, boards } = made([short]);
    expect([sizes.width, boards.back.length, boards.bottom.width]).toEqual([278, 278, 265]);
    expect(advice([short])).toEqual([
      'asBuilt.0.length the clearance at each side is now 1 mm, where 0.5 mm was planned',
    ]);
    expect(refusal([{ part: 'front', length: 280.4 }])).toEqual([
      'asBuilt.0.length "Buttons": the length of the front came out 280.4 mm; the opening is 280 mm wide, so it may be at most 280 mm; try 280mm',
    ]);
  });

  it('of a side makes the drawer as much less deep, and its other side as long', () => {
    const { sizes, boards } = made([{ part: 'side', hand: 'left', length: 401 }]);
    expect([sizes.depth, boards.side.length, boards.bottom.length]).toEqual([406, 401, 391]);
    expect(
      refusal([
        { part: 'side', hand: 'left', length: 401 },
        { part: 'side', hand: 'right', length: 402 },
      ]),
    ).toEqual([
      'asBuilt.1.length "Buttons": the length of the right side came out 402 mm; the other is 401 mm long, and unless both are alike no drawer is square, so it may be at most 401 mm; try 401mm',
    ]);
    // 420 less the lap of 5.
    expect(refusal([{ part: 'side', hand: 'left', length: 415.5 }])[0]).toContain(
      'so it may be at most 415 mm',
    );
  });

  it('of a back lets the drawer taper a little, and never the other way', () => {
    const { sizes, boards } = made([{ part: 'back', length: 278 }]);
    expect([sizes.width, sizes.backWidth, boards.bottom.width]).toEqual([279, 278, 265]);
    expect(refusal([{ part: 'back', length: 279.2 }])[0]).toContain('try 279mm');
    expect(refusal([{ part: 'back', length: 276 }])[0]).toContain('try 277mm');
  });

  it('of a bottom must lie in both grooves', () => {
    expect(made([{ part: 'bottom', width: 265 }]).spec.bottom.slack).toBeCloseTo(1, 9);
    // 267 from floor to floor; each groove, 5 deep, must hold 1.
    expect(refusal([{ part: 'bottom', width: 267.3 }])[0]).toContain('try 267mm');
    expect(refusal([{ part: 'bottom', width: 258 }])[0]).toContain('try 259mm');
  });

  it('of a front with a lip is taken from the lip', () => {
    const lip = { sides: 6, top: 6, bottom: 0 };
    const { sizes, boards, spec } = made([{ part: 'front', length: 290, width: 81 }], { lip });
    expect([sizes.width, sizes.height, boards.front.length, boards.front.width]).toEqual([279, 75, 290, 81]);
    expect([spec.lip?.sides, spec.lip?.top]).toEqual([5, 5]);
    expect(refusal([{ part: 'front', length: 279 }], { lip })[0]).toContain('try 280mm');
  });
});
