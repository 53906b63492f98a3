import { EPSILON } from '../../units/epsilon.ts';
import type { Drawer } from '../drawer.ts';
import type { DrawerPart } from '../drawerParts.ts';
import { BUILT_MEASURES, type BuiltBoard } from '../drawerSpec.ts';

/** Some of the equal drawers of a plan's entry, alike in how their boards came out. */
export interface BuiltCopies {
  /** Which of them, from 1. */
  readonly copies: readonly number[];
  /** Their boards that are given; none where all came out as planned. */
  readonly boards: readonly BuiltBoard[];
  /** Where each of these stands in the plan's list. */
  readonly entries: readonly number[];
}

/** The equal drawers of a plan's entry by how their boards came out: those that are alike together, in the order of the first of each. */
export const builtCopies = (planned: Drawer): BuiltCopies[] => {
  const { count, asBuilt = [] } = planned.spec;
  const ofCopy = new Map<number, { readonly board: BuiltBoard; readonly entry: number }[]>();
  asBuilt.forEach((board, entry) => {
    const { index = 1 } = board;
    ofCopy.set(index, [...(ofCopy.get(index) ?? []), { board, entry }]);
  });
  const alike = new Map<string, BuiltCopies>();
  for (let copy = 1; copy <= count; copy++) {
    const given = (ofCopy.get(copy) ?? []).toSorted((a, b) => (keyOf(a.board) < keyOf(b.board) ? -1 : 1));
    const own = given.every(({ board }) => isAsPlanned(planned, board)) ? [] : given;
    const boards = own.map(({ board }) => board);
    const key = JSON.stringify(boards.map(keyOf));
    const before = alike.get(key);
    alike.set(
      key,
      before === undefined
        ? { copies: [copy], boards, entries: own.map(({ entry }) => entry) }
        : { ...before, copies: [...before.copies, copy] },
    );
  }
  return [...alike.values()];
};

const keyOf = (board: BuiltBoard): string =>
  JSON.stringify([
    board.part,
    board.part === 'side' ? board.hand : null,
    ...BUILT_MEASURES.map((measure) => board[measure] ?? null),
  ]);

const isAsPlanned = (planned: Drawer, board: BuiltBoard): boolean => {
  const part: DrawerPart = planned.boards[board.part];
  return BUILT_MEASURES.every((measure) => {
    const measured = board[measure];
    return measured === undefined || Math.abs(measured - part[measure]) < EPSILON;
  });
};

/** `1`, `2-4`, `1,3-4`: which of the equal drawers, without a blank, so that a name that is cut short keeps it. */
export const copyNumbers = (copies: readonly number[]): string => {
  const runs: [first: number, last: number][] = [];
  for (const copy of copies) {
    const run = runs.at(-1);
    if (run !== undefined && run[1] === copy - 1) run[1] = copy;
    else runs.push([copy, copy]);
  }
  return runs.map(([first, last]) => (first === last ? `${first}` : `${first}-${last}`)).join(',');
};
