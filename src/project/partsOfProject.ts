import { type FramePart, frameParts, railPart } from '../drawer/arrangement/frameParts.ts';
import { blankLetters, plankName } from '../drawer/blanks/blankWords.ts';
import { type BrokenOut, brokenOut } from '../drawer/blanks/brokenOut.ts';
import type { StockWork } from '../drawer/blanks/stockWork.ts';
import { type Drawer, madeOf } from '../drawer/drawer.ts';
import { indicesOf, type Part, parts } from '../drawer/partsList.ts';
import type { Sawing } from '../stock/usualSawing.ts';
import type { Project } from './project.ts';

/** Rails that are dovetailed into the sides, and the parts of its cabinet's frame where one is planned; none where only some of the project is wanted. */
export const frameOfProject = ({
  cabinet,
  joints,
  units,
  only,
}: Pick<Project, 'cabinet' | 'joints' | 'units' | 'only'>): FramePart[] =>
  only !== undefined
    ? []
    : [
        ...joints.flatMap(({ rail, joint }) => (rail === undefined ? [] : [railPart(rail, joint, units)])),
        ...(cabinet === undefined ? [] : frameParts(cabinet, units)),
      ];

/** Layouts that have been sought: the same boards have the same one. */
const sought = new WeakMap<StockWork, BrokenOut>();

const layoutFor = (work: StockWork, saw: Sawing): BrokenOut => {
  const broken = sought.get(work) ?? brokenOut(work, saw);
  sought.set(work, broken);
  return broken;
};

/** The parts of some of a project's drawers and boxes, each with the boards that it comes out of, and its letters there, where the plan lists boards. */
export const partsOfProject = (
  { set, units, work, sawing }: Pick<Project, 'set' | 'units' | 'work' | 'sawing'>,
  drawers: readonly Drawer[] = madeOf(set),
): Part[] => {
  const listed = parts({ drawers, advice: [] }, units);
  if (work === undefined) return listed;
  const { planks, blanks, breakout } = layoutFor(work, sawing);
  const places = breakout.boards.flatMap(({ plank, blanks: placed }) =>
    placed.flatMap(({ wanted }) => {
      const [blank, board] = [blanks[wanted], planks[plank]];
      return blank === undefined || board === undefined || blank.spare
        ? []
        : [{ blank, wanted, board: plankName(board, planks) }];
    }),
  );
  return listed.map((part) => {
    const indices = new Set(indicesOf(part));
    const own = places
      .filter(
        ({ blank }) =>
          blank.drawer === part.drawer && blank.part === part.part && indices.has(blank.index ?? 0),
      )
      .toSorted((a, b) => a.wanted - b.wanted);
    const boards = [...new Set(own.map(({ board }) => board))];
    const lettersOn = (name: string) =>
      own.flatMap(({ board, wanted }) => (board === name ? [blankLetters(wanted)] : []));
    return { ...part, boards, letters: boards.map(lettersOn) };
  });
};
