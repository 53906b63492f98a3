import { madeSet } from '../drawer/made/madeSet.ts';
import type { Project, UncutProject } from './project.ts';
import { type PlanResult, readerWith } from './readerWith.ts';

const reader = readerWith(madeSet);

/**
 * Reads a plan, YAML or JSON, and lays everything out.
 * @returns the project, or every complaint with its line and column
 * @example
 * ```ts
 * const reading = readProject(readFileSync('chest.yaml'));
 * if (reading.ok) for (const { spec, front } of reading.value.set.drawers) console.log(spec.name, front.tails.length);
 * else for (const each of reading.complaints) console.error(formatPlanComplaint('chest.yaml', each, reading.units));
 * ```
 */
export const readProject = (given: string | Uint8Array): PlanResult<Project> => reader.readProject(given);

/** The first step of `readProject`: drawers and corners laid out. */
export const layOutPlan = (given: string | Uint8Array): PlanResult<UncutProject> => reader.layOutPlan(given);
