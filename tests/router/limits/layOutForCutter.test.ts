import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grouped } from '../../../src/joint/groupedSpacing.ts';
import type { Joint } from '../../../src/joint/joint.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { withoutKind } from '../../../src/joint/kinds/kinds.ts';
import { type Cutter, leastPin } from '../../../src/router/limits/cutter.ts';
import { layOutForCutter } from '../../../src/router/limits/layOutForCutter.ts';
import { sentence } from '../../../src/units/complaint.ts';
import { formatLength } from '../../../src/units/formatLength.ts';
import type { Notation } from '../../../src/units/notation.ts';
import { parseLength } from '../../../src/units/parseLength.ts';
import { complaintsOf, value } from '../../value.ts';

const EIGHT: Cutter = { diameter: 12.7, angle: 8, length: 20 };
const LEAST = 12.7 - 30 * Math.tan((8 * Math.PI) / 180);
const FRONT: JointSpec = {
  kind: 'lapped',
  width: 120,
  tailBoard: 11,
  pinBoard: 20,
  lap: 5,
  spacing: { kind: 'even' },
};

const laid = (spec: JointSpec, cutter = EIGHT): Joint => value(layOutForCutter(spec, cutter));

const refusals = (spec: JointSpec, cutter = EIGHT): string[] => complaintsOf(layOutForCutter(spec, cutter));

const narrow = (joint: Joint): number[] => joint.pins.map(({ narrow: [a, b] }) => b - a);

