import polygonClipping from 'polygon-clipping';
import type { Breakout } from '../../src/stock/breakout.ts';
import type { Plank } from '../../src/stock/plank.ts';
import type { Saw, Wanted } from '../../src/stock/wanted.ts';

type Polygons = ReturnType<typeof polygonClipping.intersection>;
type Box = readonly [x0: number, y0: number, x1: number, y1: number];

const FAR = 1e5;
/** Mm² or mm that are nothing. */
const NOTHING = 2e-3;

const ring = ([x0, y0, x1, y1]: Box): [number, number][][] => [
  [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ],
];
const area = (polygons: Polygons): number =>
  polygons.reduce(
    (sum, rings) =>
      sum +
      rings.reduce((own, points, i) => {
        const twice = points.reduce((all, [x, y], k) => {
          const [px, py] = points.at(k - 1) ?? [x, y];
          return all + px * y - x * py;
        }, 0);
        return own + ((i === 0 ? 1 : -1) * Math.abs(twice)) / 2;
      }, 0),
    0,
  );
const extent = (polygons: Polygons): Box => {
  const points = polygons.flat(2);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
};
const polygon = (points: readonly (readonly [number, number])[]): [number, number][][] => [
  points.map(([x, y]): [number, number] => [x, y]),
];
const and = (a: Polygons | [number, number][][], b: [number, number][][]): Polygons =>
  polygonClipping.intersection(a as never, b as never);

/** What cuts leave, told by the rules alone: a polygon for each piece, and the kinds of cuts on its way. */
interface SawnPiece {
  readonly wood: Polygons;
  readonly way: readonly string[];
}

/**
 * Saws a layout out of its boards by the rules as they are told to the maker, by a polygon library, and says everything that is
 * wrong with it.
 */
export const faultsOf = (
  planks: readonly Plank[],
  wanted: readonly Wanted[],
  saw: Saw,
  breakout: Breakout,
): string[] => {
  const faults: string[] = [];
  const seen = new Map<number, number>();
  for (const { plank: index, cuts, blanks, offcuts } of breakout.boards) {
    const board = planks[index];
    if (board === undefined) {
      faults.push(`no board ${index}`);
      continue;
    }
    const outline = polygon(board.outline);
    const pieces = new Map<number, SawnPiece>([[0, { wood: [outline] as Polygons, way: [] }]]);
    const children = new Map<number, number[]>();
    cuts.forEach(({ kind, piece, at }, k) => {
      const whole = pieces.get(piece);
      if (whole === undefined) {
        faults.push(`board ${index}, cut ${k}: no piece ${piece}`);
        return;
      }
      pieces.delete(piece);
      const band = (from: number, to: number): [number, number][][] =>
        ring(kind === 'crosscut' ? [from, -FAR, to, FAR] : [-FAR, from, FAR, to]);
      if (area(and(whole.wood, band(at, at + saw.kerf))) <= 0)
        faults.push(`board ${index}, cut ${k}: in the air`);
      const way = whole.way.at(-1) === kind ? whole.way : [...whole.way, kind];
      if (way.length > 4) faults.push(`board ${index}, cut ${k}: too many changes`);
      children.set(piece, [2 * k + 1, 2 * k + 2]);
      const parts = [and(whole.wood, band(-FAR, at)), and(whole.wood, band(at + saw.kerf, FAR))];
      parts.forEach((wood, side) => {
        if (area(wood) > NOTHING) pieces.set(2 * k + 1 + side, { wood, way });
      });
    });
    const done = new Set(board.done?.blanks.map(({ piece }) => piece));
    for (const { wanted: id, turned, x, y, length, width, piece } of blanks) {
      const name = `board ${index}, blank ${id}`;
      seen.set(id, (seen.get(id) ?? 0) + 1);
      const wish = wanted[id];
      const own = pieces.get(piece);
      if (wish === undefined || own === undefined) {
        faults.push(`${name}: ${wish === undefined ? 'nobody wants it' : `no piece ${piece}`}`);
        continue;
      }
      const box: Box = [x, y, x + length, y + width];
      const there = extent(own.wood);
      if (box.some((value, i) => Math.abs(value - (there[i] ?? 0)) > NOTHING))
        faults.push(`${name}: ${box} is not its piece, ${there}`);
      if (area(own.wood) < length * width - NOTHING) faults.push(`${name}: not all wood`);
      const fits = (l: number, w: number) => length >= l - 1e-3 && width >= w - 1e-3;
      const along = fits(wish.length, wish.width);
      if (!along && !(wish.eitherWay && fits(wish.width, wish.length))) faults.push(`${name}: too small`);
      if (done.has(piece)) continue;
      if (!board.stocks.includes(wish.stock) || board.thickness < wish.thickness)
        faults.push(`${name}: wrong board`);
      const long: Box = [
        x - (board.clean.left ? 0 : saw.ends),
        y,
        x + length + (board.clean.right ? 0 : saw.ends),
        y + width,
      ];
      if (area(polygonClipping.difference(ring(long), outline)) > 1) faults.push(`${name}: too near an end`);
      for (const defect of board.defects) {
        const marred = polygon(defect.outline);
        if (!wish.allows.includes(defect.kind) && area(and([ring(box)], marred)) > NOTHING)
          faults.push(`${name}: a ${defect.kind}`);
        for (const { from, to } of wish.zones) {
          const zone: Box = turned
            ? [x + length - to[0], y + width - to[1], x + length - from[0], y + width - from[1]]
            : [x + from[0], y + from[1], x + to[0], y + to[1]];
          if (along && area(and([ring(zone)], marred)) > NOTHING)
            faults.push(`${name}: a ${defect.kind} in a joint`);
        }
      }
    }
    // A fourth run frees one blank of the piece that it begins with.
    const isBlank = new Set(blanks.map(({ piece }) => piece));
    const within = (piece: number): number[] => [piece, ...(children.get(piece) ?? []).flatMap(within)];
    const wayOf = new Map<number, readonly string[]>();
    cuts.forEach(({ piece, kind }, k) => {
      const before = wayOf.get(piece) ?? [];
      const way = before.at(-1) === kind ? before : [...before, kind];
      wayOf.set(2 * k + 1, way);
      wayOf.set(2 * k + 2, way);
      if (way.length === 4 && before.length === 3 && within(piece).filter((id) => isBlank.has(id)).length > 1)
        faults.push(`board ${index}, cut ${k}: a fourth run that frees more than one blank`);
    });
    for (const { x, y, length, width } of offcuts) {
      const box = ring([x, y, x + length, y + width]);
      if (length < saw.keep.length - 1e-3 || width < saw.keep.width - 1e-3)
        faults.push(`board ${index}: a small offcut`);
      if (board.defects.some(({ outline }) => area(and([box], polygon(outline))) > NOTHING))
        faults.push(`board ${index}: an offcut is not clear`);
      const blank = blanks.find(
        (each) =>
          area(and([box], ring([each.x, each.y, each.x + each.length, each.y + each.width]))) > NOTHING,
      );
      if (blank !== undefined) faults.push(`board ${index}: an offcut in a blank`);
    }
  }
  for (const [id, times] of seen) if (times > 1) faults.push(`blank ${id} is cut ${times} times`);
  wanted.forEach(({ spare }, id) => {
    const missing = breakout.missing.includes(id);
    if (missing ? seen.has(id) || spare : !seen.has(id) && !spare)
      faults.push(`blank ${id}: cut or missing?`);
  });
  return faults;
};
