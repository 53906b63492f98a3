import { type Drawer, madeOf } from '../drawer.ts';
import { copiesOf } from '../made/built.ts';
import { assumedCabinet } from './assumedCabinet.ts';
import type { Cabinet, CabinetFront } from './cabinetFront.ts';
import { frontPlaces } from './frontPlaces.ts';

/** The drawers in their cabinet: as the plan places them, or else in an assumed arrangement. */
export const cabinetOf = (drawers: readonly Drawer[]): Cabinet =>
  plannedCabinet(drawers) ?? assumedCabinet(drawers);

/** Fronts as the plan places them, each standing in its opening; undefined where none has a place. */
const plannedCabinet = (drawers: readonly Drawer[]): Cabinet | undefined => {
  const placed = drawers.flatMap(frontsOf);
  if (placed.length === 0) return undefined;
  const x0 = Math.min(...placed.map(({ x }) => x));
  const y0 = Math.min(...placed.map(({ y }) => y));
  const rows = new Map<number, CabinetFront[]>();
  for (const { row, ...front } of placed) {
    const inRow = rows.get(row) ?? [];
    inRow.push({ ...front, x: front.x - x0, y: front.y - y0 });
    rows.set(row, inRow);
  }
  const all = drawers.reduce((sum, { spec: { count } }) => sum + count, 0);
  return {
    width: Math.max(...placed.map(({ x, width }) => x + width)) - x0,
    height: Math.max(...placed.map(({ y, height }) => y + height)) - y0,
    rows: [...rows]
      .sort(([one], [other]) => one - other)
      .map(([, fronts]) => fronts.sort((one, other) => one.x - other.x || other.y - one.y)),
    leftOut: all - placed.length,
    planned: true,
  };
};

/** A drawer's fronts in its places, each with its row. */
const frontsOf = (drawer: Drawer, index: number): (CabinetFront & { readonly row: number })[] =>
  frontPlaces(drawer).map(({ x, y, opening: { row } }) => ({
    index,
    row,
    x,
    y,
    width: drawer.boards.front.length,
    height: drawer.boards.front.width,
    lip: drawer.sizes.rebate,
  }));

/**
 * The drawers in their cabinet as they are made: where they are planned, each as wide and as high as its front came out.
 * @param planned the drawers of the plan; the fronts' indices are places among what is made of them
 */
export const madeCabinet = (planned: readonly Drawer[]): Cabinet => {
  const cabinet = cabinetOf(planned);
  if (planned.every(({ made }) => made === undefined)) return cabinet;
  const made = madeOf({ drawers: planned });
  const seen = new Map<number, number>();
  const asMade = (front: CabinetFront): CabinetFront => {
    const copy = (seen.get(front.index) ?? 0) + 1;
    seen.set(front.index, copy);
    const drawer = planned[front.index];
    const own = drawer?.made?.find(({ spec }) => copiesOf(spec).includes(copy)) ?? drawer;
    if (own === undefined) return front;
    const { length: width, width: height } = own.boards.front;
    return {
      ...front,
      index: made.indexOf(own),
      x: front.x + (front.width - width) / 2,
      width,
      height,
      lip: own.sizes.rebate,
    };
  };
  return { ...cabinet, rows: cabinet.rows.map((row) => row.map(asMade)) };
};