describe('layOutForCutter', () => {
  it('leaves pins as narrow as is wished where the tails are sawn and only the sockets are the cutter’s', () => {
    for (const wish of [
      { ...withoutKind(FRONT), kind: 'double-lapped', pin: 5 } as const,
      { ...FRONT, pinBoard: 14, shoulder: 'both', pin: 5, mitre: 'corner' } as const,
    ])
      for (const width of narrow(laid(wish))) expect(width).toBeCloseTo(5, 9);
    // Between the shoulders of a through corner the cutter clears the spaces.
    const through = laid({
      ...withoutKind(FRONT),
      kind: 'through',
      pinBoard: 14,
      shoulder: 'both',
      mitre: 'corner',
    });
    for (const width of narrow(through))
      expect(width).toBeGreaterThanOrEqual(12.7 - 2 * 14 * Math.tan((8 * Math.PI) / 180) - 1e-9);
  });

  it('refuses a tail board’s lap that leaves nothing square of the tails beside the cutter’s round', () => {
    // The round at the inside face is half of 12.7 - 2 * 15 * tan 8° = 8.484, so 4.242; 14 - 10 are left behind the lap.
    expect(
      refusals({ ...withoutKind(FRONT), kind: 'double-lapped', tailBoard: 14, lap: 5, tailLap: 10 }).join(),
    ).toContain("the cutter's round of 4.24 mm takes all of a socket 4 mm long");
  });

  it('refuses fingers where the tails are sawn, by what has them sawn', () => {
    const fingers = { together: 14, bush: 16 };
    expect(
      complaintsOf(layOutForCutter({ ...withoutKind(FRONT), kind: 'double-lapped' }, EIGHT, fingers)),
    ).toEqual([
      'kind: the tails of a double-lapped joint are sawn, so fingers that slide along a bar have nothing to guide there; cut its sockets along a guide board, or all of it by hand, without fingers',
    ]);
    const shouldered = { ...FRONT, pinBoard: 14, shoulder: 'lower', mitre: 'corner' } as const;
    expect(complaintsOf(layOutForCutter(shouldered, EIGHT, fingers)).join()).toMatch(
      /^shoulder: the tails of a lapped joint with a mitred shoulder are sawn/u,
    );
  });

  it("refuses a hound's tooth, whose small pins end half way", () => {
    const tooth: JointSpec = { ...withoutKind(FRONT), kind: 'through', houndsTooth: {} };
    expect(refusals(tooth)[0]).toContain("spacing: a hound's tooth cannot be cut along a guide");
  });

  it('cuts tails in groups, whose pins are no narrower than its cut, and offers equal ones where it cannot', () => {
    // 240 hold 2 x 4 + 2 x pin + groups; half pins and pins are as wide as the cut, those between three times.
    const joint = laid({ ...FRONT, width: 240, spacing: grouped([2, 2]) });
    const widths = narrow(joint);
    expect(widths[2]).toBeCloseTo(3 * (widths[1] ?? 0), 9);
    expect(Math.min(...widths)).toBeGreaterThan(LEAST - 1e-9);
    // A pin between groups that is a hair under the cut is as wide as it.
    const hair = laid({ ...FRONT, width: 240, spacing: grouped([2, 2], LEAST - 0.01) });
    expect(narrow(hair)[2]).toBeCloseTo(LEAST, 6);
    expect(refusals({ ...FRONT, width: 240, spacing: grouped([2, 2], LEAST - 1) })[0]).toContain(
      'groupPin: a pin between groups is',
    );
    const tight = refusals({ ...FRONT, spacing: grouped([3, 3]) });
    expect(tight[0]).toMatch(/the nearest that works: \d tails of \d/u);
  });

  it("has the cutter's slope, and its least pin where none is wished", () => {
    const joint = laid(FRONT);
    expect(joint.slope.run).toBeCloseTo(1 / Math.tan((8 * Math.PI) / 180), 12);
    for (const width of narrow(joint)) expect(width).toBeCloseTo(LEAST, 9);
  });

  it('keeps wider pins and all else that is wished', () => {
    const joint = laid({
      ...FRONT,
      pin: 10,
      halfPin: { lower: 4, upper: 6 },
      spacing: { kind: 'even', tails: 3 },
    });
    [4, 10, 10, 6].forEach((width, i) => {
      expect(narrow(joint)[i]).toBeCloseTo(width, 9);
    });
    expect(joint.tails.length).toBe(3);
  });

  it('means the same slope by 1:7 as by 8 degrees, but not by 1:8 and 14 degrees', () => {
    expect(laid({ ...FRONT, slope: { run: 7 } }).slope.run).toBeCloseTo(7.115, 3);
    const [first] = refusals({ ...FRONT, slope: { run: 8 } }, { diameter: 12.7, angle: 14, length: 16 });
    expect(first).toMatch(
      /^slope: a slope of 1:8 is not the cutter's: at 14 degrees it cuts 1:4\.01; try 1:4\.01, or take a cutter of 7\.1 degrees/u,
    );
  });

  it('refuses a joint deeper than the cutter cuts, and gives the nearest that it can', () => {
    expect(refusals(FRONT, { ...EIGHT, length: 14 })).toEqual([
      // A lap of 20 - 14 = 6; a pin of 12.7 - 2 x 14 tan 8° = 8.76, rounded up; (120 - 4 x 8.77) / 3 = 28.31.
      'cutter.length: the cutter cuts 14 mm deep; the joint is 15 mm deep; take a cutter with a cutting length of at least 15 mm, or make the lap at least 6 mm; the nearest that works: 3 tails of 28.31 mm, pins of 8.77 mm, slope 1:7.12, lap 6 mm',
    ]);
    const [through] = refusals({
      kind: 'through',
      width: 120,
      tailBoard: 20,
      pinBoard: 22,
      spacing: { kind: 'even' },
    });
    expect(through).toContain('cutter.length: the cutter cuts 20 mm deep; the joint is 22 mm deep');
    expect(through).toMatch(/, or take a pin board of at most 20 mm; .*, pin board 20 mm$/u);
  });

  it('refuses pins that the cutter would cut away, and gives the nearest that it leaves', () => {
    expect(refusals({ ...FRONT, pin: 5 })).toEqual([
      'pin: a pin is 5 mm wide; at this depth the cutter removes 8.48 mm, so it may not be less; try 8.49mm, or take a cutter of smaller diameter; the nearest that works: 3 tails of 28.68 mm, pins of 8.49 mm, slope 1:7.12, lap 5 mm',
    ]);
    // What is shown can be typed.
    expect(refusals({ ...FRONT, pin: 8.49 })).toEqual([]);
    expect(refusals({ ...FRONT, pin: 8.48 })).toEqual([]);
  });

  it('says of pins a little narrower than its cut that they are made as wide', () => {
    // 21/64 in is 8.334 mm; 8.4838 mm, which is shown as 21/64 too, is 0.149 mm or 0.0059 in more.
    const pin = (21 / 64) * 25.4;
    const spec: JointSpec = { ...FRONT, notation: 'in', pin };
    const said =
      'is .006" less than the cutter removes at this depth: it is made as wide as that; try 11/32in';
    const told = (wish: JointSpec) => laid(wish).advice.map((each) => sentence(each, 'in'));
    expect(told(spec)).toEqual([`a pin of 21/64" ${said}`]);
    for (const width of narrow(laid(spec))) expect(width).toBeCloseTo(LEAST, 9);
    // Of several the narrowest, once: half pins of 9 and two pins of 21/64 in leave 85.332 mm.
    const tails = new Array<number>(3).fill((120 - 18 - 2 * pin) / 3);
    const listed = { kind: 'listed', tails, pins: [pin, pin] } as const;
    expect(told({ ...FRONT, notation: 'in', halfPin: { lower: 9, upper: 9 }, spacing: listed })).toEqual([
      `a pin of 21/64" ${said}`,
    ]);
    expect(told({ ...spec, pin: (11 / 32) * 25.4 })).toEqual([]);
    // 8.48 mm is how it is shown.
    expect(laid({ ...FRONT, pin: 8.48 }).advice).toEqual([]);
  });

  it('makes no pin other than it is wished without saying so', () => {
    const cut = fc.record({
      pin: fc.double({ min: 8.1, max: 9, noNaN: true }),
      notation: fc.constantFrom<Notation[]>('mm', 'in', 'in/32', 'in/1000'),
    });
    fc.assert(
      fc.property(cut, ({ pin, notation }) => {
        const result = layOutForCutter({ ...FRONT, pin, notation, chisel: 1 }, EIGHT);
        if (!result.ok) return;
        const off = (narrow(result.value)[1] ?? 0) - pin;
        const finest = notation === 'mm' ? 0.005 : 0.0005 * 25.4;
        expect(result.value.advice.some(({ at }) => at[0] === 'pin')).toBe(off >= finest);
      }),
    );
  });

  it('takes listed pins in inches among mm for as wide as its cut, where they are shown alike', () => {
    const tails = new Array<number>(3).fill((120 - 18 - 2 * 8.334) / 3);
    const spec = (notation?: Notation): JointSpec => ({
      ...FRONT,
      halfPin: { lower: 9, upper: 9 },
      spacing: { kind: 'listed', tails, pins: [8.334, 8.334], ...(notation && { notation }) },
    });
    expect(refusals(spec())[0]).toMatch(/^pins\.0: /u);
    expect(refusals(spec('in'))).toEqual([]);
  });

  it('refuses listed pins and tails by their number', () => {
    const listed: JointSpec = {
      ...FRONT,
      halfPin: { lower: 9, upper: 9 },
      spacing: { kind: 'listed', tails: [25, 12, 25], pins: [20, 20] },
      lap: 5,
    };
    expect(refusals(listed).map((text) => text.split(':')[0])).toEqual(['tails.1']);
    const pins = { ...listed, spacing: { kind: 'listed', tails: [32, 33, 20], pins: [5, 12] } } as const;
    expect(refusals(pins).map((text) => text.split(':')[0])).toEqual(['pins.0']);
  });

  it('chooses fewer tails where the usual count leaves sockets that the cutter cannot enter', () => {
    // At 18° a cut 18 mm deep is 8.3 mm wide at the surface; three times that, a usual tail, is less than 25 mm.
    const cutter: Cutter = { diameter: 25, angle: 18, length: 19 };
    const spec: JointSpec = { ...FRONT, pin: 13.31, width: 240, pinBoard: 24, lap: 6, tailBoard: 10 };
    const { lap: _, ...through } = { ...spec, kind: 'through' as const, pinBoard: 18 };
    expect(laid(through, cutter).tails.length).toBe(4);
    const joint = laid({ ...spec, spacing: { kind: 'graded', ratio: 0.8, from: 'edge' } }, cutter);
    const tips = joint.tails.map(({ tip }) => tip[1] - tip[0]);
    expect(tips.length).toBe(4);
    expect(Math.min(...tips)).toBeGreaterThanOrEqual(25);
  });

  it('has as many as it can enter where the usual tails are narrower than itself', () => {
    // At 21° a cut 24 mm deep leaves pins of 25 - 48 tan 21° = 6.574: usual tails, three times that, are under 25 mm.
    const steep: Cutter = { diameter: 25, angle: 21, length: 24.5 };
    const wish: JointSpec = {
      kind: 'lapped',
      width: 240,
      tailBoard: 20,
      pinBoard: 30,
      lap: 6,
      pin: 6.58,
      halfPin: { lower: 6, upper: 6 },
      spacing: { kind: 'even' },
    };
    // Seven: (240 - 12 - 6 x 6.58) / 7 = 26.93; eight would be 22.75.
    const joint = laid(wish, steep);
    expect(joint.tails).toHaveLength(7);
    expect((joint.tails[0]?.tip[1] ?? 0) - 6).toBeCloseTo(26.931, 3);
    // What is said of the cutter comes with it, and no count is offered that it cannot enter.
    expect(joint.advice.map(({ at }) => at.join('.'))).toContain('cutter.length');
    for (const { tip } of joint.alternatives) expect(tip).toBeGreaterThan(24.97);
  });

  it('gives advice on the joint beside advice on the cutter', () => {
    const short = laid({ ...FRONT, chisel: 12 }, { ...EIGHT, length: 15.2 });
    expect(short.advice.map(({ at }) => at[0])).toEqual(['pin', 'cutter']);
  });

  it('refuses more tails than the cutter can enter, and gives how many it can', () => {
    // With five, (120 - 6 x 8.4838) / 5 = 13.8 mm is enough for 12.7 mm; with six, (120 - 7 x 8.4838) / 6 = 10.1 mm is not.
    expect(laid({ ...FRONT, spacing: { kind: 'even', tails: 5 } }).tails.length).toBe(5);
    expect(refusals({ ...FRONT, spacing: { kind: 'even', tails: 6 } })).toEqual([
      'tails: a tail is 10.1 mm wide; the cutter of 12.7 mm cannot enter its socket, so it must be 12.7 mm or more; use fewer and wider tails, or a cutter of smaller diameter; the nearest that works: 5 tails of 13.81 mm, pins of 8.49 mm, slope 1:7.12, lap 5 mm',
    ]);
    // Too many for any cutter: the hint is one that this cutter can cut.
    expect(refusals({ ...FRONT, spacing: { kind: 'even', tails: 20 } })[0]).toMatch(
      /^tails: 20 tails are too many .*; the nearest that works: 5 tails of 13\.81 mm/u,
    );
  });

  it('leaves out the pin board of a through joint that may stay as thick as it is', () => {
    const through: JointSpec = {
      kind: 'through',
      width: 120,
      tailBoard: 11,
      pinBoard: 11,
      spacing: FRONT.spacing,
    };
    // 12.7 - 2 × 11 tan 8° = 9.608, told as the hundredth above.
    expect(refusals({ ...through, pin: 5 })[0]).toMatch(/pins of 9\.61 mm, slope 1:7\.12$/u);
  });

  it('speaks of the average where the tails of the nearest layout differ', () => {
    const graded: JointSpec = { ...FRONT, pin: 5, spacing: { kind: 'graded', ratio: 0.9, from: 'edge' } };
    expect(refusals(graded)[0]).toMatch(/the nearest that works: 3 tails of on average 28\.68 mm/u);
  });

  it('refuses a round as long as a thin tail board is thick', () => {
    expect(refusals({ ...FRONT, tailBoard: 4 })[0]).toBe(
      "cutter.diameter: the cutter's round of 4.24 mm takes all of a socket 4 mm long; try 8mm, or take a thicker tail board",
    );
  });

  it('checks the sizes before the cutter', () => {
    expect(refusals({ ...FRONT, width: Number.NaN }).map((text) => text.split(':')[0])).toEqual(['width']);
  });

  it('lays out only what the cutter can cut, whatever is wished', () => {
    const spec = fc.record({
      kind: fc.constantFrom('through' as const, 'lapped' as const),
      width: fc.double({ min: 30, max: 400, noNaN: true }),
      tailBoard: fc.double({ min: 6, max: 25, noNaN: true }),
      pinBoard: fc.double({ min: 8, max: 30, noNaN: true }),
      pin: fc.option(fc.double({ min: 1, max: 30, noNaN: true }), { nil: undefined }),
      tails: fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }),
    });
    const cutter = fc.record({
      diameter: fc.double({ min: 6, max: 25, noNaN: true }),
      angle: fc.double({ min: 5, max: 18, noNaN: true }),
      length: fc.double({ min: 6, max: 25, noNaN: true }),
    });
    let cut = 0;
    fc.assert(
      fc.property(spec, cutter, ({ kind, width, tailBoard, pinBoard, pin, tails }, tool) => {
        const result = layOutForCutter(
          {
            kind,
            width,
            tailBoard,
            pinBoard,
            spacing: { kind: 'even', ...(tails !== undefined && { tails }) },
            ...(pin !== undefined && { pin }),
          },
          tool,
        );
        if (!result.ok) return;
        cut++;
        const joint = result.value;
        expect(joint.depth).toBeLessThanOrEqual(tool.length);
        for (const { wide, half } of joint.pins)
          if (!half) expect(wide[1] - wide[0]).toBeGreaterThan(tool.diameter - 1e-6);
        if (kind === 'lapped')
          for (const { tip } of joint.tails) expect(tip[1] - tip[0]).toBeGreaterThan(tool.diameter - 0.021);
        expect(Math.min(...narrow(joint))).toBeGreaterThan(leastPin(tool, joint.depth) - 1e-6);
      }),
      { numRuns: 400 },
    );
    expect(cut).toBeGreaterThan(10);
  });
});

