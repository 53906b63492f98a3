import type { Plank } from '../plank.ts';
import type { Saw } from '../wanted.ts';
import type { Polygon } from './bandProfile.ts';
import { type BlankType, type PinnedRect, pinsOf, posesAlong } from './blankType.ts';
import { clearStarts, type Ground, type Pose, type Rect, type Stretches, union } from './clearStarts.ts';
import { isSquare } from './looserPlank.ts';
import { exactTicks, ticks } from './ticks.ts';

/** The direction of the first cuts' kerfs' order: along x for crosscuts, along y for rips. */
export type Axis = 'x' | 'y';

/** A type of blank as it lies in a view. */
export interface Shape {
  readonly type: number;
  readonly length: number;
  readonly width: number;
  readonly poses: readonly Pose[];
  readonly quarter: boolean;
  /** Of a pinned blank: where it lies. */
  readonly pinned?: PinnedRect;
  /** Of a run: its pieces as they follow each other, not turned and turned. */
  readonly orders?: readonly Order[];
}

/** A run that lies one way. */
interface Order {
  readonly turned: boolean;
  readonly members: readonly Member[];
}

/** One piece of a run in one way of lying. */
interface Member {
  readonly type: BlankType;
  readonly pose: Pose;
  readonly pinned: PinnedRect | undefined;
  readonly starts: Map<number, Stretches>;
}

/** Where a shape lies, piece by piece. */
export interface Laid {
  readonly end: number;
  readonly turned: boolean;
  /** The type of each piece of a run, and where it begins. */
  readonly parts: readonly { readonly type: BlankType; readonly x: number; readonly pose: Pose }[];
}

const swapRect = ({ x0, y0, x1, y1 }: Rect): Rect => ({ x0: y0, y0: x0, x1: y1, y1: x1 });
const swapPose = ({ length, width, zones }: Pose): Pose => ({
  length: width,
  width: length,
  zones: zones.map(swapRect),
});

const polygonOf = (points: readonly (readonly [number, number])[], axis: Axis): Polygon =>
  Float64Array.from(points.flatMap(([x, y]) => (axis === 'x' ? [x, y] : [y, x])).map(exactTicks));

export const groundOf = ({ outline, defects, clean }: Plank, { ends }: Saw, axis: Axis): Ground => {
  const margin = {
    x0: clean.left ? 0 : ticks(ends),
    y0: 0,
    x1: clean.right ? 0 : ticks(ends),
    y1: 0,
  };
  return {
    outline: polygonOf(outline, axis),
    defects: defects.map(({ kind, outline }) => ({ kind, outline: polygonOf(outline, axis) })),
    taken: [],
    margin: axis === 'x' ? margin : swapRect(margin),
  };
};

/** Smallest rectangle in whole ticks round a board, in its own coordinates. */
export const extentOf = ({ outline }: Plank): Rect => {
  const xs = outline.map(([x]) => exactTicks(x));
  const ys = outline.map(([, y]) => exactTicks(y));
  return {
    x0: Math.floor(Math.min(...xs)),
    y0: Math.floor(Math.min(...ys)),
    x1: Math.ceil(Math.max(...xs)),
    y1: Math.ceil(Math.max(...ys)),
  };
};

/**
 * A piece of a board, seen so that its first cuts are square to x: where blanks of each shape may lie. What was asked once is
 * remembered.
 */
export class PieceView {
  readonly region: Rect;
  readonly shapes: readonly Shape[];
  readonly kerf: number;
  /** Heights at which a blank may lie again, beyond a defect, for each shape, rising. */
  readonly restarts: readonly (readonly number[])[];
  /** The same piece the other way, where edges slope: how high a blank must lie then depends on where it begins. */
  readonly #across: PieceView | undefined;
  readonly ground: Ground;
  /** Pinned blanks of this piece, and the types that they belong to. */
  readonly pins: readonly { readonly type: number; readonly at: Rect }[];
  readonly #types: readonly BlankType[];
  readonly #starts: readonly Map<number, Stretches>[];

