import { describe, expect, it } from 'vitest';
import type { JointSpec } from '../../src/joint/jointSpec.ts';
import { adviseRail, checkRail, railLength, railWork, type TopRail } from '../../src/joint/topRail.ts';
import { speak } from '../../src/units/phrase.ts';
import { told } from '../value.ts';
import { jointOf } from './told.ts';

/** Tails of 19 - 6 = 13; at 1:8 a tail of 60 - 2 x 10 = 40 loses 2 x 13 / 8 = 3.25. */
const spec: JointSpec = {
  kind: 'lapped',
  width: 60,
  tailBoard: 20,
  pinBoard: 19,
  lap: 6,
  halfPin: { lower: 10, upper: 10 },
  spacing: { kind: 'even', tails: 1 },
};
const rail: TopRail = { between: 574, sideWidth: 430, setBack: 0 };

describe('a rail over the drawers', () => {
  it('is as long as it is from side to side and its two tails', () => {
    expect(railLength(rail, jointOf(spec))).toBe(574 + 2 * 13);
  });

  it('must not be wider than the sides behind which, or in front of which, nothing holds it', () => {
    const wrong = (change: Partial<TopRail>) => told(checkRail({ ...rail, ...change }, jointOf(spec), spec));
    expect(wrong({})).toEqual([]);
    expect(wrong({ setBack: 370 })).toEqual([]);
    expect(wrong({ setBack: 371 })).toEqual([
      "width: a rail 60 mm wide, 371 mm behind the sides' front edges, is wider than the sides, which are 430 mm from front to back; try 59mm",
    ]);
    expect(wrong({ sideWidth: 50 })).toEqual([
      'width: a rail 60 mm wide is wider than the sides, which are 50 mm from front to back; try 50mm',
    ]);
  });

  it('must have a tail that the narrowest chisel gets into at its base', () => {
    // 26 - 2 x 10 = 6 at the tip, 6 - 3.25 = 2.75 at the base; 26.5 leaves 3.25.
    const narrow = (width: number, chisel: number) => {
      const wish: JointSpec = { ...spec, width, chisel };
      return told(checkRail(rail, jointOf(wish), wish));
    };
    expect(narrow(26.5, 3)).toEqual([]);
    expect(narrow(26.5, 4)).toEqual([
      "width: the rail's tail is 3.25 mm wide at its base, so the narrowest chisel, 4 mm wide, does not enter its socket; use a wider rail, narrower half pins or a gentler slope",
    ]);
  });

  it('is advised against where little of the sides is left in front of its tails', () => {
    const advice = (lower: number, setBack = 0) =>
      told(adviseRail({ ...rail, setBack }, jointOf({ ...spec, halfPin: { lower, upper: 10 } })));
    expect(advice(6)).toEqual([]);
    expect(advice(4, 2)).toEqual([]);
    expect(advice(4, 1)).toEqual([
      "halfPin: only 5 mm of the sides are left in front of the rail's tails: they may break as the sockets are chopped; try 5mm",
    ]);
  });

  it('is let in from above, tails first, by its own measures', () => {
    const words = (setBack: number) =>
      railWork({ ...rail, setBack }, jointOf(spec)).map((phrase) => speak(phrase, 'mm'));
    expect(words(0)[0]).toBe(
      'Cut the rail 600 mm long: 574 mm between its shoulders, and a tail of 13 mm at each end.',
    );
    expect(words(0).join(' ')).toContain('Gauge the inside faces 20 mm down from the top ends.');
    expect(words(0).join(' ')).not.toContain('behind the sides’ front edges');
    expect(words(3).join(' ')).toContain('on the sides’ top ends, 3 mm behind the sides’ front edges.');
    const routed = railWork({ ...rail, setBack: 3 }, jointOf(spec), true).map((each) => speak(each, 'mm'));
    expect(routed.join(' ')).toMatch(
      /with the router, at its settings\. On the sides every measure starts 3 mm behind/u,
    );
    expect(routed.join(' ')).not.toContain('Chop');
    // As the house has it, one instruction is at most 20 words.
    for (const text of words(3))
      for (const one of text.split(/[.:;] /u)) expect(one.split(' ').length).toBeLessThanOrEqual(20);
  });
});