describe('a layout for a cutter', () => {
  const counts = ({ alternatives }: Joint) => alternatives.map(({ tails }) => tails);
  // Pins and half pins of 8.49 mm: (120 - 6 x 8.4838) / 5 = 13.82, with six 10.10 mm, with four 19.40 mm.
  const five: JointSpec = { ...FRONT, spacing: { kind: 'even', tails: 5 } };

  it('offers other numbers of tails only where the cutter enters their sockets', () => {
    expect(counts(laid(five))).toEqual([4]);
    expect(counts(laid({ ...FRONT, spacing: { kind: 'even', tails: 3 } }))).toEqual([2, 4]);
    // A through joint is cut from the end: every number will do.
    const { lap: _, ...through } = { ...five, kind: 'through' as const, pinBoard: 15 };
    expect(counts(laid(through))).toEqual([4, 6]);
  });

  it('refuses each listed tail that is too narrow by its own name, and offers as many even ones as fit', () => {
    // Half pins of 8.49 mm and two pins of 9.01 leave 85 for the tails.
    const listed: JointSpec = {
      ...FRONT,
      halfPin: { lower: 8.5, upper: 8.5 },
      pin: 9,
      spacing: { kind: 'listed', tails: [12, 61, 12] },
    };
    const lines = refusals(listed);
    expect(lines.map((line) => line.split(';')[0])).toEqual([
      'tails.0: tail 1 is 12 mm wide',
      'tails.2: tail 3 is 12 mm wide',
    ]);
    expect(lines[0]).toContain('the nearest that works: 3 tails of 28.33 mm, pins of 9 mm');
  });

  it('leaves a single tail half pins alone, and names them', () => {
    const [line] = refusals({ ...FRONT, width: 40, spacing: { kind: 'even', tails: 3 } });
    expect(line).toMatch(
      /the nearest that works: 1 tail of 23\.0\d mm, half pins of 8\.4\d mm, slope 1:7\.12, lap 5 mm$/u,
    );
  });

  it('keeps a pin board that the cutter just reaches through', () => {
    const { lap: _, ...through } = { ...FRONT, kind: 'through' as const };
    expect(laid({ ...through, pinBoard: 20 }).depth).toBe(20);
    const [line] = refusals({ ...through, pinBoard: 21 });
    expect(line).toMatch(/^cutter\.length: the cutter cuts 20 mm deep; the joint is 21 mm deep/u);
    expect(line).toMatch(/, pin board 20 mm$/u);
    // Where only the slope is wrong the board is not spoken of.
    expect(refusals({ ...through, pinBoard: 20, slope: { run: 4 } })[0]).not.toMatch(/, pin board/u);
  });

  it('shortens the socket by what a side is proud', () => {
    // A round of 8.4838 / 2 = 4.24 mm in a socket of 5 mm, or of 5 less 1.
    expect(refusals({ ...FRONT, tailBoard: 5 })).toEqual([]);
    expect(refusals({ ...FRONT, tailBoard: 5, proud: 1 })[0]).toMatch(
      /^cutter\.diameter: the cutter's round of 4\.24 mm takes all of a socket 4 mm long/u,
    );
  });

  it('names the listed pins that are too narrow', () => {
    const listed: JointSpec = {
      ...FRONT,
      halfPin: { lower: 8.5, upper: 8.5 },
      spacing: { kind: 'listed', tails: [30, 30, 30], pins: [8, 5] },
    };
    expect(refusals(listed).map((line) => line.split(';')[0])).toEqual([
      'pins.0: pin 1 is 8 mm wide',
      'pins.1: pin 2 is 5 mm wide',
    ]);
  });
});

