import type { Fingers } from '../../../router/fingers/fingers.ts';
import type { Result } from '../../../units/complaint.ts';
import { unitOf } from '../../../units/notation.ts';
import type { Edit, PlanValue } from '../../text/edit.ts';
import { editPlan } from '../../text/editPlan.ts';
import { cornerOf, cornersOf, type EditedCorner } from '../editedCorner.ts';
import { keepHalfPins } from '../listCorner.ts';
import { planNumber } from '../planNumber.ts';
import { type Snapshot, snapshot } from '../snapshot.ts';

/** A number that describes the fingers of a guide. */
export type FingerKey = Extract<keyof Fingers, 'together' | 'bush' | 'pairs' | 'bar'>;

const change = ({ text }: Snapshot, edits: readonly Edit[]): Result<Snapshot> =>
  snapshot(editPlan(text, edits));

const written = ({ project }: Snapshot, key: FingerKey, value: number): PlanValue =>
  key === 'pairs' ? value : planNumber(value, unitOf(project.units));

/** Sets numbers of the fingers, lengths in mm; undefined leaves one to its default. A plan may have had no fingers before. */
export const setFingers = (
  now: Snapshot,
  values: Readonly<Partial<Record<FingerKey, number | undefined>>>,
): Result<Snapshot> =>
  change(
    now,
    (Object.entries(values) as [FingerKey, number | undefined][]).map(([key, value]) => ({
      at: ['fingers', key],
      value: value === undefined ? undefined : written(now, key, value),
    })),
  );

/** Cuts without fingers; what was asked of their spacers goes with them. */
export const removeFingers = (now: Snapshot): Result<Snapshot> =>
  change(
    now,
    [['fingers'], ['family', 'spacers'], ['family', 'within'], ['family', 'halfPins']].map((at) => ({
      at,
      value: undefined,
    })),
  );

/** Limits how many different spacers the front corners may need; undefined is without a limit. */
export const limitSpacers = (now: Snapshot, most: number | undefined): Result<Snapshot> =>
  change(now, [{ at: ['family', 'spacers'], value: most }]);

/** The front corners whose tails are listed, none of them locked. */
export const listedFronts = ({ project }: Snapshot): EditedCorner[] =>
  cornersOf(project).flatMap((ref) => {
    const corner = ref.of === 'drawer' && ref.end === 'front' ? cornerOf(project, ref) : undefined;
    return corner?.listed === true && corner.locked.size === 0 ? [corner] : [];
  });

/** Leaves all front corners to the set again that are listed, but those with locks. */
export const releaseFronts = (now: Snapshot): Result<Snapshot> => {
  const { text, project } = now;
  const fronts = listedFronts(now);
  const specs = project.set.drawers.map(({ spec }) => spec);
  const edits = fronts.flatMap(({ at }) =>
    ['tails', 'pins', 'halfPin'].map((key): Edit => ({ at: [...at, key], value: undefined })),
  );
  return change(
    now,
    fronts.reduce((kept, { ref }) => keepHalfPins(ref, kept, specs, text, unitOf(project.units)), edits),
  );
};
