import type { Project } from '../../project/project.ts';
import { readProject } from '../../project/readProject.ts';
import { accept, type Result } from '../../units/complaint.ts';
import type { Locked } from './widths.ts';

/** What is worked on, and what undo brings back. */
export interface Work {
  /** The plan, as it is saved. */
  readonly text: string;
  /** For each corner, by its key, which widths are locked. */
  readonly locks: Readonly<Record<string, readonly number[]>>;
}

/** A work and all that follows from it. */
export interface Snapshot {
  readonly work: Work;
  readonly project: Project;
}

export const locksOf = ({ locks }: Work, key: string): Locked => new Set(locks[key]);

export const withLocks = ({ text, locks }: Work, key: string, locked: Locked): Work => {
  const { [key]: _, ...others } = locks;
  return {
    text,
    locks: locked.size === 0 ? others : { ...others, [key]: [...locked].sort((a, b) => a - b) },
  };
};

/** Sets everything out, or says why it cannot be made. */
export const snapshot = (work: Work): Result<Snapshot> => {
  const reading = readProject(work.text);
  return reading.ok
    ? accept({ work, project: reading.value })
    : { ok: false, complaints: reading.complaints.map(({ complaint }) => complaint) };
};
