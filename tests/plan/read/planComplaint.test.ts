import { describe, expect, it } from 'vitest';
import { formatPlace, formatPlanComplaint } from '../../../src/plan/read/planComplaint.ts';
import { mm, say } from '../../../src/units/phrase.ts';

describe('a complaint about a plan', () => {
  const complaint = {
    at: ['drawers', 1, 'joint', 'lap'],
    says: say`the lap is ${mm(25.4)}`,
    hint: say`${mm(5.08)}`,
  };

  it('is one line with file, line, column and place', () => {
    expect(formatPlanComplaint('plan.yaml', { line: 12, column: 5, complaint }, 'mm')).toBe(
      'plan.yaml:12:5 drawers[1].joint.lap: the lap is 25.4 mm; try 5.08 mm',
    );
  });

  it('shows its lengths in the unit that the maker reads', () => {
    expect(formatPlanComplaint('plan.yaml', { line: 12, column: 5, complaint }, 'in')).toContain(
      'the lap is 1"; try 13/64"',
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
