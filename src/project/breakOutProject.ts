import { type BrokenOut, brokenOut } from '../drawer/blanks/brokenOut.ts';
import type { BreakOutOptions } from '../stock/search/breakOut.ts';
import type { Project } from './project.ts';

/**
 * Which part of a project comes out of which of its boards, and the saw cuts in order; nothing where its plan lists no boards.
 * What is missing is named in `toBuy` as boards that would do. The same project and options give the same answer.
 * @param options `effort` multiplies the counted steps of the search, 1 unless given; `onProgress` hears how far it is
 * @example
 * ```ts
 * const broken = breakOutProject(project, { effort: 0.1 });
 * if (broken !== undefined) console.log(`${broken.breakout.boards.length} boards are cut into`);
 * ```
 */
export const breakOutProject = (
  { work, sawing }: Pick<Project, 'work' | 'sawing'>,
  options: BreakOutOptions = {},
): BrokenOut | undefined => (work === undefined ? undefined : brokenOut(work, sawing, options));
