import type { DefectKind, Plank, StockName } from '../plank.ts';
import type { Wanted } from '../wanted.ts';
import type { Pose, Rect } from './clearStarts.ts';
import { nearestTick, ticks } from './ticks.ts';

/** Wanted pieces that may change places with each other: they differ in nothing that the wood shows. */
export interface BlankType {
  readonly stock: StockName;
  /** Along the grain and across it, in ticks. */
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly allows: ReadonlySet<DefectKind>;
  readonly zones: readonly Rect[];
  readonly eitherWay: boolean;
  /** Where it must lie: on this board, and there alone. */
  readonly pin?: { readonly plank: number; readonly at?: PinnedRect };
  /** Indices of the wanted pieces. */
  readonly pieces: readonly number[];
  /** Pieces that lie end to end along x, or side by side along y, and count as one; from the lowest coordinate up. */
  readonly run?: { readonly axis: 'x' | 'y'; readonly members: readonly BlankType[] };
}

/** Where a pinned blank lies on its board. */
export interface PinnedRect extends Rect {
  readonly turned: boolean;
}

/** Whether a type is pinned, or a piece of the run that it is, and where. */
export const pinsOf = (type: BlankType): NonNullable<BlankType['pin']>[] =>
  (type.run?.members ?? [type]).flatMap(({ pin }) => pin ?? []);

/** A piece's pin, its place in ticks. */
export const pinOf = ({ pin, length, width }: Wanted): BlankType['pin'] => {
  if (pin?.place === undefined) return pin;
  const { x, y, turned, across } = pin.place;
  const [x0, y0] = [nearestTick(x), nearestTick(y)];
  const [along, over] = [length, width].map(ticks) as [number, number];
  const at = { x0, y0, x1: x0 + (across ? over : along), y1: y0 + (across ? along : over), turned };
  return { plank: pin.plank, at };
};

export const serves = (plank: Plank, { stock, thickness }: Pick<BlankType, 'stock' | 'thickness'>): boolean =>
  plank.stocks.includes(stock) && plank.thickness >= thickness - 1e-6;

const rect = ({ from: [x0, y0], to: [x1, y1] }: Wanted['zones'][number]): Rect => ({
  x0: Math.floor(-ticks(-x0)),
  y0: Math.floor(-ticks(-y0)),
  x1: ticks(x1),
  y1: ticks(y1),
});

/** The types of some wanted pieces, in the order of their first ones. */
export const blankTypes = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  pieces: readonly number[],
): BlankType[] => {
  const found = new Map<string, BlankType & { pieces: number[] }>();
  for (const index of pieces) {
    const piece = wanted[index];
    if (piece === undefined) continue;
    const boards = planks.filter((plank) => serves(plank, piece));
    // Zones matter only on a board with a defect that the piece allows elsewhere.
    const there = new Set(boards.flatMap(({ defects }) => defects.map(({ kind }) => kind)));
    const allows = piece.allows.filter((kind) => there.has(kind)).sort();
    const zones = allows.length === 0 ? [] : piece.zones.map(rect);
    const length = ticks(piece.length);
    const width = ticks(piece.width);
    const pin = pinOf(piece);
    const key = JSON.stringify([
      piece.stock,
      length,
      width,
      boards.map((plank) => planks.indexOf(plank)),
      allows,
      zones,
      piece.eitherWay,
      piece.pin,
    ]);
    const same = found.get(key);
    if (same !== undefined) same.pieces.push(index);
    else
      found.set(key, {
        stock: piece.stock,
        length,
        width,
        thickness: piece.thickness,
        allows: new Set(allows),
        zones,
        eitherWay: piece.eitherWay,
        ...(pin && { pin }),
        pieces: [index],
      });
  }
  return [...found.values()];
};

const halfTurn = ({ length, width, zones }: Pose): Pose => ({
  length,
  width,
  zones: zones.map(({ x0, y0, x1, y1 }) => ({
    x0: length - x1,
    y0: width - y1,
    x1: length - x0,
    y1: width - y0,
  })),
});

/** As a blank lies with its grain along the board: not turned, and turned where that makes a difference. */
export const posesAlong = ({ length, width, zones }: BlankType): readonly Pose[] => {
  const pose = { length, width, zones };
  return zones.length === 0 ? [pose] : [pose, halfTurn(pose)];
};

/** Pieces that are to run through, as one: cut from one board, and missing or met together. */
export const runType = (axis: 'x' | 'y', members: readonly BlankType[]): BlankType => ({
  stock: members[0]?.stock ?? 'front',
  length: axis === 'x' ? sum(members, 'length') : most(members, 'length'),
  width: axis === 'y' ? sum(members, 'width') : most(members, 'width'),
  thickness: most(members, 'thickness'),
  allows: new Set(),
  zones: [],
  eitherWay: false,
  pieces: members.flatMap(({ pieces }) => pieces),
  run: { axis, members },
});

const sum = (types: readonly BlankType[], key: 'length' | 'width'): number =>
  types.reduce((all, type) => all + type[key], 0);
const most = (types: readonly BlankType[], key: 'length' | 'width' | 'thickness'): number =>
  Math.max(...types.map((type) => type[key]));

/** Area of one, in square ticks; of a run, of all its pieces. */
export const areaOf = ({ length, width, run }: BlankType): number =>
  run === undefined ? length * width : run.members.reduce((all, member) => all + areaOf(member), 0);