describe('what was laid out for a cutter', () => {
  it('can be typed back as it is shown, in any notation', () => {
    const wishes = fc.record({
      width: fc.double({ min: 60, max: 250, noNaN: true }),
      tailBoard: fc.double({ min: 9, max: 16, noNaN: true }),
      pinBoard: fc.double({ min: 12, max: 16, noNaN: true }),
      notation: fc.constantFrom<Notation[]>('mm', 'in', 'in/32', 'in/1000'),
    });
    const cutters = fc.record({
      diameter: fc.double({ min: 9, max: 13, noNaN: true }),
      angle: fc.constantFrom(7, 8, 9),
      length: fc.constant(17),
    });
    let typed = 0;
    fc.assert(
      fc.property(wishes, cutters, (sizes, cutter) => {
        const wish = { kind: 'through', spacing: { kind: 'even' }, ...sizes } as const;
        const laid = layOutForCutter(wish, cutter);
        if (!laid.ok) return;
        typed++;
        const { tails } = laid.value;
        const pins = narrow(laid.value);
        const shown = (width: number): number =>
          value(parseLength(formatLength(width, sizes.notation), 'mm'));
        const again = layOutForCutter(
          {
            ...wish,
            halfPin: { lower: shown(pins[0] ?? 0), upper: shown(pins.at(-1) ?? 0) },
            spacing: {
              kind: 'listed',
              tails: tails.map(({ tip }) => shown(tip[1] - tip[0])),
              pins: pins.slice(1, -1).map(shown),
            },
          },
          cutter,
        );
        expect(again).toMatchObject({ ok: true });
      }),
      { numRuns: 500 },
    );
    expect(typed).toBeGreaterThan(200);
  });
});
