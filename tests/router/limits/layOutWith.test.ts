import { describe, expect, it } from 'vitest';
import { layOut } from '../../../src/joint/layOut.ts';
import { layOutForCutter } from '../../../src/router/limits/layOutForCutter.ts';
import { layOutWith, type Tooling } from '../../../src/router/limits/layOutWith.ts';
import { speak } from '../../../src/units/phrase.ts';
import { value } from '../../value.ts';
import { CUTTER, LAPPED, THROUGH } from '../example.ts';

const { pin: _, halfPin: __, ...FREE } = LAPPED;

const told = (tooling: Tooling, spec = LAPPED): string[] => {
  const result = layOutWith(spec, tooling);
  return result.ok ? [] : result.complaints.map(({ at, says }) => `${at.join('.')}: ${speak(says, 'mm')}`);
};

describe('layOutWith', () => {
  it('is hand work without tools, and within the limits of a cutter with one', () => {
    expect(layOutWith(LAPPED, {})).toEqual(layOut(LAPPED));
    expect(layOutWith(LAPPED, { cutter: CUTTER })).toEqual(layOutForCutter(LAPPED, CUTTER));
  });

  it("keeps a pitch with the cutter's least pin between", () => {
    const joint = value(layOutWith(FREE, { cutter: CUTTER, pitch: 25.4 }));
    const [first, second] = joint.tails;
    expect((second?.tip[0] ?? 0) - (first?.tip[0] ?? 0)).toBeCloseTo(25.4, 9);
    expect((second?.tip[0] ?? 0) - (first?.tip[1] ?? 0)).toBeCloseTo(
      12.7 - 30 * Math.tan((8 * Math.PI) / 180),
      9,
    );
  });

  it('refuses a pitch whose tails the cutter cannot enter', () => {
    expect(told({ cutter: CUTTER, pitch: 20 }, FREE)).toEqual([
      'pitch: a pitch of 20 mm leaves tails of 11.52 mm beside pins of 8.48 mm; it must be 21.19 mm to 126.48 mm here',
    ]);
    // By hand a tail needs only its base of 3 mm and 15 / 8 on either side.
    expect(told({ pitch: 20 }, FREE)).toEqual([]);
  });

  it('keeps a pitch of narrower tails where another cutter cuts the sockets, as in a through corner', () => {
    // Pins of 12.7 - 32 tan 8° = 8.2, so tails of 11.8; (150 - 8.2) / 20 = 7.09 of them.
    const { pin: _, ...through } = THROUGH;
    const joint = layOutWith(through, { cutter: CUTTER, pitch: 20 });
    expect(joint.ok && joint.value.tails.length).toBe(7);
  });

  it('refuses a pin that the cutter would cut away, pitch or not', () => {
    const narrow = { ...FREE, pin: 5 };
    expect(told({ cutter: CUTTER }, narrow)[0]).toMatch(/^pin: /u);
    expect(told({ cutter: CUTTER, pitch: 25.4 }, narrow)[0]).toMatch(/^pin: /u);
  });

  it('keeps a pitch where a pin is made a little wider, and says so', () => {
    const spec = { ...FREE, notation: 'in', pin: (21 / 64) * 25.4 } as const;
    const joint = value(layOutWith(spec, { cutter: CUTTER, pitch: 25.4 }));
    const [first, second] = joint.tails;
    expect((second?.tip[0] ?? 0) - (first?.tip[0] ?? 0)).toBeCloseTo(25.4, 9);
    expect(joint.advice.map(({ at }) => at)).toContainEqual(['pin']);
  });

  it("refuses a slope that is not the cutter's, pitch or not", () => {
    const steep = { ...FREE, slope: { run: 4 } };
    expect(told({ cutter: CUTTER }, steep)[0]).toMatch(/^slope: /u);
    expect(told({ cutter: CUTTER, pitch: 25.4 }, steep)[0]).toMatch(/^slope: /u);
  });

  it('checks the sizes before the pitch', () => {
    expect(told({ pitch: 25.4 }, { ...FREE, width: 0 })).toEqual([
      "width: the boards' width is 0 mm; it must be 5 mm to 5000 mm",
    ]);
  });
});