  constructor(
    readonly plank: Plank,
    readonly axis: Axis,
    piece: Rect,
    types: readonly BlankType[],
    /** Which of the types may come out of this board. */
    served: readonly boolean[],
    saw: Saw,
    /** Whether lists that run through begin at the left end: not turned. */
    { slopes = !isSquare(plank), begins = false } = {},
  ) {
    this.#across = slopes
      ? new PieceView(plank, axis === 'x' ? 'y' : 'x', piece, types, served, saw, { slopes: false })
      : undefined;
    this.region = axis === 'x' ? piece : swapRect(piece);
    this.kerf = ticks(saw.kerf);
    this.pins = types.flatMap((type, index) =>
      served[index]
        ? pinsOf(type).flatMap(({ at }) => (at ? [{ type: index, at: seen(at, axis) }] : []))
        : [],
    );
    this.ground = {
      ...groundOf(plank, saw, axis),
      taken: this.pins.map(({ at: { x0, y0, x1, y1 } }) => ({
        x0: x0 - this.kerf,
        y0: y0 - this.kerf,
        x1: x1 + this.kerf,
        y1: y1 + this.kerf,
      })),
    };
    this.#types = types;
    const shapes = types.flatMap((type, index): Shape[] => {
      if (!served[index]) return [];
      if (type.run !== undefined) return type.run.axis === axis ? [runShape(type, index, axis, begins)] : [];
      if (type.pin?.at !== undefined) return [pinnedShape(type.pin.at, index, axis)];
      const along = posesAlong(type);
      const ways = type.eitherWay && type.length !== type.width ? [along, along.map(swapPose)] : [along];
      return ways.map((way, turn) => {
        const poses = axis === 'x' ? way : way.map(swapPose);
        const { length = 0, width = 0 } = poses[0] ?? {};
        return { type: index, length, width, poses, quarter: turn === 1 };
      });
    });
    const { x0, y0, x1, y1 } = this.region;
    this.shapes = shapes.filter(({ length, width }) => length <= x1 - x0 && width <= y1 - y0);
    this.#starts = this.shapes.map(() => new Map());
    this.restarts = this.shapes.map((shape, i) => this.#restartsOf(shape, i));
  }

  /** Whether a type may lie anywhere, were nothing else cut. */
  holds(type: number): boolean {
    const { x0, y0, y1 } = this.region;
    return this.shapes.some((shape, i) => shape.type === type && this.least(i, x0, y0, y1) >= 0);
  }

  /** The x at which a shape may begin at height y. */
  starts(shape: number, y: number): Stretches {
    const known = this.#starts[shape]?.get(y);
    if (known !== undefined) return known;
    const found = this.poseStarts(shape, y).reduce(union, []);
    this.#starts[shape]?.set(y, found);
    return found;
  }

  /** The same for each of its poses. */
  poseStarts(shape: number, y: number): readonly Stretches[] {
    const { type, poses, pinned } = this.shapes[shape] as Shape;
    if (pinned !== undefined) return [startsOfPinned(pinned, y)];
    const allows = this.#types[type]?.allows ?? new Set();
    return poses.map((pose) => clearStarts(this.ground, this.region, pose, allows, y));
  }

  #restartsOf({ width, poses, pinned, orders }: Shape, shape: number): number[] {
    if (pinned !== undefined) return [pinned.y0];
    const { outline, defects, margin } = this.ground;
    const members = (orders ?? []).flatMap((order) => order.members);
    const found = new Set(members.flatMap((member) => member.pinned?.y0 ?? []));
    for (let i = 1; i < outline.length; i += 2) {
      const last = (i + outline.length - 2) % outline.length;
      const y = (outline[i] ?? 0) + margin.y0;
      const rise = outline[i - 1] === outline[last - 1] ? 0 : (outline[last] ?? 0) + margin.y0 - y;
      // Along a sloping edge there is no one place to begin again: a few serve.
      for (let part = 0; part < (rise === 0 ? 1 : 4); part++) found.add(Math.ceil(y + (rise * part) / 4));
    }
    const lies = [...poses, ...members.map(({ pose }) => pose)];
    const rises = [0, ...lies.flatMap(({ zones }) => zones.map(({ y0 }) => y0))];
    for (const { outline: defect } of defects) {
      const top = defect.reduce((most, y, i) => (i % 2 === 1 ? Math.max(most, y) : most), -Infinity);
      for (const rise of rises) found.add(Math.ceil(top) - rise);
    }
    const begins = (y: number) => this.first(shape, this.region.x0, y) < Number.POSITIVE_INFINITY;
    return [...found]
      .filter((y) => y > this.region.y0 && y + width <= this.region.y1 && begins(y))
      .sort((a, b) => a - b);
  }

  /** The least x >= `from` at which a shape may begin at height y; infinite where there is none. */
  first(shape: number, from: number, y: number): number {
    if (this.shapes[shape]?.orders === undefined) return firstFrom(this.starts(shape, y), from);
    return this.layRun(shape, from, y)?.parts[0]?.x ?? Number.POSITIVE_INFINITY;
  }

  /** A run at height y, all its pieces at or beyond `from`, as near to each other as the wood allows. */
  layRun(shape: number, from: number, y: number): Laid | undefined {
    let best: Laid | undefined;
    this.shapes[shape]?.orders?.forEach(({ turned, members }) => {
      let end = from - this.kerf;
      const parts = members.map(({ type, pose, pinned, starts }) => {
        const known =
          starts.get(y) ??
          (pinned === undefined
            ? clearStarts(this.ground, this.region, pose, type.allows, y)
            : startsOfPinned(pinned, y));
        starts.set(y, known);
        const x = firstFrom(known, end + this.kerf);
        end = x + pose.length;
        return { type, x, pose };
      });
      if (end < (best?.end ?? Number.POSITIVE_INFINITY)) best = { end, turned, parts };
    });
    return best;
  }

