import { describe, expect, it } from 'vitest';
import { checkSizes } from '../../../src/joint/checkSizes.ts';
import type { JointSpec } from '../../../src/joint/jointSpec.ts';
import { KINDS, kindOf } from '../../../src/joint/kinds/kinds.ts';
import { defaultShoulder } from '../../../src/joint/kinds/mitredShoulder.ts';
import { speak } from '../../../src/units/phrase.ts';
import { told } from '../../value.ts';
import { jointOf } from '../told.ts';

/** 120 = 8 + 10 + 35 + 6 + 35 + 10 + 16, tails 15 long that lose 3 on either side. */
const common = {
  width: 120,
  tailBoard: 15,
  slope: { run: 5 },
  pin: 6,
  halfPin: { lower: 10, upper: 10 },
  shoulder: 'both',
  shoulderWidth: 12,
  spacing: { kind: 'even', tails: 2 },
} as const;
const through: JointSpec = { ...common, kind: 'through', pinBoard: 15 };
const lapped: JointSpec = { ...common, kind: 'lapped', pinBoard: 20, lap: 5, mitre: 'corner' };

describe('a mitred shoulder', () => {
  it('leaves the joint the width between: 120 = 12 + 10 + 35 + 6 + 35 + 10 + 12', () => {
    for (const spec of [through, lapped]) {
      const { tails, pins, shoulder, width } = jointOf(spec);
      expect(shoulder).toEqual({ lower: 12, upper: 12 });
      expect(width).toBe(120);
      expect(tails).toEqual([
        { tip: [22, 57], base: [25, 54] },
        { tip: [63, 98], base: [66, 95] },
      ]);
      expect(pins.map(({ narrow }) => narrow)).toEqual([
        [12, 22],
        [57, 63],
        [98, 108],
      ]);
    }
  });

  it('is at the edge that is wished, as wide as a quarter of the tail board, or the lap', () => {
    const at = (shoulder: 'lower' | 'upper') => {
      const { shoulderWidth: _, ...rest } = { ...through, shoulder };
      return jointOf(rest).shoulder;
    };
    // A quarter of 15 to the half millimetre is 4.
    expect([at('lower'), at('upper')]).toEqual([
      { lower: 4, upper: 0 },
      { lower: 0, upper: 4 },
    ]);
    expect(defaultShoulder({ tailBoard: 11, pinBoard: 20 }, 5)).toBe(5);
    expect(defaultShoulder({ tailBoard: 11, pinBoard: 20 }, 2)).toBe(3);
    expect(defaultShoulder({ tailBoard: 11, pinBoard: 20, notation: 'in/32' }, 2)).toBe(25.4 / 8);
    expect(defaultShoulder({ tailBoard: 8, pinBoard: 20 })).toBe(3);
  });

  it('takes the width that covers a groove at the lower edge, unless its width is given', () => {
    const { shoulderWidth: _, ...open } = through;
    expect(jointOf({ ...open, lowerShoulder: 13 }).shoulder).toEqual({ lower: 13, upper: 4 });
    expect(jointOf({ ...through, lowerShoulder: 13 }).shoulder).toEqual({ lower: 12, upper: 12 });
  });

  it('meets at 45 degrees in equal boards, in boards of 15 and 20 at the angle whose tangent is 3 / 4', () => {
    expect(jointOf(through).mitre?.degrees).toBeCloseTo(45, 9);
    // By a table of tangents: tan 36.87 = 0.75.
    expect(jointOf(lapped).mitre?.degrees).toBeCloseTo(36.87, 2);
    const { shoulder: _, ...plain } = through;
    expect(jointOf(plain)).not.toHaveProperty('mitre');
    expect(jointOf(plain).shoulder).toEqual({ lower: 0, upper: 0 });
  });

  it('asks how boards of unequal thickness are mitred, cannot be proud, and is no wider than its board allows', () => {
    const { mitre: _, ...asked } = lapped as JointSpec & { mitre?: 'corner' };
    expect(told(checkSizes(asked))).toEqual([
      'mitre: a tail board of 15 mm and a pin board of 20 mm do not meet at 45 degrees; say how they are mitred; try corner, or make both boards equally thick',
    ]);
    expect(told(checkSizes({ ...through, proud: 0.5 }))).toEqual([
      'proud: at a mitred shoulder the tail board ends at the corner, so it cannot be proud of the pins; remove it, or the shoulder',
    ]);
    // A base of 3 and two half pins of 1 must be left of 120.
    expect(told(checkSizes({ ...through, shoulder: 'upper', shoulderWidth: 116 }))).toEqual([
      'shoulderWidth: the mitred shoulder is 116 mm; it must be 1 mm to 115 mm',
    ]);
    expect(told(checkSizes({ ...through, shoulderWidth: 58 }))).toEqual([
      'shoulderWidth: the mitred shoulder is 58 mm; it must be 1 mm to 57.5 mm',
    ]);
    expect(checkSizes({ ...through, shoulder: 'lower', shoulderWidth: 1 })).toEqual([]);
  });

  it('is refused of a double-lapped corner, and at one edge of a secret-mitred one', () => {
    const boards = { tailBoard: 18, pinBoard: 18 };
    expect(told(KINDS['double-lapped'].check({ ...boards, shoulder: 'lower' }))).toEqual([
      'shoulder: a double-lapped joint has no mitred shoulder; choose a through or lapped joint, or remove it',
    ]);
    expect(told(KINDS['secret-mitred'].check({ ...boards, shoulder: 'upper' }))).toEqual([
      'shoulder: a secret-mitred joint has its shoulders at both edges, not only at the upper one; try both',
    ]);
    expect(KINDS['secret-mitred'].check({ ...boards, shoulder: 'both' })).toEqual([]);
  });

  it('is drawn right over the ends and down the faces; outside nothing is cut away there, and no baseline runs', () => {
    for (const spec of [through, lapped]) {
      const joint = jointOf(spec);
      const { tail, pin } = kindOf(joint).marks(joint);
      for (const { surface, lines, waste, reach } of [...tail, ...pin]) {
        const shoulders = lines.at(-1);
        expect(shoulders?.role).toBe('square');
        expect(shoulders?.paths.map((path) => path.map(([, u]) => u))).toEqual([
          [12, 12],
          [108, 108],
        ]);
        const heights = waste.flat().map(([, u]) => u);
        const [least, most] = [Math.min(...heights), Math.max(...heights)];
        expect(surface === 'outside' ? [least >= 12, most <= 108] : [least === 0, most === 120]).toEqual([
          true,
          true,
        ]);
        const baseline = lines.find(({ role }) => role === 'baseline')?.paths[0];
        if (baseline !== undefined)
          expect(baseline).toEqual((surface === 'outside' ? [12, 108] : [0, 120]).map((u) => [reach, u]));
      }
    }
  });

  it('cuts back a lapped corner’s tails by the lap, on a tail board of full length', () => {
    const joint = jointOf(lapped);
    expect(joint.setBack).toBe(0);
    expect(
      kindOf(joint)
        .gauges(joint)
        .map(({ name, on, length }) => [name, on, length]),
    ).toEqual([
      ['tailBoard', 'both faces', 20],
      ['tailBoardCutBack', 'both faces', 5],
      ['pinBoardFace', 'inside face', 15],
      ['pinBoardEnd', 'end', 15],
    ]);
    const [inside, end] = kindOf(joint).marks(joint).tail;
    expect(inside?.lines.find(({ role }) => role === 'slope')?.paths[0]).toEqual([
      [20, 25],
      [5, 22],
    ]);
    // The end between the shoulders is sawn off before the tails are marked.
    expect(end?.waste[1]).toEqual([
      [0, 12],
      [0, 108],
      [15, 108],
      [15, 12],
    ]);
    // At the shoulders all of the pin board's end is mitred, its lap too.
    expect(kindOf(joint).marks(joint).pin[1]?.waste[0]).toEqual([
      [0, 0],
      [0, 12],
      [20, 12],
      [20, 0],
    ]);
  });

  it('has an order of work: its lines first, its mitres pared last', () => {
    const work = (spec: JointSpec) =>
      kindOf(spec)
        .work(jointOf(spec), { tail: 'side', pin: 'front' })
        .map((phrase) => speak(phrase, 'mm'));
    expect(work(through)[0]).toBe(
      'Knife the shoulder’s line 12 mm in from the edges, right over both ends and down the faces.',
    );
    expect(work(through).at(-1)).toContain('along a block of 45°');
    expect(work(lapped)).toHaveLength(work(through).length + 1);
    expect(work(lapped)[2]).toBe(
      'Saw the side’s end back 5 mm between the shoulders only: the tails end there, behind the lap.',
    );
    const { shoulder: _, ...plain } = through;
    expect(work(plain)).toEqual([]);
  });

  it('leaves out of its order of work what a router has cut', () => {
    const work = (spec: JointSpec) =>
      kindOf(spec)
        .work(jointOf(spec), { tail: 'side', pin: 'front', routed: true })
        .map((phrase) => speak(phrase, 'mm'))
        .join(' ');
    for (const spec of [through, lapped]) expect(work(spec)).not.toMatch(/Scribe the pins|Saw and chop\.$/mu);
    expect(work(through)).toContain('Saw and chop the half space beside it.');
    // Behind a lap the tails end before the board does: a cutter from face to face would meet the shoulders.
    expect(work(lapped)).toContain('Scribe the tails from the sockets, or use the templates.');
    expect(work(lapped)).toContain('Saw and chop the tails.');
  });

  it('ends its uprights where it begins, seen from the side', () => {
    const joint = jointOf({ ...lapped, shoulder: 'lower' });
    expect(kindOf(joint).sideView(joint)).toMatchObject({ reach: 20, uprights: [20, 5], span: [12, 120] });
  });
});
