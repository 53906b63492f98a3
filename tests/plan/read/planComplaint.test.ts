import { describe, expect, it } from 'vitest';
import { firstComplaints, formatPlace, formatPlanComplaint } from '../../../src/plan/read/planComplaint.ts';
import { mm, say } from '../../../src/units/phrase.ts';

describe('a complaint about a plan', () => {
  const complaint = {
    at: ['drawers', 1, 'joint', 'lap'],
    says: say`the lap is ${mm(25.4)}`,
    hint: say`${mm(5.08)}`,
  };

  it('is one line with file, line, column and place', () => {
    expect(formatPlanComplaint('plan.yaml', { line: 12, column: 5, complaint }, 'mm')).toBe(
      'plan.yaml:12:5 drawers[1].joint.lap: the lap is 25.4 mm; try 5.08mm',
    );
  });

  it('shows its lengths in the unit that the maker reads', () => {
    expect(formatPlanComplaint('plan.yaml', { line: 12, column: 5, complaint }, 'in')).toContain(
      'the lap is 1"; try 13/64in',
    );
  });

  it('has no place where it is about the whole plan', () => {
    const whole = { at: [], says: say`the plan is empty` };
    expect(formatPlanComplaint('a.json', { line: 1, column: 1, complaint: whole }, 'mm')).toBe(
      'a.json:1:1 the plan is empty',
    );
  });

  it('puts keys in quotes that could be mistaken for something else', () => {
    expect(formatPlace(['joints', 0, 'wi dth'])).toBe('joints[0]["wi dth"]');
    expect(formatPlace(['a\nb'])).toBe('["a\\nb"]');
    expect(formatPlace(['größe', '5'])).toBe('größe["5"]');
  });
});

describe('of the complaints about a plan', () => {
  it('the first hundred are told, and how many more follow', () => {
    const about = (line: number) => ({ line, column: 1, complaint: { at: [line], says: say`wrong` } });
    const shown = (count: number) =>
      firstComplaints(Array.from({ length: count }, (_, i) => about(count - i))).map((each) =>
        formatPlanComplaint('a', each, 'mm'),
      );
    expect(shown(100)).toHaveLength(100);
    expect(shown(109).slice(98)).toEqual([
      'a:99:1 [99]: wrong',
      'a:100:1 [100]: wrong',
      'a:101:1 9 more faults follow; correct those above, then run the command again',
    ]);
    expect(shown(101)[100]).toContain(' 1 more fault follows; ');
  });
});
