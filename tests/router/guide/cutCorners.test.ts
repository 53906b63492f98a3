import { describe, expect, it } from 'vitest';
import { cutCorners } from '../../../src/router/guide/cutCorners.ts';
import { speak } from '../../../src/units/phrase.ts';
import { value } from '../../value.ts';
import { CUTTER, cutOf, LAPPED, THROUGH } from '../example.ts';

const front = { name: 'Buttons front', joint: cutOf(LAPPED).joint };
const back = { name: 'Buttons back', joint: cutOf(THROUGH).joint };

const cutsOf = (...given: Parameters<typeof cutCorners>) => value(cutCorners(...given));
const refusal = (...given: Parameters<typeof cutCorners>): string[] => {
  const cuts = cutCorners(...given);
  return cuts.ok ? [] : cuts.complaints.map(({ at, says }) => `${at.join('.')}: ${speak(says, 'mm')}`);
};

describe('cutCorners', () => {
  it('cuts nothing without a cutter', () => {
    expect(cutsOf([front, back], undefined).size).toBe(0);
  });

  it('cuts every corner, with half spaces by hand only where its tail board extends beyond', () => {
    const overhang = { lower: true, upper: false };
    const cuts = cutsOf([front, { ...back, overhang }], { cutter: CUTTER, bush: 16 });
    expect([...cuts.keys()]).toEqual([front.joint, back.joint]);
    const counts = (joint: typeof front.joint) =>
      cuts.get(joint)?.guided.passes.map(({ length }) => length > 0);
    // Three tails have two half spaces and two whole ones.
    expect(counts(front.joint)).toEqual([true, true, true, true]);
    expect(counts(back.joint)).toEqual([false, true, true, true]);
  });

  it('names the corner that a tool will not do for, where it is one of several', () => {
    const tools = { cutter: CUTTER, straight: 90 };
    const [alone] = refusal([back], tools);
    expect(alone).toMatch(/^cutter\.straight: /u);
    expect(alone).not.toContain('Buttons');
    // The lapped front takes no straight cutter.
    expect(refusal([front, back], tools)).toEqual([
      alone?.replace('cutter.straight: ', 'cutter.straight: "Buttons back": '),
    ]);
  });
});
