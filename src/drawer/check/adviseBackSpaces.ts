import { pastTheEdges } from '../../router/passes/pastTheEdges.ts';
import type { Complaint } from '../../units/complaint.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Draft } from '../draft.ts';
import { sidesPastBack } from '../sidesPastBack.ts';

/**
 * The sides go on below a back and mostly above it, so a cutter that cleared the outer spaces of their back ends would run
 * into wood that stays. Of front corners the same spaces end at the boards' edges, and it runs into the air.
 */
export const adviseBackSpaces = ({ spec, back }: Pick<Draft, 'spec' | 'back'>): Complaint[] => {
  const { cutter } = spec;
  if (cutter === undefined) return [];
  const { lower, upper } = pastTheEdges(back, cutter);
  const both = sidesPastBack(spec).upper;
  // To the hundredth, so that drawers of one back joint have the same to say whatever their floats.
  const past = mm(Math.round(100 * (both ? Math.max(lower, upper) : lower)) / 100);
  return [
    {
      at: ['cutter', 'diameter'],
      says: both
        ? say`the outer spaces of the sides' back ends are left to saw and chisel: the cutter would run ${past} past the back's edges, into sides that go on there`
        : say`the lowest space of the sides' back ends is left to saw and chisel: the cutter would run ${past} past the back's lower edge, into sides that go on there`,
    },
  ];
};
