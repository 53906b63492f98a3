import { withDefaults } from '../joint/defaults.ts';
import { type Joint, meanTail } from '../joint/joint.ts';
import type { JointSpec } from '../joint/jointSpec.ts';
import { meanTip, mostTails, narrowestTip } from '../joint/spacing.ts';
import { withCutter } from '../router/limits/fitToCutter.ts';
import { layOutWith, type Tooling } from '../router/limits/layOutWith.ts';
import { tailsFit } from '../router/limits/tailLimits.ts';
import { accept, type Complaint, type Result } from '../units/complaint.ts';
import type { Family } from './drawer.ts';
import { familyOf, familyTarget, nearestChoice } from './familyTarget.ts';

/** Corners of several widths matched to one tail width, without drawers or grooves. */
export interface LaidWidths {
  readonly joints: readonly Joint[];
  readonly family: Family;
}

/**
 * Sets out one kind of corner over several widths, so that all look alike by the family rule.
 * @param wish what all the corners share; its width is not used
 * @param tooling what they are cut with, where it is not by hand
 * @returns complaints at the wish's own keys, a width's at `['widths', 2]`
 */
export const layOutWidths = (
  wish: JointSpec,
  widths: readonly number[],
  tooling: Tooling = {},
): Result<LaidWidths> => {
  const { cutter, fingers, pitch } = tooling;
  const { spacing } = wish;
  const held = (spec: JointSpec): JointSpec => (cutter === undefined ? spec : withCutter(spec, cutter));
  const wrong: Complaint[] = [];
  const counts = widths.map((width, i) => {
    const first = layOutWith({ ...wish, width }, tooling);
    if (!first.ok) {
      wrong.push(
        ...first.complaints.map((each) => (each.at[0] === 'width' ? { ...each, at: ['widths', i] } : each)),
      );
      return [];
    }
    if (spacing.kind === 'listed' || spacing.tails !== undefined || pitch !== undefined)
      return [{ tails: first.value.tails.length, tip: meanTail(first.value) }];
    const resolved = withDefaults(held({ ...wish, width }));
    const choices = Array.from({ length: mostTails(resolved, spacing) }, (_, k) => ({
      tails: k + 1,
      tip: meanTip(resolved, k + 1),
    }));
    return cutter === undefined
      ? choices
      : choices.filter(({ tails, tip }) =>
          tailsFit(
            resolved,
            { tails, tip: narrowestTip(spacing, { tails, tip }) },
            { cutter, ...(fingers && { fingers }) },
          ),
        );
  });
  if (wrong.length > 0) return { ok: false, complaints: wrong };
  const { pin } = withDefaults(held(wish));
  const target = familyTarget(
    counts.map((choices) => choices.map(({ tip }) => tip)),
    pin,
  );
  const joints = widths.flatMap((width, i) => {
    const tails = nearestChoice(counts[i] ?? [], target)?.tails;
    const chosen = spacing.kind === 'listed' || tails === undefined ? spacing : { ...spacing, tails };
    const joint = layOutWith({ ...wish, width, spacing: chosen }, tooling);
    return joint.ok ? [joint.value] : [];
  });
  return accept({ joints, family: familyOf(joints, target, pin) });
};