  /** Where what was last found by `least` lies, and where it ends. */
  foundY = 0;
  foundEnd = 0;

  /** The least x >= `from` at which a shape may lie between two heights, and `foundY` there; or -1. */
  least(shape: number, from: number, low: number, high: number): number {
    const { length, width, orders } = this.shapes[shape] as Shape;
    if (orders !== undefined) return this.#leastRun(shape, from, low, high);
    let best = firstFrom(this.starts(shape, low), from);
    this.foundY = low;
    this.foundEnd = best + length;
    if (best === from) return best;
    if (this.#across !== undefined) {
      const y = this.lowest(shape, from, low);
      if (y + width <= high) {
        this.foundY = y;
        this.foundEnd = from + length;
        return from;
      }
    }
    for (const y of this.restarts[shape] ?? []) {
      if (y <= low) continue;
      if (y + width > high) break;
      const x = firstFrom(this.starts(shape, y), from);
      if (x < best) {
        best = x;
        this.foundY = y;
        if (x === from) break;
      }
    }
    this.foundEnd = best + length;
    return best === Number.POSITIVE_INFINITY ? -1 : best;
  }

  /** The least height >= `low` at which a shape may lie from an x on; infinite where there is none. */
  lowest(shape: number, x: number, low: number): number {
    const { type, quarter } = this.shapes[shape] as Shape;
    const own =
      this.#across?.shapes.findIndex((other) => other.type === type && other.quarter === quarter) ?? -1;
    return own < 0
      ? Number.POSITIVE_INFINITY
      : (this.#across?.first(own, low, x) ?? Number.POSITIVE_INFINITY);
  }

  #leastRun(shape: number, from: number, low: number, high: number): number {
    const { width } = this.shapes[shape] as Shape;
    let best = -1;
    this.foundEnd = Number.POSITIVE_INFINITY;
    for (const y of [low, ...(this.restarts[shape] ?? [])]) {
      if (y < low || y + width > high) continue;
      const laid = this.layRun(shape, from, y);
      if (laid === undefined || laid.end >= this.foundEnd) continue;
      this.foundY = y;
      this.foundEnd = laid.end;
      best = laid.parts[0]?.x ?? -1;
    }
    return best;
  }
}

/** A place on the board, in a view's coordinates. */
const seen = (at: PinnedRect, axis: Axis): PinnedRect =>
  axis === 'x' ? at : { ...swapRect(at), turned: at.turned };

/** Where a pinned blank may begin at a height: it has been found clear there, and lies nowhere else. */
const startsOfPinned = ({ x0, y0 }: PinnedRect, y: number): Stretches => (y === y0 ? [x0, x0] : []);

const pinnedShape = (at: PinnedRect, type: number, axis: Axis): Shape => {
  const pinned = seen(at, axis);
  const { x0, y0, x1, y1 } = pinned;
  const pose = { length: x1 - x0, width: y1 - y0, zones: [] };
  return { type, length: pose.length, width: pose.width, poses: [pose], quarter: false, pinned };
};

const runShape = (type: BlankType, index: number, axis: Axis, begins: boolean): Shape => {
  const { length, width, run } = type;
  const members = run?.members ?? [];
  const order = (turned: boolean): Order => {
    const along = members.map((member): Member => {
      const [straight, halfTurn] = posesAlong(member) as [Pose, Pose?];
      const pose = turned ? (halfTurn ?? straight) : straight;
      const pinned = member.pin?.at && seen(member.pin.at, axis);
      return { type: member, pose: axis === 'x' ? pose : swapPose(pose), pinned, starts: new Map() };
    });
    return { turned, members: turned ? along.reverse() : along };
  };
  const asked = pinsOf(type).flatMap(({ at }) => at?.turned ?? []);
  // Without zones all is the same turned, but for the order; what is pinned may lie against the figure's beginning.
  const ways = begins && asked.length === 0 ? [false] : [false, true];
  const whole = { length, width, zones: [] };
  return {
    type: index,
    ...(axis === 'x' ? whole : swapPose(whole)),
    poses: [axis === 'x' ? whole : swapPose(whole)],
    quarter: false,
    orders: ways.filter((turned) => asked.every((own) => own === turned)).map(order),
  };
};

/** The least number in the stretches that is not below `from`. */
const firstFrom = (stretches: Stretches, from: number): number => {
  for (let i = 1; i < stretches.length; i += 2)
    if ((stretches[i] ?? 0) >= from) return Math.max(from, stretches[i - 1] ?? 0);
  return Number.POSITIVE_INFINITY;
};
