import type { BoardsSpec } from '../drawer/blanks/boardSpec.ts';
import { type DrawerSet, drawersAndBoxes } from '../drawer/drawer.ts';
import { closestWord } from '../plan/check/editDistance.ts';
import { accept, type Complaint, type Place, type Result, refuse } from '../units/complaint.ts';
import { listNames } from '../units/listNames.ts';
import { nameKey } from '../units/name.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';

/**
 * The drawers and boxes that are named beside a plan's boards, as the plan itself writes them.
 * @returns a complaint at each name of no drawer, and at each that is repeated more often than there are equal drawers
 */
export const withDrawerNames = (spec: BoardsSpec, set: DrawerSet): Result<BoardsSpec> => {
  const counts = new Map(
    drawersAndBoxes(set).map(({ spec: { name, count } }) => [nameKey(name), { name, count }]),
  );
  const names = [...counts.values()].map(({ name }) => name);
  const wrong: Complaint[] = [];
  const known = (typed: string, at: Place): string => {
    const found = counts.get(nameKey(typed));
    if (found !== undefined) return found.name;
    const meant = closestWord(typed, names);
    wrong.push({
      at,
      says: say`${quote(typed)} is no drawer of this plan; there are ${listNames(names)}`,
      ...(meant !== undefined && { hint: say`${meant}` }),
    });
    return typed;
  };
  const used = new Map<string, number>();
  const runs = spec.runs.map((run, i) => ({
    ...run,
    drawers: run.drawers.map((typed, j) => {
      const at: Place = ['breakout', 'runThrough', i, ...(run.kind === 'stack' ? ['stack'] : []), j];
      const name = known(typed, at);
      const count = counts.get(nameKey(typed))?.count;
      const times = (used.get(name) ?? 0) + 1;
      used.set(name, times);
      if (count !== undefined && times > count)
        wrong.push({
          at,
          says: say`${quote(name)} is named ${times} times, and there ${count === 1 ? 'is one such drawer' : `are ${count} such drawers`}`,
          remedy: say`remove it here, or give the drawer a greater count`,
        });
      return name;
    }),
  }));
  const boards = spec.boards.map((board, i) =>
    board.cut === undefined
      ? board
      : {
          ...board,
          cut: {
            ...board.cut,
            blanks: board.cut.blanks.map((blank, j) => ({
              ...blank,
              drawer: known(blank.drawer, ['boards', i, 'cut', 'blanks', j, 'drawer']),
            })),
          },
        },
  );
  return wrong.length > 0 ? refuse(...wrong) : accept({ ...spec, boards, runs });
};
