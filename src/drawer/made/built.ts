import type { Place } from '../../units/complaint.ts';
import type { Hand } from '../cornerLetters.ts';
import type { BuiltBoard, DrawerSpec } from '../drawerSpec.ts';

/** A board as it came out, and its place in the drawer's entry of the plan. */
export interface BuiltAt {
  readonly board: BuiltBoard;
  readonly at: Place;
}

/** A board of a made drawer as it came out; undefined where it is as planned. */
export const builtAt = (
  { made }: Pick<DrawerSpec, 'made'>,
  part: BuiltBoard['part'],
  hand?: Hand,
): BuiltAt | undefined => {
  const i = made?.boards.findIndex(
    (board) => board.part === part && (board.part !== 'side' || board.hand === hand),
  );
  const board = i === undefined ? undefined : made?.boards[i];
  return board && { board, at: ['asBuilt', made?.entries[i ?? 0] ?? 0] };
};

/** A side whose length is given, which both are as long as. */
export const longSide = (spec: Pick<DrawerSpec, 'made'>): BuiltAt | undefined =>
  (['left', 'right'] as const)
    .flatMap((hand) => builtAt(spec, 'side', hand) ?? [])
    .find(({ board }) => board.length !== undefined);

/** The name that the plan gives a drawer, whichever of several equal ones it is. */
export const entryName = ({ name, made }: Pick<DrawerSpec, 'name' | 'made'>): string => made?.name ?? name;

/** Which of the equal drawers of the plan's entry a drawer stands for, where those are several. */
export const copiesOf = ({ made, count }: Pick<DrawerSpec, 'made' | 'count'>): readonly number[] =>
  made?.copies ?? Array.from({ length: count }, (_, i) => i + 1);
