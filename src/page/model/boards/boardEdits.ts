import { plankName } from '../../../drawer/blanks/blankWords.ts';
import type { PartBlank } from '../../../drawer/blanks/partBlanks.ts';
import type { Plank, StockName } from '../../../stock/plank.ts';
import { accept, type Place, type Result } from '../../../units/complaint.ts';
import { nameKey } from '../../../units/name.ts';
import type { Edit, PlanValue } from '../../text/edit.ts';
import { editPlan } from '../../text/editPlan.ts';
import { type Snapshot, snapshot } from '../snapshot.ts';
import { isWritten, valueAt, writtenPlan } from '../writtenPlan.ts';
import { type BoardSizes, boardSizes, resized } from './boardShape.ts';
import { freedPins, renamedPins } from './pinEdits.ts';
import { cornersAt, lengthEdit, written } from './writtenLengths.ts';

/** A board that is added to a plan; lengths in mm. */
export interface NewBoard {
  readonly stocks: readonly StockName[];
  readonly thickness: number;
  readonly length: number;
  readonly width: number;
  readonly count?: number;
}

/** A plan's entries of boards in its order, each as the first of its equal boards, and how many these are. */
export const boardsIn = ({
  project: { work },
}: Snapshot): { readonly plank: Plank; readonly count: number }[] => {
  const planks = work?.planks ?? [];
  return planks
    .filter(({ copy }) => copy === 1)
    .map((plank) => ({ plank, count: planks.filter(({ name }) => name === plank.name).length }));
};

const change = ({ text }: Snapshot, edits: readonly Edit[]): Result<Snapshot> =>
  snapshot(editPlan(text, edits));

/** One stock, or a list of them. */
const writtenStocks = (stocks: readonly StockName[]): PlanValue =>
  stocks.length === 1 && stocks[0] !== undefined ? stocks[0] : stocks;

/** Adds a board after the last. */
export const addBoard = (
  now: Snapshot,
  { stocks, thickness, length, width, count = 1 }: NewBoard,
): Result<Snapshot> => {
  const at: Place = ['boards', boardsIn(now).length];
  return change(now, [
    { at: [...at, 'name'], value: freeName(now, stocks) },
    { at: [...at, 'stock'], value: writtenStocks(stocks) },
    { at: [...at, 'thickness'], value: written(now, thickness) },
    { at: [...at, 'length'], value: written(now, length) },
    { at: [...at, 'width'], value: written(now, width) },
    ...(count === 1 ? [] : [{ at: [...at, 'count'], value: count }]),
  ]);
};

/** `Cherry 4`: the wood that its parts are of, and the first number that no board of that name has. */
const freeName = (now: Snapshot, stocks: readonly StockName[]): string => {
  const [stock = 'front'] = stocks;
  const species = now.project.set.drawers.flatMap(({ spec }) => spec.stock[stock].species ?? [])[0];
  const wood = species?.split(',')[0] ?? 'Board';
  const taken = new Set(boardsIn(now).map(({ plank }) => nameKey(plank.name)));
  let number = 1;
  while (taken.has(nameKey(`${wood} ${number}`))) number++;
  return `${wood} ${number}`;
};

/** Removes a board, and sets free what is pinned to it. */
export const removeBoard = (now: Snapshot, board: number): Result<Snapshot> => {
  const { name } = boardsIn(now)[board]?.plank ?? {};
  const isThere = ({ pin }: PartBlank) => pin && now.project.work?.planks[pin.plank]?.name === name;
  return change(now, [
    { at: ['boards', board], value: undefined },
    ...freedPins(now, (part) => isThere(part) === true),
  ]);
};

/** Renames a board; its pins follow. */
export const renameBoard = (now: Snapshot, board: number, name: string): Result<Snapshot> =>
  change(now, [
    { at: ['boards', board, 'name'], value: name },
    ...pinsOfBoard(now, board, (plank) => ({ ...plank, name })),
  ]);

/** The edits by which pins follow what a board is called, with its equal ones. */
const pinsOfBoard = (
  now: Snapshot,
  board: number,
  changed: (plank: Plank) => Plank,
  count?: number,
): Edit[] => {
  const own = boardsIn(now)[board]?.plank.name;
  const planks = now.project.work?.planks ?? [];
  const others = planks.flatMap((plank): Plank[] => {
    if (plank.name !== own) return [plank];
    return count !== undefined && plank.copy > count ? [] : [changed(plank)];
  });
  const more = others.find((plank) => plank.name === own);
  const all = count !== undefined && more ? [...others, { ...more, copy: count }] : others;
  return renamedPins(now, {
    board: (index) => {
      const plank = planks[index];
      return plank?.name === own ? plankName(changed(plank as Plank), all) : undefined;
    },
  });
};

export const setStocks = (now: Snapshot, board: number, stocks: readonly StockName[]): Result<Snapshot> =>
  change(now, [{ at: ['boards', board, 'stock'], value: writtenStocks(stocks) }]);

/** @param thickness mm */
export const setThickness = (now: Snapshot, board: number, thickness: number): Result<Snapshot> =>
  change(now, [{ at: ['boards', board, 'thickness'], value: written(now, thickness) }]);

/** Sets how many equal boards there are. */
export const setBoardCount = (now: Snapshot, board: number, count: number): Result<Snapshot> => {
  const plank = boardsIn(now)[board]?.plank;
  if (plank === undefined) return accept(now);
  const pins = pinsOfBoard(now, board, (each) => each, count);
  return isWritten(writtenPlan(now.text), ['boards', board, 'size'])
    ? change(now, [sizeEdit(now, board, boardSizes(plank.outline), count), ...pins])
    : change(now, [{ at: ['boards', board, 'count'], value: count === 1 ? undefined : count }, ...pins]);
};

/** `1810 x 190`, or `1810 x 190 x 3` for three of them. */
const sizeEdit = (now: Snapshot, board: number, { length, left }: BoardSizes, count: number): Edit => {
  const numbers = [written(now, length), written(now, left), ...(count === 1 ? [] : [count])];
  return { at: ['boards', board, 'size'], value: numbers.join(' x ') };
};

/** Sets the sizes of a board, in the way in which the plan gives them. */
export const setBoardSizes = (now: Snapshot, board: number, sizes: BoardSizes): Result<Snapshot> => {
  const entry = boardsIn(now)[board];
  if (entry === undefined) return accept(now);
  const at: Place = ['boards', board];
  const plan = writtenPlan(now.text);
  const { length, left, right } = sizes;
  const outline = cornersAt(now, plan, [...at, 'outline']);
  if (outline !== undefined)
    return change(now, [lengthEdit(now, [...at, 'outline'], resized(outline, sizes))]);
  const isSize = isWritten(plan, [...at, 'size']);
  const { count } = entry;
  if (isSize && left === right) {
    const ownCount = isWritten(plan, [...at, 'count']) ? 1 : count;
    return change(now, [sizeEdit(now, board, sizes, ownCount)]);
  }
  const width = left === right && !Array.isArray(valueAt(plan, [...at, 'width'])) ? left : [left, right];
  return change(now, [
    lengthEdit(now, [...at, 'length'], length),
    lengthEdit(now, [...at, 'width'], width),
    ...(isSize
      ? [
          { at: [...at, 'size'], value: undefined },
          { at: [...at, 'count'], value: count === 1 ? undefined : count },
        ]
      : []),
  ]);
};
