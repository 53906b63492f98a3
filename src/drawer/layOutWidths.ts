import { accept, type Complaint, type Result, under } from '../complaint.ts';
import { withDefaults } from '../joint/defaults.ts';
import type { Joint } from '../joint/joint.ts';
import { layOut } from '../joint/layOut.ts';
import { meanTail } from '../joint/proportion.ts';
import { meanTip, mostTails } from '../joint/spacing.ts';
import type { JointSpec } from '../joint/spec.ts';
import type { Family } from './drawer.ts';
import { familyTarget, nearestChoice } from './family.ts';

/** Corners of bare widths that keep to one target tail, without drawers or grooves. */
export interface Widths {
  readonly joints: readonly Joint[];
  readonly family: Family;
}

/**
 * Sets out one kind of corner over several widths, so that all look alike by the family rule.
 * @param wish what all the corners share; its width is not used
 * @returns complaints with the width's index first: `[2, 'width']`
 */
export const layOutWidths = (wish: JointSpec, widths: readonly number[]): Result<Widths> => {
  const { spacing } = wish;
  const wrong: Complaint[] = [];
  const counts = widths.map((width, i) => {
    const first = layOut({ ...wish, width });
    if (!first.ok) {
      wrong.push(...under([i], first.complaints));
      return [];
    }
    if (spacing.kind === 'listed' || spacing.tails !== undefined)
      return [{ tails: first.value.tails.length, tip: meanTail(first.value) }];
    const resolved = withDefaults({ ...wish, width });
    return Array.from({ length: mostTails(resolved, spacing) }, (_, k) => ({
      tails: k + 1,
      tip: meanTip(resolved, k + 1),
    }));
  });
  if (wrong.length > 0) return { ok: false, complaints: wrong };
  const { pin } = withDefaults(wish);
  const target = familyTarget(
    counts.map((choices) => choices.map(({ tip }) => tip)),
    pin,
  );
  const joints = widths.flatMap((width, i) => {
    const tails = nearestChoice(counts[i] ?? [], target)?.tails;
    const chosen = spacing.kind === 'listed' || tails === undefined ? spacing : { ...spacing, tails };
    const joint = layOut({ ...wish, width, spacing: chosen });
    return joint.ok ? [joint.value] : [];
  });
  const tips = joints.map(meanTail);
  return accept({ joints, family: { target, pin, tips, spread: Math.max(...tips) / Math.min(...tips) } });
};
