import { describe, expect, it } from 'vitest';
import type { DrawerSpec } from '../../src/drawer/drawerSpec.ts';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { layOutWidths } from '../../src/drawer/layOutWidths.ts';
import type { Cutter } from '../../src/router/limits/cutter.ts';
import { speak } from '../../src/units/phrase.ts';
import { complaintsOf, value } from '../value.ts';
import { drawer, inOpening } from './chest.ts';

const CUTTER: Cutter = { diameter: 12.7, angle: 8, length: 20 };
const free = { kind: 'even' } as const;
const guided = (change: Partial<DrawerSpec> = {}): Partial<DrawerSpec> => ({
  cutter: CUTTER,
  joint: { kind: 'lapped', halfPin: { lower: 6, upper: 6 }, lap: 5, spacing: free },
  backJoint: { halfPin: { lower: 6, upper: 6 }, spacing: free },
  ...change,
});

const laid = (...specs: DrawerSpec[]) => value(layOutSet(specs));

const refusals = (...specs: DrawerSpec[]): string[] => complaintsOf(layOutSet(specs));

describe('drawers cut with a router', () => {
  it('have pins as wide as the cutter needs at either depth, and its slope', () => {
    const [only] = laid(inOpening(280, 146, 420, guided())).drawers;
    // 12.7 - 2 d tan 8°, 15 mm deep at the front and 11 at the back.
    expect(only?.front.pins[1]?.narrow[1]).toBeCloseTo((only?.front.pins[1]?.narrow[0] ?? 0) + 8.4838, 3);
    expect(only?.back.pins[1]?.narrow[1]).toBeCloseTo((only?.back.pins[1]?.narrow[0] ?? 0) + 9.6081, 3);
    expect(only?.front.slope.run).toBeCloseTo(7.1154, 3);
  });

  it('are told of pins a little narrower than its cut, at the front and at the back', () => {
    // 21/64 in, which is 0.149 mm less than 8.4838 mm, and 3/8 in, 0.083 mm less than 9.6081 mm.
    const wished = guided();
    const { advice } = laid(
      inOpening(280, 146, 420, {
        ...wished,
        joint: { ...drawer(wished).joint, notation: 'in', pin: (21 / 64) * 25.4 },
        backJoint: { ...drawer(wished).backJoint, notation: 'in', pin: (3 / 8) * 25.4 },
      }),
    );
    const said = advice.filter(({ at }) => at.at(-1) === 'pin');
    expect(said.map(({ at, says }) => `${at.join('.')}: ${speak(says, 'in')}`)).toEqual([
      'drawers.0.joint.pin: "Buttons": front corners: a pin of 21/64" is .006" less than the cutter removes at this depth: it is made as wide as that',
      'drawers.0.back.joint.pin: "Buttons": back corners: a pin of 3/8" is .003" less than the cutter removes at this depth: it is made as wide as that',
    ]);
  });

  it('never have tails whose sockets the cutter cannot enter, though the groove would be hidden', () => {
    const [only] = laid(inOpening(280, 190, 420, guided())).drawers;
    const tips = only?.choices.map(({ tip }) => tip) ?? [];
    expect(Math.min(...tips)).toBeGreaterThanOrEqual(12.68);
    // Of (189 - 12 - 8.4838 (k - 1)) / k the last at least 12.7 is that of 8 tails; of 9 it is 12.13.
    expect(only?.choices.at(-1)?.tails).toBe(8);
    const byHand = laid(inOpening(280, 190, 420)).drawers[0];
    expect(byHand?.choices.at(-1)?.tails).toBeGreaterThan(8);
  });

  it('are refused a number of tails that it cannot enter, with the nearest that it can', () => {
    const wished = guided();
    const nine = {
      ...wished,
      joint: { ...drawer(wished).joint, spacing: { kind: 'even', tails: 9 } },
    } as const;
    // To hide the groove the lower half pin h grows until h + t - 2.108 is 17: with t = (115.13 - h) / 9 that is 7.1.
    expect(refusals(inOpening(280, 190, 420, nine))).toEqual([
      'drawers.0.joint.tails: "Buttons": front corners: a tail is 12 mm wide; the cutter of 12.7 mm cannot enter its socket, so it must be 12.7 mm or more; use fewer and wider tails, or a cutter of smaller diameter; the nearest that works: 8 tails of 14.7 mm, pins of 8.49 mm, slope 1:7.12, lap 5 mm',
    ]);
  });

  it('are refused listed tails that it cannot enter', () => {
    const tails = [12, 44.03];
    const listed = guided({
      joint: {
        kind: 'lapped',
        pin: 8.5,
        halfPin: { lower: 5.235, upper: 5.235 },
        lap: 5,
        spacing: { kind: 'listed', tails },
      },
    });
    expect(refusals(drawer(listed))[0]).toMatch(
      /^drawers\.0\.joint\.tails\.0: "Buttons": front corners: tail 1 is 12 mm wide; the cutter of 12\.7 mm cannot enter/u,
    );
  });

  it('are refused what the cutter does not reach, with the nearest that it does', () => {
    // A lap of 20 - 14 = 6; 14 mm deep the cutter leaves pins of 12.7 - 28 tan 8° = 8.7649, and two tails of
    // (75 - 6 - 6 - 8.77) / 2 = 27.1 hide the groove with the half pin that was wished.
    const [short] = refusals(drawer(guided({ cutter: { ...CUTTER, length: 14 } })));
    expect(short).toMatch(/: the cutter cuts 14 mm deep; the joint is 15 mm deep; /u);
    expect(short).toMatch(
      /the nearest that works: 2 tails of 27\.\d+ mm, pins of 8\.77 mm, slope 1:7\.12, lap 6 mm$/u,
    );
    // Of a through corner it is the board that must be thinner.
    const through = guided({
      cutter: { ...CUTTER, length: 14 },
      joint: { kind: 'through', halfPin: { lower: 6, upper: 6 }, spacing: free },
    });
    expect(refusals(drawer(through))[0]).toMatch(/slope 1:7\.12, pin board 14 mm$/u);
  });

  it("are refused another slope than the cutter's, with the nearest layout of its own", () => {
    const steep = guided({
      joint: { kind: 'lapped', slope: { run: 4 }, halfPin: { lower: 6, upper: 6 }, lap: 5, spacing: free },
    });
    expect(refusals(drawer(steep))[0]).toMatch(
      /^drawers\.0\.joint\.slope: .*; the nearest that works: \d tails of .* slope 1:7\.12, lap 5 mm$/u,
    );
  });

  it('are refused a back deeper than the cutter cuts, at the cutter and no drawer', () => {
    // Lapped by 10 the front is 10 mm deep, the through back 11.
    const shallow = guided({
      cutter: { ...CUTTER, length: 10.5 },
      joint: { kind: 'lapped', halfPin: { lower: 6, upper: 6 }, lap: 10, spacing: free },
    });
    expect(refusals(drawer(shallow))[0]).toMatch(
      /^cutter\.length: "Buttons": back corners: the cutter cuts 10\.5 mm deep; the joint is 11 mm deep/u,
    );
  });

  it('have no nearest layout where another fault leaves none', () => {
    const short = { ...CUTTER, length: 14 };
    const { joint } = drawer(guided());
    const wrong = (change: Partial<DrawerSpec>) => refusals(drawer(guided({ cutter: short, ...change })));
    for (const lines of [
      // A half pin of 0.5 is too narrow whatever cuts it.
      wrong({ joint: { ...joint, halfPin: { lower: 0.5, upper: 6 } } }),
      // 14 tan 8° = 1.97: a groove that begins 3 mm up shows beside any tail.
      wrong({ groove: { offset: 3, width: 5, depth: 5 } }),
    ]) {
      expect(lines.length).toBeGreaterThan(0);
      expect(lines.filter((line) => line.includes('nearest layout'))).toEqual([]);
    }
  });

  it('have a nearest layout with the number of tails that was wished', () => {
    const wished = (spacing: DrawerSpec['joint']['spacing']) =>
      refusals(
        inOpening(
          280,
          190,
          420,
          guided({
            cutter: { ...CUTTER, length: 14 },
            joint: { kind: 'lapped', halfPin: { lower: 6, upper: 6 }, lap: 5, spacing },
          }),
        ),
      )[0];
    expect(wished({ kind: 'even', tails: 3 })).toMatch(/the nearest that works: 3 tails of /u);
    expect(wished({ kind: 'listed', tails: [30, 30, 30, 50] })).toMatch(
      /the nearest that works: 4 tails of /u,
    );
    expect(wished({ kind: 'even', tails: 7 })).toMatch(/the nearest that works: 7 tails of /u);
  });

  it('give advice on the cutter once for all', () => {
    const tight = { cutter: { ...CUTTER, length: 15.4 } };
    const { advice } = laid(
      inOpening(280, 110, 420, guided({ ...tight, name: 'Buttons' })),
      inOpening(280, 146, 420, guided({ ...tight, name: 'Thread' })),
    );
    expect(advice.filter(({ at }) => at[0] === 'cutter').map(({ says }) => speak(says, 'mm'))).toEqual([
      expect.stringMatching(/^front corners: set 15 mm deep, the cutter has 0\.4 mm/u),
      "saw and chisel the half spaces of the sides' back ends: the cutter would cut 5.15 mm into the sides, beyond the back's edges",
    ]);
  });

  it('hide the groove with its slope, and are refused where that is not enough', () => {
    const low = guided({ groove: { offset: 4, width: 5, depth: 5 } });
    // The lowest that leaves the half pin of 6: with 15 tan 8° = 2.108 and 1 mm to spare, to the hundredth above.
    expect(refusals(drawer(low))[0]).toMatch(/^drawers\.0\.groove\.offset: .*; try 9\.11mm, or /u);
  });
});

