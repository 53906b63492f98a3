import { describe, expect, it } from 'vitest';
import { formatPlanComplaint } from '../../src/plan/read/planComplaint.ts';
import { readPlan } from '../../src/plan/readPlan.ts';
import { readProject } from '../../src/project/readProject.ts';
import { told } from '../value.ts';
import { complaintsOf } from './complaintsOf.ts';

const CABINET = `cabinet: {width: 574, height: 200, depth: 420, rail: 18, rows: [Buttons, Cloth]}
stock: {front: {thickness: 20}, side: {thickness: 11}}
`;
const planOf = (keys: string, before = ''): string =>
  `${before}joints:\n  - {name: Top rail, kind: lapped, width: 60, tailBoard: 20, pinBoard: 19, ${keys}}\n`;
const GIVEN = 'rail: {between: 574, sideWidth: 430}';

const cornerOf = (text: string) => {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(complaintsOf(text).join('\n'));
  return reading.plan.joints[0];
};

/** What stands against a plan once it is laid out, and what is advised on its corner. */
const laidOut = (text: string) => {
  const reading = readProject(text);
  return reading.ok
    ? { joint: reading.value.joints[0]?.joint, wrong: [] }
    : { wrong: reading.complaints.map((each) => formatPlanComplaint('plan.yaml', each, 'mm')) };
};

describe('a rail over the drawers in a plan', () => {
  it('has one tail at each end, and its sizes', () => {
    const { spec, rail } = cornerOf(planOf(GIVEN)) ?? {};
    expect(rail).toEqual({ between: 574, sideWidth: 430, setBack: 0 });
    expect(spec).toMatchObject({ kind: 'lapped', width: 60, spacing: { kind: 'even', tails: 1 } });
    expect(spec).not.toHaveProperty('rail');
    // A tail that a hand has moved on the page is listed.
    expect(cornerOf(planOf(`tails: [40], halfPin: [10, 10], ${GIVEN}`))?.spec.spacing.kind).toBe('listed');
  });

  it('is as long between its shoulders as the cabinet of the plan is wide inside', () => {
    expect(cornerOf(planOf(`${GIVEN.replace('}', ', setBack: 20}')}`, CABINET))?.rail).toEqual({
      between: 574,
      sideWidth: 430,
      setBack: 20,
    });
    expect(complaintsOf(planOf('rail: {between: 580, sideWidth: 430}', CABINET))[0]).toContain(
      'joints[0].rail.between: the rail is 580 mm between its shoulders, and the cabinet is 574 mm wide inside; try 574mm',
    );
    expect(complaintsOf(planOf('rail: {}'))).toHaveLength(2);
  });

  it('takes slope and half pins from the plan’s joint, and no shoulder', () => {
    const joint = 'joint: {slope: "1:6", halfPin: 7, shoulder: lower, shoulderWidth: 9}\n';
    expect(cornerOf(planOf(GIVEN, joint))?.spec).toMatchObject({
      slope: { run: 6 },
      halfPin: { lower: 7, upper: 7 },
    });
    expect(cornerOf(planOf(GIVEN, joint))?.spec).not.toHaveProperty('shoulder');
  });

  it('is refused with more tails than one, spaced, shouldered or in another kind of corner', () => {
    const wrong = (keys: string) => complaintsOf(planOf(`${keys}, ${GIVEN}`));
    expect(wrong('tails: 2')).toEqual([
      'plan.yaml:2:76 joints[0].tails: a rail has one tail at each end, not 2; try 1',
    ]);
    expect(wrong('tails: [15, 15]')).toHaveLength(1);
    expect(wrong('spacing: closer-edges')[0]).toContain('joints[0].spacing: a rail has one tail at each end');
    expect(wrong('graded: {ratio: 0.9}')[0]).toContain('joints[0].graded: a rail has one tail');
    expect(wrong('shoulder: upper')[0]).toContain("joints[0].shoulder: a rail's shoulders are square");
    expect(complaintsOf(planOf(GIVEN).replace('lapped', 'through'))).toEqual([
      "plan.yaml:2:22 joints[0].kind: a rail over the drawers is let into the sides' top ends behind a lap, so its corners are not through; try lapped",
    ]);
  });

  it('is refused beside a tenoned rail over the top row of the same cabinet, but not at its back', () => {
    const cabinet = CABINET.replace('rail: 18,', 'rail: 18, rails: {top: 20},');
    expect(complaintsOf(planOf(GIVEN, cabinet))[0]).toContain(
      'joints[0].rail: the cabinet has a rail over its top row already (cabinet.rails.top), with tenons; remove one of them',
    );
    expect(
      cornerOf(planOf('rail: {between: 574, sideWidth: 430, setBack: 300}', cabinet))?.rail?.setBack,
    ).toBe(300);
  });

  it('is refused where it is wider than the sides, its lap leaves too little, or no chisel enters its socket', () => {
    const wrong = (keys: string) => laidOut(planOf(keys)).wrong;
    expect(wrong('rail: {between: 574, sideWidth: 55}')).toHaveLength(1);
    expect(wrong(`lap: 17, ${GIVEN}`)[0]).toContain('lap');
    expect(wrong(`halfPin: 26, chisel: 6, ${GIVEN}`)[0]).toContain('chisel');
  });

  it('is advised on as what it is: not that more tails would hold a wide one, nor that its boards are swapped', () => {
    const wide = planOf(GIVEN).replace('width: 60', 'width: 180');
    expect(laidOut(wide).joint).toMatchObject({ tails: [{ tip: [10, 170] }], advice: [], alternatives: [] });
    expect(told(laidOut(planOf(`halfPin: 3, ${GIVEN}`)).joint?.advice ?? [])[0]).toContain(
      'only 3 mm of the sides',
    );
  });
});
