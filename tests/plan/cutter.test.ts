import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/plan/readPlan.ts';
import { layOutPlan } from '../../src/project/readProject.ts';
import { complaintsOf } from './complaintsOf.ts';

const PLAN = `stock: {front: {thickness: 20}, side: {thickness: 11}}
cutter: {diameter: 12.7, angle: 8, length: 20, bush: 16}
drawers:
  - {name: Buttons, opening: {width: 280, height: 110, depth: 420}}
joints:
  - {name: Carcase, kind: through, width: 200, tailBoard: 15, pinBoard: 15}
`;
const cutter = (keys: string): string => PLAN.replace(/^cutter: .*$/mu, `cutter: {${keys}}`);

const planOf = (text: string) => {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan;
};

describe("a plan's cutter", () => {
  it('is what every drawer is cut with, lengths in the unit of the plan', () => {
    const { cutting, drawers } = planOf(PLAN);
    const own = { diameter: 12.7, angle: 8, length: 20 };
    expect(cutting).toEqual({ cutter: own, bush: 16 });
    expect(drawers.map((drawer) => drawer.cutter)).toEqual([own]);
    const inches = cutter('diameter: 1/2in, angle: 8, length: 3/4in, neck: 6, straight: 8, pinBush: 11mm');
    expect(planOf(inches).cutting).toEqual({
      cutter: { diameter: 12.7, angle: 8, length: expect.closeTo(19.05, 9), neck: 6 },
      straight: 8,
      pinBush: 11,
    });
  });

  it('may be left out: then all is cut by hand', () => {
    const { cutting, drawers } = planOf(PLAN.replace(/^cutter: .*\n/mu, ''));
    expect(cutting).toBeUndefined();
    expect(drawers.map((drawer) => 'cutter' in drawer)).toEqual([false]);
  });

  it('gives every corner its slope and its least pin', () => {
    const reading = layOutPlan(PLAN);
    if (!reading.ok) throw new Error('this plan can be made');
    const { set, joints } = reading.value;
    const all = [
      ...set.drawers.flatMap(({ front, back }) => [front, back]),
      ...joints.map(({ joint }) => joint),
    ];
    expect(all).toHaveLength(3);
    for (const { slope, pins, depth } of all) {
      expect(slope.run).toBeCloseTo(1 / Math.tan((8 * Math.PI) / 180), 9);
      for (const { narrow, half } of pins)
        if (!half) expect(narrow[1] - narrow[0]).toBeCloseTo(12.7 - (2 * depth) / slope.run, 9);
    }
  });

  it.each([
    ['angle: 8, length: 20', ['2:1 cutter.diameter: this is missing; it must be a length']],
    [
      'diameter: 2, angle: 8, length: 20',
      ['2:10 cutter.diameter: 2 mm is out of range; it must be 3 mm to 60 mm'],
    ],
    [
      'diameter: 12.7, angle: 90, length: 20',
      ["2:26 cutter.angle: the cutter's angle is 90 degrees; it must be 2.87"],
    ],
    [
      'diameter: 12.7, angle: "8", length: 20',
      ['2:26 cutter.angle: this is "8"; it must be an angle in degrees'],
    ],
    [
      'diameter: 12.7, angle: 8, length: 50',
      ['2:36 cutter.length: a cutter of 12.7 mm at 8 degrees runs to a point'],
    ],
    ['diameter: 12.7, angle: 8, length: 20, neck: 13', ["2:48 cutter.neck: the cutter's neck is 13 mm"]],
    ['diameter: 12.7, angle: 8, length: 20, bush: 12', ['2:48 cutter.bush: the guide bush is 12 mm outside']],
    [
      'diameter: 12.7, angle: 8, length: 20, straight: 8, pinBush: 7',
      [
        '2:61 cutter.pinBush: the guide bush is 7 mm outside; the straight cutter of 8 mm must pass through it',
      ],
    ],
    ['diameter: 12.7, angle: 8, length: 20, bushing: 16', ['2:48 cutter.bushing: ']],
  ])('is refused at its own key: {%s}', (keys, says) => {
    const told = complaintsOf(cutter(keys));
    expect(told).toHaveLength(says.length);
    says.forEach((text, i) => {
      expect(told[i]).toContain(text);
    });
  });

  it('is complained of at the top of the plan, whichever corner exceeds its limit', () => {
    const reading = layOutPlan(cutter('diameter: 12.7, angle: 8, length: 14'));
    if (reading.ok) throw new Error('the cutter is too short for this plan');
    expect(reading.complaints.map(({ line, complaint }) => [line, complaint.at.join('.')])).toEqual([
      [2, 'cutter.length'],
      [2, 'cutter.length'],
    ]);
  });
});