describe('bare widths for a cutter', () => {
  const wish = { kind: 'lapped', width: 1, tailBoard: 12, pinBoard: 20, lap: 5, spacing: free } as const;

  it('keep one target within its limits', () => {
    const { joints, family } = value(layOutWidths(wish, [60, 96, 190], { cutter: CUTTER }));
    expect(family.pin).toBeCloseTo(8.4838, 3);
    for (const { tails } of joints)
      for (const { tip } of tails) expect(tip[1] - tip[0]).toBeGreaterThan(12.68);
  });

  it('have the same tails at every width where a pitch is asked for', () => {
    const widths = value(layOutWidths({ ...wish, pin: 9 }, [96, 190], { cutter: CUTTER, pitch: 25.4 }));
    for (const { tails } of widths.joints)
      for (const { tip } of tails) expect(tip[1] - tip[0]).toBeCloseTo(16.4, 9);
    expect(widths.family.spread).toBeCloseTo(1, 9);
  });

  it('aim at the tails of a pitch, which leaves none to choose', () => {
    // Tails of 25.4 - 9 = 16.4 beside pins of 9 are under two pins, and beside pins of 7 those of 18.4 are not.
    const targetWith = (pin: number, cutter: Cutter) => {
      const widths = layOutWidths({ ...wish, pin }, [96, 190], { cutter, pitch: 25.4 });
      return widths.ok ? widths.value.family.target : Number.NaN;
    };
    expect(targetWith(9, CUTTER)).toBeCloseTo(18, 9);
    expect(targetWith(7, { diameter: 11, angle: 8, length: 20 })).toBeCloseTo(18.4, 9);
  });

  it('do not aim at tails that the cutter cannot enter', () => {
    // Of (120 - 6.6 (k + 1)) / k three are 31.2 and four 21.75; of (240 - 6.6 (k + 1)) / k seven are 26.74 and eight
    // 22.58. Four and eight would be nearest to each other, but the cutter enters three and seven only, whose mean, 28.9,
    // is over four pins.
    const steep = { diameter: 25, angle: 21, length: 25 };
    const deep = { ...wish, tailBoard: 20, pinBoard: 30, lap: 6, pin: 6.6 };
    const widths = value(layOutWidths(deep, [120, 240], { cutter: steep }));
    expect(widths.joints.map(({ tails }) => tails.length)).toEqual([3, 7]);
    expect(widths.family.target).toBeCloseTo(26.4, 9);
  });
});
