import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { speak } from '../../src/units/phrase.ts';
import { complaintsOf, told, value } from '../value.ts';
import { drawer, inOpening, joint } from './chest.ts';

const { stock, bottom } = drawer();
const refusals = (change: Partial<DrawerSpec>) => complaintsOf(layOutSet([drawer(change)]));
const advice = (...specs: DrawerSpec[]) => told(value(layOutSet(specs)).advice);

describe('a set of drawers', () => {
  const thread = inOpening(280, 100, 420, { name: 'Thread' });
  const cloth = inOpening(574, 190, 420, { name: 'Cloth' });

  it('is matched to one tail width, found from all of them together', () => {
    const { drawers, family } = value(layOutSet([drawer(), thread, cloth]));
    expect(drawers.map(({ front }) => front.tails.length)).toEqual([3, 4, 8]);
    // (75 - 12 - 10) / 3, (99 - 12 - 15) / 4 and (189 - 12 - 35) / 8.
    const tips = [53 / 3, 18, 142 / 8];
    family?.tips.forEach((tip, i) => {
      expect(tip).toBeCloseTo(tips[i] ?? 0, 12);
    });
    expect(family?.target).toBeCloseTo(((53 / 3) * 18 * (142 / 8)) ** (1 / 3), 9);
    expect(family?.spread).toBeCloseTo(18 / (53 / 3), 12);
    expect(family?.pin).toBe(5);
  });

  it('counts an entry once, however many drawers are made of it', () => {
    const once = value(layOutSet([drawer(), cloth])).family;
    expect(value(layOutSet([drawer({ count: 9 }), cloth])).family).toEqual(once);
  });

  it('is matched to a tail width that is given', () => {
    const { drawers, family } = value(layOutSet([drawer(), thread, cloth], 12));
    expect(family?.target).toBe(12);
    // 4 tails of 11.6 (with a half pin moved for the groove), 5 of 13.4 and 11 of 11.4.
    expect(drawers.map(({ front }) => front.tails.length)).toEqual([4, 5, 11]);
  });

  it('accepts its own layout as it is shown, rounded to the hundredth, where a half pin was narrowed for the groove', () => {
    const low = drawer({
      groove: { offset: 10, width: 5, depth: 5 },
      joint: { ...joint, halfPin: { lower: 7, upper: 7 } },
    });
    const [front] = value(layOutSet([low])).drawers.map((each) => each.front);
    // 10 - 1 - 15 / 7 mm are left below the groove.
    expect(front?.tails[0]?.tip[0]).toBeCloseTo(6.857143, 6);
    const hundredth = (length: number) => Math.round(length * 100) / 100;
    const tails = front?.tails.map(({ tip }) => hundredth(tip[1] - tip[0])) ?? [];
    const typed = (lower: number) =>
      refusals({
        ...low,
        joint: { ...joint, halfPin: { lower, upper: 7 }, spacing: { kind: 'listed', tails } },
      });
    expect(typed(6.86)).toEqual([]);
    expect(typed(6.95)).toHaveLength(1);
  });

  it('complains of a lap that leaves no socket alone, and not of the groove behind it', () => {
    expect(refusals({ joint: { ...joint, lap: 22 } })).toEqual([
      'drawers.0.joint.lap: "Buttons": front corners: the lap is 22 mm; it must be 1 mm to 17 mm; try 5mm',
    ]);
  });

  it("keeps a drawer's own number of tails, and its listed tails", () => {
    const own = inOpening(574, 140, 420, {
      name: 'Ribbon',
      joint: { ...joint, spacing: { kind: 'even', tails: 4 } },
    });
    const listed = inOpening(574, 100, 420, {
      name: 'Patches',
      joint: { ...joint, spacing: { kind: 'listed', tails: [30, 25, 22] } },
    });
    const { drawers, family } = value(layOutSet([drawer(), own, listed]));
    expect(drawers.map(({ front }) => front.tails.length)).toEqual([3, 4, 3]);
    // The listed ones do not enter the target: it is the mean of 53/3 and (139 - 12 - 15) / 4 = 28, cut off at 4 pins.
    expect(family?.target).toBeCloseTo(20, 12);
    expect(family?.tips[2]).toBeCloseTo(77 / 3, 12);
  });

  it('says which counts were possible, and gives as alternatives only those that hide the groove', () => {
    const [first] = value(layOutSet([drawer()], 12)).drawers;
    expect(first?.choices.map(({ tails }) => tails)).toEqual([1, 2, 3, 4]);
    expect(first?.front.tails.length).toBe(4);
    expect(first?.front.alternatives).toEqual([{ tails: 3, tip: 53 / 3 }]);
  });

  it('cuts the back corners over the height of the back, by their own rule', () => {
    const [first] = value(layOutSet([drawer()])).drawers;
    expect(first?.back.kind).toBe('through');
    expect(first?.back.width).toBe(55);
    expect(first?.back.depth).toBe(11);
    // 2 tails of (55 - 12 - 5) / 2 = 19 are 3.8 pins; 3 of 11 are 2.2: 3 / 2.2 is more than 3.8 / 3.
    expect(first?.back.tails.length).toBe(2);
  });

  it('may be empty', () => {
    expect(value(layOutSet([]))).toEqual({ drawers: [], advice: [] });
  });

  it('lays a thousand drawers out', () => {
    const many = Array.from({ length: 1000 }, (_, i) =>
      inOpening(300, 60 + (i % 140), 420, { name: `Drawer ${i}` }),
    );
    const { drawers } = value(layOutSet(many));
    expect(drawers).toHaveLength(1000);
    for (const { front, spec } of drawers) {
      const [base] = front.tails;
      expect(base && base.base[0] + 1).toBeLessThanOrEqual(spec.groove.offset + 1e-9);
      expect(base && base.base[1] - 1).toBeGreaterThanOrEqual(spec.groove.offset + spec.groove.width - 1e-9);
    }
  });
});

