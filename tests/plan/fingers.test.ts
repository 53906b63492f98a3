import { describe, expect, it } from 'vitest';
import { readPlan } from '../../src/plan/readPlan.ts';
import { starterPlan } from '../../src/plan/starterPlan.ts';
import { layOutPlan } from '../../src/project/readProject.ts';
import { sentence } from '../../src/units/complaint.ts';
import { complaintsOf } from './complaintsOf.ts';

const PLAN = `stock: {front: {thickness: 20}, side: {thickness: 11}}
cutter: {diameter: 12.7, angle: 8, length: 20, bush: 16}
fingers: {together: 14}
joint: {lap: 5}
drawers:
  - {name: Ribbon, opening: {width: 280, height: 110, depth: 420}}
`;
const fingers = (keys: string): string => PLAN.replace(/^fingers: .*$/mu, `fingers: {${keys}}`);

const planOf = (text: string) => {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan;
};

/** What is wrong once the plan is set out. */
const wrongWith = (text: string): string[] => {
  const reading = layOutPlan(text);
  return reading.ok
    ? []
    : reading.complaints.map(
        ({ line, complaint }) => `${line} ${complaint.at.join('.')}: ${sentence(complaint, 'mm')}`,
      );
};

describe("a plan's fingers", () => {
  it("have the cutter's bush unless they have their own, and guide every drawer", () => {
    expect(planOf(PLAN).cutting?.fingers).toEqual({ together: 14, bush: 16 });
    const own = planOf(fingers('together: 14, bush: 17, pairs: 8, bar: 600'));
    expect(own.cutting?.fingers).toEqual({ together: 14, bush: 17, pairs: 8, bar: 600 });
    expect(own.cutting?.bush).toBe(16);
    expect(own.drawers.map((drawer) => drawer.fingers)).toEqual([own.cutting?.fingers]);
  });

  it('are asked for few spacers under family', () => {
    const asked = PLAN.replace('joint:', 'family: {spacers: 2, within: 0.2, halfPins: [5, 8]}\njoint:');
    expect(planOf(asked).spacers).toEqual({ spacers: 2, within: 0.2, halfPins: { least: 5, most: 8 } });
    expect(planOf(PLAN).spacers).toBeUndefined();
  });

  it('are those of the starter plan, with the # taken away', () => {
    for (const unit of ['mm', 'in'] as const) {
      const taken = starterPlan(unit).replace(/^# (?=(?:cutter|fingers): \{|family: \{spacers)/gmu, '');
      expect(complaintsOf(taken)).toEqual([]);
      expect(planOf(taken).cutting?.fingers?.pairs).toBe(10);
    }
  });

  it.each([
    ['together: -2', '3:21 fingers.together: -2 mm is out of range; it must be 1 mm to 200 mm'],
    ['bush: 16', '3:1 fingers.together: this is missing; it must be a length'],
    [
      'together: 14, bush: 12',
      '3:29 fingers.bush: the guide bush is 12 mm outside; the dovetail cutter of 12.7 mm',
    ],
    ['together: 14, pairs: 0', '3:30 fingers.pairs: 0 is out of range; it must be 1 to 1000'],
    [
      'together: 14, bar: 10',
      '3:28 fingers.bar: the bar is 10 mm long; one pair of fingers takes 14 mm of it',
    ],
    [
      'together: 14, through: {channel: 26, taper: 14}',
      '3:53 fingers.through.taper: fingers tapered by 14 degrees do not guide pins for a cutter of 8 degrees',
    ],
    ['together: 14, lapped: 30', '3:33 fingers.lapped: this is 30; it must be written {channel: 30}'],
  ])('are refused at their own key: {%s}', (keys, says) => {
    const told = complaintsOf(fingers(keys));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(says.slice(says.indexOf(' ')));
  });

  it('are refused without a cutter, and without a bush', () => {
    expect(complaintsOf(PLAN.replace(/^cutter: .*\n/mu, ''))).toEqual([
      'plan.yaml:2:1 fingers: fingers guide a dovetail cutter, and the plan names none; give one: cutter: {diameter: 12.7mm, angle: 8, length: 20mm}, or remove them',
    ]);
    expect(complaintsOf(PLAN.replace(', bush: 16', ''))).toEqual([
      'plan.yaml:3:1 fingers.bush: the guide bush that runs between the fingers is missing; try 16mm',
    ]);
  });

  it('are complained of at the top of the plan, whichever corner is too long for their bar', () => {
    const reading = layOutPlan(fingers('together: 14, bar: 60'));
    expect(reading.ok).toBe(true);
    expect(wrongWith(PLAN.replace('joint:', 'family: {spacers: 0}\njoint:'))).toEqual([
      '4 family.spacers: the front corners cannot do with 0 different spacers: not every tail can be just as wide as its fingers; try 1, or wish for wider half pins, which may then move further',
    ]);
  });

  it.each([
    ['family: {spacers: 9}', 'family.spacers: 9 is out of range; it must be 0 to 6'],
    [
      'family: {halfPins: [8, 5]}',
      'family.halfPins: the least, 8 mm, is more than the most, 5 mm; try [5mm, 8mm]',
    ],
    ['family: {halfPins: 5}', 'family.halfPins: this is 5; it must be two widths, [least, most]'],
  ])('are not asked for what cannot be: %s', (family, says) => {
    const told = complaintsOf(PLAN.replace('joint:', `${family}\njoint:`));
    expect(told).toHaveLength(1);
    expect(told[0]).toContain(says);
  });
});
