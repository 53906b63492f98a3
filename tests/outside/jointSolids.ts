import type { Manifold, ManifoldToplevel, Vec3 } from 'manifold-3d';
import startManifold from 'manifold-3d';
import { gauges } from '../../src/joint/gauges.ts';
import type { Interval, Joint } from '../../src/joint/joint.ts';
import { kindOf } from '../../src/joint/kinds/kinds.ts';

/**
 * A corner as two solid boards, assembled. x runs across the boards' width from the reference edge; y along the tail
 * board's length, 0 at its baseline and the pin board's inside face, growing toward its tips; z along the pin board's
 * length, 0 at the tail board's inside face, growing toward the pin board's end.
 */
export interface CornerSolids {
  readonly tailBoard: Manifold;
  readonly pinBoard: Manifold;
}

/** How far each board goes on beyond the joint, in mm. */
export const BEYOND = 20;

/** manifold-3d, ready to work. */
export const startSolids = async (): Promise<ManifoldToplevel> => {
  const solids = await startManifold();
  solids.setup();
  return solids;
};

/**
 * Cuts both boards as a maker would who has only the numbers: the tail board from the tails and its own gauge setting,
 * the pin board from the pins and its two. Nothing of the one board goes into the other, so that they fit only if the
 * numbers do.
 */
export const cornerSolids = (solids: ManifoldToplevel, joint: Joint): CornerSolids => {
  if (kindOf(joint).sockets === 'closed') return closedSolids(solids, joint);
  const { Manifold } = solids;
  const { width, tailBoard, pinBoard, tails, pins, smallPins = [], shoulder, mitre } = joint;
  const gauge = gauges(joint);
  const inner = [shoulder.lower, width - shoulder.upper] as const;
  // At a shoulder the tail board is planed at its angle off its face, the pin board at the same off a square cut.
  const lean = Math.tan(((mitre?.degrees ?? 45) * Math.PI) / 180);
  const edges = [
    [0, shoulder.lower],
    [width - shoulder.upper, width],
  ].flatMap(([from = 0, to = 0]) => (to > from ? [[from, to] as const] : []));
  const bar = (from: number, to: number, section: readonly (readonly [y: number, z: number])[]): Manifold =>
    Manifold.hull([from, to].flatMap((x) => section.map(([y, z]): Vec3 => [x, y, z])));
  const cutBack = set(joint, 'tailBoardCutBack');

  const block = (from: Vec3, to: Vec3): Manifold =>
    Manifold.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

  /** A bar across y from 0 to `depth` and across z from 0 to `length`, as wide at either end of y as is said. */
  const wedge = (near: Interval, far: Interval, depth: number, length: number): Manifold =>
    Manifold.hull(
      [0, length].flatMap((z): Vec3[] => [
        [near[0], 0, z],
        [near[1], 0, z],
        [far[0], depth, z],
        [far[1], depth, z],
      ]),
    );

  const tailWood = Manifold.union([
    block([0, -BEYOND, 0], [width, 0, tailBoard.thickness]),
    ...tails.map(({ tip, base }) => wedge(base, tip, gauge.tailBoard - cutBack, tailBoard.thickness)),
    ...edges.map(([from, to]) =>
      bar(from, to, [
        [0, 0],
        [0, tailBoard.thickness],
        [tailBoard.thickness / lean, tailBoard.thickness],
      ]),
    ),
  ]);
  const sockets = smallPins.map(({ narrow, wide }) =>
    wedge(wide, narrow, set(joint, 'tailBoardSmallPins'), tailBoard.thickness).translate([
      0,
      gauge.tailBoard - set(joint, 'tailBoardSmallPins'),
      0,
    ]),
  );
  return {
    tailBoard: sockets.length === 0 ? tailWood : Manifold.difference([tailWood, ...sockets]),
    pinBoard: Manifold.union([
      block([0, 0, -BEYOND], [width, pinBoard.thickness, 0]),
      ...pins.map(({ narrow, wide }) => wedge(wide, narrow, gauge.pinBoardEnd, gauge.pinBoardFace)),
      ...smallPins.map(({ narrow, wide }) => {
        const from = set(joint, 'pinBoardSmallPins');
        return wedge(wide, narrow, pinBoard.thickness - from, gauge.pinBoardFace).translate([0, from, 0]);
      }),
      ...(kindOf(joint).sockets === 'stopped'
        ? [block([inner[0], gauge.pinBoardEnd, 0], [inner[1], pinBoard.thickness, gauge.pinBoardFace])]
        : []),
      ...edges.map(([from, to]) =>
        bar(from, to, [
          [0, 0],
          [pinBoard.thickness, 0],
          [pinBoard.thickness, pinBoard.thickness * lean],
        ]),
      ),
    ]),
  };
};