describe('a drawer that cannot be made', () => {
  it('is smaller than its own clearances and boards', () => {
    const space = (width: number, height: number, depth: number): Partial<DrawerSpec> => ({
      space: {
        kind: 'opening',
        opening: { width, height, depth },
        fit: { side: 20, top: 60, behind: 400 },
      },
    });
    expect(refusals(space(30, 50, 350))).toEqual([
      `drawers.0.opening.width: "Buttons": the opening's width is 30 mm; with the clearances and the boards it must be at least 82 mm; try 82mm, or make the clearance smaller (fit.side)`,
      `drawers.0.opening.height: "Buttons": the opening's height is 50 mm; with the clearances and the boards it must be at least 85 mm; try 85mm, or make the clearance smaller (fit.top)`,
      `drawers.0.opening.depth: "Buttons": the opening's depth is 350 mm; with the clearances and the boards it must be at least 451 mm; try 451mm, or make the clearance smaller (fit.behind)`,
    ]);
    expect(refusals({ space: { kind: 'size', size: { width: 40, height: 76, depth: 420 } } })).toEqual([
      'drawers.0.size.width: "Buttons": the drawer\'s width is 40 mm; with its boards it must be at least 42 mm; try 42mm',
    ]);
  });

  it('has no room for a tail in the lowest of backs, even where that is a hair lower in binary', () => {
    // 76 - 1 - 16 - 54, and 75.1 - 16 - 54.1, which comes out as 4.999999999999993.
    for (const more of [0, 0.1])
      expect(
        refusals({
          backDrop: 54 + more,
          space: {
            kind: 'opening',
            opening: { width: 280, height: 76 + more, depth: 420 },
            fit: { side: 0.5, top: 1, behind: 12 },
          },
        }).map((line) => line.split(': ').slice(2, 4).join(': ')),
      ).toEqual([
        'back corners: the lower half pin is 6 mm; it must be 1 mm to 5 mm',
        'back corners: the upper half pin is 6 mm; it must be 1 mm to 5 mm',
      ]);
  });

  it('has no height left for its back', () => {
    expect(refusals({ backDrop: 55 })).toEqual([
      `drawers.0.back.drop: "Buttons": no height is left for the back: of the sides' 75 mm the groove takes 16 mm from below and the drop 55 mm from above; the back must be at least 5 mm high; make the drop smaller, or lower the groove (groove.offset)`,
    ]);
  });

  it('has a groove too deep for its sides or its front', () => {
    expect(refusals({ groove: { offset: 11, width: 5, depth: 9.5 } })).toEqual([
      'drawers.0.groove.depth: "Buttons": the groove is 9.5 mm deep; the sides, 11 mm thick, must keep 2 mm behind it, so it may be at most 9 mm; try 9mm',
    ]);
    expect(
      refusals({
        groove: { offset: 11, width: 5, depth: 6 },
        joint: { ...joint, lap: 5 },
        stock: { ...stock, front: { thickness: 10 } },
      }),
    ).toEqual([
      `drawers.0.groove.depth: "Buttons": the groove is 6 mm deep; at the front's ends it must stay within the sockets, so it may be at most 5 mm; try 5mm`,
    ]);
    const { lap: _, ...noLap } = joint;
    expect(
      refusals({
        groove: { offset: 11, width: 5, depth: 8.5 },
        joint: { ...noLap, kind: 'through' },
        stock: { ...stock, front: { thickness: 10 } },
      }),
    ).toEqual([
      `drawers.0.groove.depth: "Buttons": the groove is 8.5 mm deep; the front, 10 mm thick, must keep 2 mm before it, so it may be at most 8 mm; try 8mm`,
    ]);
  });

  it('has a bottom that its grooves cannot hold, or that would hang below', () => {
    expect(refusals({ bottom: { ...bottom, slack: 4.5 } })).toEqual([
      'drawers.0.bottom.slack: "Buttons": a slack of 4.5 mm at each side leaves too little of the bottom in grooves 5 mm deep; at least 1 mm must be held; try 4mm',
    ]);
    expect(refusals({ stock: { ...stock, bottom: { thickness: 18 } } })).toEqual([
      `drawers.0.stock.bottom.thickness: "Buttons": the bottom is 18 mm thick and would hang below the sides: the groove's upper edge lies 16 mm up; try 16mm, or raise the groove (groove.offset)`,
    ]);
  });

  it('has slips that are too low, or that leave the bottom no width', () => {
    expect(refusals({ bottom: { ...bottom, hold: { kind: 'slips', width: 120, height: 17 } } })).toEqual([
      'drawers.0.bottom.slips.height: "Buttons": the slips are 17 mm high; above their groove they must keep 2 mm, and they may not rise above the sides, so it must be 18 mm to 75 mm; try 18mm',
      'drawers.0.bottom.slips.width: "Buttons": slips 120 mm wide leave no width for the bottom between sides 257 mm apart; they may be at most 118.5 mm; try 118.5mm',
    ]);
  });

  it('has a lip but through corners, or sides out of parallel', () => {
    const { lap: _, ...noLap } = joint;
    expect(
      refusals({ lip: { sides: 6, top: 6, bottom: 0 }, joint: { ...noLap, kind: 'through', proud: 0.5 } }),
    ).toEqual([
      'drawers.0.joint.kind: "Buttons": a front with a lip cannot have through corners: its lip is the lap of a lapped joint; try lapped, or remove the lip',
      'drawers.0.back.joint.proud: "Buttons": the sides stand 0 mm proud at the back and 0.5 mm at the front; unless both are equal the sides are not parallel; try 0.5mm',
    ]);
  });

  it('has measures that are no measures', () => {
    expect(
      refusals({
        count: 0,
        groove: { offset: Number.NaN, width: 5, depth: 5 },
        lip: { sides: -1, top: 0, bottom: 0 },
      }).map((line) => line.split(';')[0]),
    ).toEqual([
      'drawers.0.count: "Buttons": 0 is no number of drawers',
      'drawers.0.groove.offset: "Buttons": the groove\'s offset is not a number',
      'drawers.0.front.lip.sides: "Buttons": the lip at each side is -1 mm',
    ]);
  });

  it('has corners that cannot be cut, named as front or back', () => {
    expect(
      refusals({ joint: { ...joint, pin: 0.5 }, backJoint: { spacing: { kind: 'even', tails: 40 } } }),
    ).toEqual([
      'drawers.0.joint.pin: "Buttons": front corners: the pin width is 0.5 mm; it must be 1 mm to 75 mm',
      'drawers.0.back.joint.tails: "Buttons": back corners: 40 tails are too many for 55 mm: each base must be at least 3 mm, so there may be 1 to 4; try 2',
    ]);
  });

  it('is refused in words whatever its numbers are', () => {
    // Mostly what can be made, here and there what cannot.
    const any = (usual: number) =>
      fc.oneof(
        { weight: 12, arbitrary: fc.constant(usual) },
        { weight: 1, arbitrary: fc.constantFrom(0, -1, 1e9, Number.NaN, Number.POSITIVE_INFINITY) },
        { weight: 1, arbitrary: fc.integer({ min: 1, max: 400 }) },
      );
    const wishes = fc.record({
      box: fc.record({ width: any(280), height: any(76), depth: any(420) }),
      fit: fc.record({ side: any(0.5), top: any(1), behind: any(12) }),
      lip: fc.record({ sides: any(6), top: any(6), bottom: any(0) }),
      boards: fc.tuple(any(20), any(11), any(11), any(5)),
      joint: fc.record({ lap: any(5), pin: any(5), proud: any(0), tails: any(3), run: any(7) }),
      groove: fc.record({ offset: any(11), width: any(5), depth: any(5) }),
      rest: fc.tuple(any(0.5), any(12), any(20), any(4)),
    });
    fc.assert(
      fc.property(wishes, ({ box, fit, lip, boards, joint: { run, tails, ...sizes }, groove, rest }) => {
        const [front, side, back, panel] = boards.map((thickness) => ({ thickness }));
        if (!front || !side || !back || !panel) return;
        const [slack, width, height, backDrop] = rest;
        const spacing = { kind: 'even', tails } as const;
        const lines = complaintsOf(
          layOutSet([
            drawer({
              space: { kind: 'opening', opening: box, fit },
              lip,
              stock: { front, side, back, bottom: panel },
              joint: { kind: 'lapped', ...sizes, slope: { run }, spacing },
              backJoint: { spacing },
              groove,
              backDrop,
              bottom: { kind: 'panel', slack, hold: { kind: 'slips', width, height } },
            }),
          ]),
        );
        for (const line of lines) expect(line).toMatch(/^drawers\.0\.[a-zA-Z.]+: "Buttons": (?!.*NaN mm).+/u);
      }),
      { numRuns: 1000 },
    );
  });

  it('is refused together with all others, each at its place', () => {
    const complaints = complaintsOf(
      layOutSet(
        [
          drawer({ count: 0.5 }),
          inOpening(280, 76, 420, { name: ' buttons', groove: { offset: 3, width: 5, depth: 5 } }),
          inOpening(280, 76, 20, { name: 'Cloth' }),
        ],
        -1,
      ),
    );
    expect(complaints.map((line) => line.split(':')[0])).toEqual([
      'drawers.1.name',
      'family.target',
      'drawers.0.count',
      'drawers.1.groove.offset',
      'drawers.2.opening.depth',
    ]);
    expect(complaints[0]).toBe(
      'drawers.1.name: drawer 2 is called " buttons", as drawer 1 is already; give it another name, or give one drawer a count',
    );
  });
});

