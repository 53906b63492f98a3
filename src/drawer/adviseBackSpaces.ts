import type { Complaint } from '../complaint.ts';
import { pastTheEdges } from '../guided/pastTheEdges.ts';
import { mm, say } from '../units/phrase.ts';
import type { Draft } from './draft.ts';

/**
 * The sides go on below a back and above it, so a cutter that clears the outer spaces of their back ends runs into wood
 * that stays. Of front corners the same spaces end at the boards' edges, and it runs into the air.
 */
export const adviseBackSpaces = ({ spec: { cutter }, back }: Pick<Draft, 'spec' | 'back'>): Complaint[] => {
  if (cutter === undefined) return [];
  const { lower, upper } = pastTheEdges(back, cutter);
  // To the hundredth, so that drawers of one back joint have the same to say whatever their floats.
  const past = Math.round(100 * Math.max(lower, upper)) / 100;
  return [
    {
      at: ['cutter', 'diameter'],
      says: say`in the outer spaces of the sides' back ends the cutter would run ${mm(past)} past the back's edges, into sides that go on there`,
      hint: say`sawing and chopping those two spaces by hand, and routing those between`,
    },
  ];
};
