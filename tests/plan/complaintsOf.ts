import { formatPlanComplaint } from '../../src/plan/read/planComplaint.ts';
import { readPlan } from '../../src/plan/readPlan.ts';

/** What a user is told of a plan that is refused, line by line; nothing of one that is read. */
export const complaintsOf = (plan: string | Uint8Array): string[] => {
  const reading = readPlan(plan);
  return reading.ok
    ? []
    : reading.complaints.map((each) => formatPlanComplaint('plan.yaml', each, reading.valid.units));
};