describe('advice on a set', () => {
  it('is not given where all is well', () => {
    expect(advice(drawer(), inOpening(280, 100, 420, { name: 'Thread' }))).toEqual([]);
  });

  it('names the drawer whose own number of tails breaks the family, and a better number', () => {
    const lone = inOpening(280, 100, 420, {
      name: 'Patches',
      joint: { ...joint, spacing: { kind: 'even', tails: 2 } },
    });
    const others = ['Thread', 'Ribbon', 'Cloth'].map((name) => inOpening(280, 100, 420, { name }));
    // The others could have 18; one of 41 among four draws the target to the mean of 18, 18, 18 and 41 but no further than 20.
    expect(advice(...others, lone).filter((line) => line.includes('differ from'))).toEqual([
      `drawers.3.joint.tails: "Patches": tails of 41 mm differ from the set's tail width, 20 mm: they are 2.05 times as wide; 4 would be 18 mm wide; try 4`,
    ]);
  });

  it("names the drawer whose pins are not the set's", () => {
    const lone = inOpening(280, 100, 420, { name: 'Patches', joint: { ...joint, pin: 7 } });
    expect(advice(drawer(), inOpening(280, 100, 420, { name: 'Thread' }), lone)).toEqual([
      `drawers.2.joint.pin: "Patches": pins of 7 mm differ from the set's, 5 mm; try 5mm`,
    ]);
  });

  it('says where the groove has moved a half pin that was wished', () => {
    expect(advice(drawer({ joint: { ...joint, halfPin: { lower: 9, upper: 6 } } }))).toEqual([
      'drawers.0.joint.halfPin: "Buttons": the lower half pin is 7.86 mm instead of 9 mm, so that the lowest tail hides the groove',
    ]);
    const { halfPin: _, ...noHalfPin } = joint;
    expect(advice(drawer({ joint: { ...noHalfPin, pin: 8.5 } }))).toEqual([]);
  });

  it('warns of a bottom too thick or too thin for its groove, and of a groove that weakens the sides', () => {
    expect(advice(drawer({ stock: { ...stock, bottom: { thickness: 6 } } }))).toEqual([
      'drawers.0.stock.bottom.thickness: "Buttons": a bottom of 6 mm is thicker than its groove of 5 mm: thin its edges from below to fit',
    ]);
    expect(advice(drawer({ stock: { ...stock, bottom: { thickness: 4 } } }))).toEqual([
      'drawers.0.stock.bottom.thickness: "Buttons": a bottom of 4 mm is loose in a groove of 5 mm and will rattle; make the groove 4 mm wide (groove.width)',
    ]);
    expect(advice(drawer({ groove: { offset: 11, width: 5, depth: 6 } }))).toEqual([
      'drawers.0.groove.depth: "Buttons": a groove 6 mm deep takes more than half of sides 11 mm thick; try 5.5mm, or let slips carry the bottom (bottom.slips)',
    ]);
  });

  it('warns that a through front shows the groove', () => {
    const { lap: _, ...noLap } = joint;
    expect(advice(drawer({ joint: { ...noLap, kind: 'through' } }))).toContain(
      `drawers.0.groove.stopped: "Buttons": a groove that runs through the sides' front tails shows at the front of a through joint; try groove: {stopped: auto}, or choose lapped corners`,
    );
  });

  it('passes on what the joints themselves advise, saying which corners', () => {
    const steep = { run: 4 };
    expect(
      advice(
        drawer({ joint: { ...joint, slope: steep }, backJoint: { spacing: { kind: 'even' }, slope: steep } }),
      ).map((line) => line.split(';')[0]),
    ).toEqual([
      `drawers.0.joint.slope: "Buttons": front corners: 1:4 is steeper than 1:5: the short grain at the tails' corners may break off`,
      `drawers.0.back.joint.slope: "Buttons": back corners: 1:4 is steeper than 1:5: the short grain at the tails' corners may break off`,
    ]);
  });

  it('says so where a given target leaves what is usual', () => {
    expect(value(layOutSet([drawer()], 24)).advice.map(({ at, says }) => [at, speak(says, 'mm')])).toEqual([
      [['family', 'target'], "tails of 24 mm are not 2 to 4 times the set's pin of 5 mm"],
    ]);
  });
});
