import { describe, expect, it } from 'vitest';
import { layOutSet } from '../../src/drawer/layOutSet.ts';
import { layOutWidths } from '../../src/drawer/layOutWidths.ts';
import type { DrawerSpec } from '../../src/drawer/spec.ts';
import type { Cutter } from '../../src/guided/cutter.ts';
import { speak } from '../../src/units/phrase.ts';
import { drawer, inOpening } from './chest.ts';

const CUTTER: Cutter = { diameter: 12.7, angle: 8, length: 20 };
const free = { kind: 'even' } as const;
const guided = (change: Partial<DrawerSpec> = {}): Partial<DrawerSpec> => ({
  cutter: CUTTER,
  joint: { kind: 'lapped', halfPin: { lower: 6, upper: 6 }, lap: 5, spacing: free },
  backJoint: { halfPin: { lower: 6, upper: 6 }, spacing: free },
  ...change,
});

const laid = (...specs: DrawerSpec[]) => {
  const set = layOutSet(specs);
  if (!set.ok) throw new Error(JSON.stringify(set.complaints));
  return set.value;
};

const refusals = (...specs: DrawerSpec[]): string[] => {
  const set = layOutSet(specs);
  return set.ok
    ? []
    : set.complaints.map(
        ({ at, says, hint }) => `${at.join('.')}: ${speak(says, 'mm')}; try ${speak(hint ?? [], 'mm')}`,
      );
};

describe('drawers cut with a router', () => {
  it('have pins as wide as the cutter asks at either depth, and its slope', () => {
    const [only] = laid(inOpening(280, 146, 420, guided())).drawers;
    // 12.7 - 2 d tan 8°, 15 mm deep at the front and 11 at the back.
    expect(only?.front.pins[1]?.narrow[1]).toBeCloseTo((only?.front.pins[1]?.narrow[0] ?? 0) + 8.4838, 3);
    expect(only?.back.pins[1]?.narrow[1]).toBeCloseTo((only?.back.pins[1]?.narrow[0] ?? 0) + 9.6081, 3);
    expect(only?.front.slope.run).toBeCloseTo(7.1154, 3);
  });

  it('never take tails that the cutter cannot enter, though the groove would be hidden', () => {
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
      'drawers.0.joint.tails: "Buttons": front corners: a tail is 12 mm at its tip; the cutter of 12.7 mm cannot enter its socket, so it must be 12.7 mm or more; try fewer and wider tails, or a cutter of smaller diameter; the nearest layout that works: 8 tails of 14.7 mm, pins of 8.49 mm, slope 1:7.12, lap 5 mm',
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
      /^drawers\.0\.joint\.tails\.0: "Buttons": front corners: tail 1 is 12 mm at its tip; the cutter of 12\.7 mm cannot enter/u,
    );
  });

  it('say of the cutter once what they would all say', () => {
    const tight = { cutter: { ...CUTTER, length: 15.4 } };
    const { advice } = laid(
      inOpening(280, 110, 420, guided({ ...tight, name: 'Buttons' })),
      inOpening(280, 146, 420, guided({ ...tight, name: 'Thread' })),
    );
    expect(advice.filter(({ at }) => at[0] === 'cutter').map(({ says }) => speak(says, 'mm'))).toEqual([
      expect.stringMatching(/^front corners: set 15 mm deep, the cutter has 0\.4 mm/u),
    ]);
  });

  it('hide the groove with its slope, and say where that is not enough', () => {
    const low = guided({ groove: { offset: 4, width: 5, depth: 5 } });
    // The lowest that helps: a half pin of 1, 15 tan 8° = 2.108 and 1 mm to spare, to the hundredth above.
    expect(refusals(drawer(low))[0]).toMatch(
      /^drawers\.0\.groove\.offset: .*; try a groove offset of at least 4\.11 mm/u,
    );
  });
});

describe('bare widths for a cutter', () => {
  const wish = { kind: 'lapped', width: 1, tailBoard: 12, pinBoard: 20, lap: 5, spacing: free } as const;

  it('keep one target within its limits', () => {
    const widths = layOutWidths(wish, [60, 96, 190], { cutter: CUTTER });
    if (!widths.ok) throw new Error(JSON.stringify(widths.complaints));
    const { joints, family } = widths.value;
    expect(family.pin).toBeCloseTo(8.4838, 3);
    for (const { tails } of joints)
      for (const { tip } of tails) expect(tip[1] - tip[0]).toBeGreaterThan(12.68);
  });

  it('have the same tails at every width where a pitch is asked for', () => {
    const widths = layOutWidths({ ...wish, pin: 9 }, [96, 190], { cutter: CUTTER, pitch: 25.4 });
    if (!widths.ok) throw new Error(JSON.stringify(widths.complaints));
    for (const { tails } of widths.value.joints)
      for (const { tip } of tails) expect(tip[1] - tip[0]).toBeCloseTo(16.4, 9);
    expect(widths.value.family.spread).toBeCloseTo(1, 9);
  });
});