/** A gauge's setting by its name; 0 where the corner has none of it. */
const set = (joint: Joint, name: string): number =>
  kindOf(joint)
    .gauges(joint)
    .find((gauge) => gauge.name === name)?.length ?? 0;

/**
 * The same of a corner that laps close on both boards: each board rebated as its gauge says, then cut, its lap left square
 * or planed to a mitre from the rebate's inside corner to the outside corner; at the shoulders mitred right through.
 */
const closedSolids = ({ Manifold }: ManifoldToplevel, joint: Joint): CornerSolids => {
  const { width, tailBoard, pinBoard, tails, pins, shoulder, mitre } = joint;
  const gauge = new Map(
    kindOf(joint)
      .gauges(joint)
      .map(({ name, length }) => [name, length]),
  );
  const set = (name: string): number => gauge.get(name) ?? 0;
  const [ts, tp] = [tailBoard.thickness, pinBoard.thickness];

  /** A bar along x with a section in y and z. */
  const bar = (from: number, to: number, section: readonly (readonly [y: number, z: number])[]): Manifold =>
    Manifold.hull([from, to].flatMap((x) => section.map(([y, z]): Vec3 => [x, y, z])));

  const inner = [shoulder.lower, width - shoulder.upper] as const;
  const edges = [
    [0, shoulder.lower],
    [width - shoulder.upper, width],
  ].flatMap(([from = 0, to = 0]) => (to > from ? [[from, to] as const] : []));
  const tailsEnd = set('tailBoard') - set('tailBoardRebate');
  const pinsEnd = set('pinBoardFace') - set('pinBoardRebate');
  const under = set('tailBoardEnd');
  const deep = set('pinBoardEnd');

  /** A tail or a pin between two faces, as wide at either as is said. */
  const wedge = (near: Interval, far: Interval, y: number, z: number): Manifold =>
    Manifold.hull(
      [0, z].flatMap((each): Vec3[] => [
        [near[0], 0, each],
        [near[1], 0, each],
        [far[0], y, each],
        [far[1], y, each],
      ]),
    );
  return {
    tailBoard: Manifold.union([
      bar(0, width, [
        [-BEYOND, 0],
        [-BEYOND, ts],
        [0, 0],
        [0, ts],
      ]),
      ...tails.map(({ tip, base }) => wedge(base, tip, tailsEnd, under)),
      bar(...inner, [
        [0, under],
        [0, ts],
        [tailsEnd, under],
        [set('tailBoard'), ts],
      ]),
      ...edges.map(([from, to]) =>
        bar(from, to, [
          [0, 0],
          [0, ts],
          [tp, ts],
        ]),
      ),
    ]),
    pinBoard: Manifold.union([
      bar(0, width, [
        [0, -BEYOND],
        [tp, -BEYOND],
        [0, 0],
        [tp, 0],
      ]),
      ...pins.map(({ narrow, wide }) => wedge(wide, narrow, deep, pinsEnd)),
      bar(...inner, [
        [deep, 0],
        [tp, 0],
        [deep, mitre === undefined ? set('pinBoardFace') : pinsEnd],
        [tp, set('pinBoardFace')],
      ]),
      ...edges.map(([from, to]) =>
        bar(from, to, [
          [0, 0],
          [tp, 0],
          [tp, ts],
        ]),
      ),
    ]),
  };
};

/** How much wood is in two places at once when the tail board is moved so, in mm³. */
export const overlap = ({ tailBoard, pinBoard }: CornerSolids, move: Vec3 = [0, 0, 0]): number => {
  const moved = tailBoard.translate(move);
  const shared = moved.intersect(pinBoard);
  const volume = shared.volume();
  moved.delete();
  shared.delete();
  return volume;
};

/** The volume that both boards fill together, in mm³. */
export const filled = ({ tailBoard, pinBoard }: CornerSolids): number => {
  const corner = tailBoard.add(pinBoard);
  const volume = corner.volume();
  corner.delete();
  return volume;
};

/** Gives back the memory that garbage collection does not reach. */
export const dispose = ({ tailBoard, pinBoard }: CornerSolids): void => {
  tailBoard.delete();
  pinBoard.delete();
};
