import type { Project } from '../../project/project.ts';
import { readProject } from '../../project/readProject.ts';
import { accept, type Result } from '../../units/complaint.ts';

/** A plan's text, which is all that is edited, stored and undone, and all that follows from it. */
export interface Snapshot {
  readonly text: string;
  readonly project: Project;
}

/** Lays everything out; complaints where the plan is not valid. */
export const snapshot = (text: string): Result<Snapshot> => {
  const reading = readProject(text);
  return reading.ok
    ? accept({ text, project: reading.value })
    : { ok: false, complaints: reading.complaints.map(({ complaint }) => complaint) };
};
