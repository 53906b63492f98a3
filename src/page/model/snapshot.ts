import type { Project } from '../../project/project.ts';
import { readProject } from '../../project/readProject.ts';
import { accept, type Result } from '../../units/complaint.ts';
import type { Locked } from './widths.ts';

/** All that is edited, stored and undone. */
export interface PlanSource {
  /** The plan, as it is saved. */
  readonly text: string;
  /** For each corner, by its key, which widths are locked. */
  readonly locks: Readonly<Record<string, readonly number[]>>;
}

/** A plan's source and all that follows from it. */
export interface Snapshot {
  readonly source: PlanSource;
  readonly project: Project;
}

export const locksOf = ({ locks }: PlanSource, key: string): Locked => new Set(locks[key]);

export const withLocks = ({ text, locks }: PlanSource, key: string, locked: Locked): PlanSource => {
  const { [key]: _, ...others } = locks;
  return {
    text,
    locks: locked.size === 0 ? others : { ...others, [key]: [...locked].sort((a, b) => a - b) },
  };
};

/** Lays everything out; complaints where the plan is not valid. */
export const snapshot = (source: PlanSource): Result<Snapshot> => {
  const reading = readProject(source.text);
  return reading.ok
    ? accept({ source, project: reading.value })
    : { ok: false, complaints: reading.complaints.map(({ complaint }) => complaint) };
};
