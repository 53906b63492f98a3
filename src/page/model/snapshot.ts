import type { Project } from '../../project/project.ts';
import type { PlanResult } from '../../project/readerWith.ts';
import { accept, type Result } from '../../units/complaint.ts';
import type { Edit } from '../text/edit.ts';
import { editPlan } from '../text/editPlan.ts';
import { projectOf, readProject } from '../text/planReader.ts';
import { editedValues } from './writtenPlan.ts';

/** A plan's text, which is all that is edited, stored and undone, and all that follows from it. */
export interface Snapshot {
  readonly text: string;
  readonly project: Project;
}

/** Lays everything out; complaints where the plan is not valid. */
export const snapshot = (text: string): Result<Snapshot> => ofReading(readProject(text), () => text);

/**
 * A plan with some changes. What follows is laid out from its changed values at once, as while a hand moves; its text is
 * only written when it is asked for, and says the same.
 */
export const preview = ({ text }: Snapshot, edits: readonly Edit[]): Result<Snapshot> => {
  let written: string | undefined;
  return ofReading(projectOf(editedValues(text, edits)), () => {
    written ??= editPlan(text, edits);
    return written;
  });
};

const ofReading = (reading: PlanResult<Project>, write: () => string): Result<Snapshot> =>
  reading.ok
    ? accept({
        project: reading.value,
        get text() {
          return write();
        },
      })
    : { ok: false, complaints: reading.complaints.map(({ complaint }) => complaint) };
