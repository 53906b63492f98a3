import { formatPlanComplaint } from '../../../src/plan/read/planComplaint.ts';
import type { Project } from '../../../src/project/project.ts';
import { readProject } from '../../../src/project/readProject.ts';

/** A small set: two drawers of one size and one larger. */
export const SMALL_SET = `stock:
  front: {thickness: 20}
  side: {thickness: 11}
joint: {slope: "1:7", pin: 5, halfPin: 6, lap: 5}
groove: {offset: 11, width: 5, depth: 5}
fit: {side: 0.5, top: 1, behind: 12}
drawers:
  - {name: Buttons, count: 2, opening: {width: 280, height: 76, depth: 420}}
  - {name: Cloth, opening: {width: 574, height: 190, depth: 420}}
`;

/** Boards that have more than room for it. */
export const BOARDS = `boards:
  - {name: Cherry, stock: front, thickness: 26, length: 2150, width: 230}
  - {name: Ash, stock: [side, back], thickness: 16, size: 1810 x 210 x 3}
`;

export const projectOf = (plan: string): Project => {
  const reading = readProject(plan);
  if (!reading.ok) throw new Error(wrongWith(plan).join('\n'));
  return reading.value;
};

/** What is said of a plan that is wrong, without its lines. */
export const wrongWith = (plan: string): string[] => {
  const reading = readProject(plan);
  return reading.ok
    ? []
    : reading.complaints.map((each) =>
        formatPlanComplaint('', each, reading.units).replace(/^:\d+:\d+ /u, ''),
      );
};
