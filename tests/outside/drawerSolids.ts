import type { Manifold, ManifoldToplevel, Vec3 } from 'manifold-3d';
import startManifold from 'manifold-3d';
import type { Drawer } from '../../src/drawer/drawer.ts';
import type { DrawerPart } from '../../src/drawer/drawerParts.ts';
import type { Interval, Joint } from '../../src/joint/joint.ts';

/** Every board of a drawer as a solid, in its place; x across from the left, y back from the front, z up. */
export type DrawerSolids = Readonly<Record<'front' | 'left' | 'right' | 'back' | 'bottom', Manifold>> & {
  readonly slips: readonly Manifold[];
};

/** manifold-3d, ready to work. */
export const startSolids = async (): Promise<ManifoldToplevel> => {
  const solids = await startManifold();
  solids.setup();
  return solids;
};

/**
 * Makes a drawer's boards as a maker would who has the parts list and the marks: each is planed to its finished size,
 * set with its corner where its place begins, and cut by its own marks - tails by the tails, pins by the pins - so that
 * the boards fit together only if sizes, places and marks all agree.
 */
export const drawerSolids = ({ Manifold }: ManifoldToplevel, drawer: Drawer): DrawerSolids => {
  const { spec, boards, right } = drawer;
  const { groove } = spec;
  const isBox = spec.box !== undefined;
  const [sideStop, pinStop] = groove.rebate ? [0, groove.stopped ?? 0] : [groove.stopped ?? 0, 0];
  const fronts = [drawer.front, right?.front ?? drawer.front] as const;
  const backs = [drawer.back, right?.back ?? drawer.back] as const;
  const lap = drawer.front.pinBoard.lap;
  const wallOf = ({ tailBoard, proud }: Joint): number => tailBoard.thickness - proud;

  const block = (from: Vec3, to: Vec3): Manifold =>
    Manifold.cube([to[0] - from[0], to[1] - from[1], to[2] - from[2]]).translate(from);

  /** A board of this size whose nearest lower left corner is where the board's place begins. */
  const blank = (board: DrawerPart, size: Vec3, index = 0): { solid: Manifold; from: Vec3; to: Vec3 } => {
    const [x, y, z] = board.boxes[index]?.from ?? [Number.NaN, Number.NaN, Number.NaN];
    const to: Vec3 = [x + size[0], y + size[1], z + size[2]];
    return { solid: block([x, y, z], to), from: [x, y, z], to };
  };

  /** A bar through x, as high at y0 and at y1 as is said, all raised by `up`. */
  const wedge = (x: Interval, y: Interval, at0: Interval, at1: Interval, up: number): Manifold =>
    Manifold.hull(
      x.flatMap((across): Vec3[] => [
        [across, y[0], at0[0] + up],
        [across, y[0], at0[1] + up],
        [across, y[1], at1[0] + up],
        [across, y[1], at1[1] + up],
      ]),
    );

  /** What a saw and a chisel take out between the tails of a side's end. */
  const tailWaste = (joint: Joint, x: Interval, baseline: number, end: number, up: number): Manifold =>
    block([x[0], Math.min(baseline, end), up], [x[1], Math.max(baseline, end), up + joint.width]).subtract(
      Manifold.union(joint.tails.map(({ tip, base }) => wedge(x, [baseline, end], base, tip, up))),
    );

  /** What is taken out between the pins at the left end and at the right of a front or a back of this length. */
  const pinWaste = (
    [left, right]: readonly [Joint, Joint],
    length: number,
    inside: number,
    tips: number,
    up: number,
  ): Manifold[] =>
    (
      [
        [left, [0, wallOf(left)]],
        [right, [length - wallOf(right), length]],
      ] as const
    ).map(([joint, x]) =>
      block([x[0], Math.min(inside, tips), up], [x[1], Math.max(inside, tips), up + joint.width]).subtract(
        Manifold.union(joint.pins.map(({ narrow, wide }) => wedge(x, [inside, tips], wide, narrow, up))),
      ),
    );

  const side = (index: 0 | 1): Manifold => {
    const { rightSide } = boards;
    const [board, place] =
      index === 1 && rightSide ? ([rightSide, 0] as const) : ([boards.side, index] as const);
    const { length, width } = board;
    const [front, back] = [fronts[index], backs[index]];
    const { solid, from, to } = blank(board, [wallOf(front), length, width], place);
    const x: Interval = [from[0], to[0]];
    const inner: Interval = index === 0 ? [to[0] - groove.depth, to[0]] : [from[0], from[0] + groove.depth];
    const waste = [
      tailWaste(front, x, from[1] + front.depth, from[1], 0),
      tailWaste(back, x, to[1] - back.depth, to[1], boards.back.boxes[0]?.from[2] ?? Number.NaN),
      ...(spec.bottom.hold.kind === 'groove'
        ? [
            block(
              [inner[0], from[1] + sideStop, groove.offset],
              [inner[1], to[1] - (isBox ? sideStop : 0), groove.offset + groove.width],
            ),
          ]
        : []),
    ];
    return solid.subtract(Manifold.union(waste));
  };

  const frontBoard = (): Manifold => {
    const { length, width, thickness } = boards.front;
    const { solid, from, to } = blank(boards.front, [length, thickness, width]);
    const boxLength = boards.back.length;
    const rebate = block([from[0], lap, from[2]], to).subtract(
      block([0, lap, 0], [boxLength, thickness, boards.side.width]),
    );
    return solid.subtract(
      Manifold.union([
        rebate,
        ...pinWaste(fronts, boxLength, thickness, lap, 0),
        block(
          [from[0] + pinStop, thickness - groove.depth, groove.offset],
          [to[0] - pinStop, thickness, groove.offset + groove.width],
        ),
      ]),
    );
  };

  const backBoard = (): Manifold => {
    const { length, width, thickness } = boards.back;
    const { solid, from, to } = blank(boards.back, [length, thickness, width]);
    const pins = pinWaste(backs, length, from[1], to[1] - drawer.back.pinBoard.lap, from[2]);
    const grooves = isBox
      ? [
          block(
            [from[0] + pinStop, from[1], groove.offset],
            [to[0] - pinStop, from[1] + groove.depth, groove.offset + groove.width],
          ),
        ]
      : [];
    return solid.subtract(Manifold.union([...pins, ...grooves]));
  };

  const bottomBoard = (): Manifold => {
    const { length, width, thickness } = boards.bottom;
    const [across, deep] = spec.bottom.kind === 'solid' ? [length, width] : [width, length];
    const { solid, from, to } = blank(boards.bottom, [across, deep, thickness]);
    const under = to[2] - groove.width;
    // The three edges that enter grooves are thinned from below.
    return under <= from[2]
      ? solid
      : solid.subtract(
          block(from, [to[0], to[1], under]).subtract(
            block(
              [from[0] + groove.depth, from[1] + groove.depth, from[2]],
              [to[0] - groove.depth, to[1], under],
            ),
          ),
        );
  };

  const slip = (board: DrawerPart, index: 0 | 1): Manifold => {
    const { solid, from, to } = blank(board, [board.thickness, board.length, board.width], index);
    const inner: Interval = index === 0 ? [to[0] - groove.depth, to[0]] : [from[0], from[0] + groove.depth];
    return solid.subtract(
      block([inner[0], from[1], groove.offset], [inner[1], to[1], groove.offset + groove.width]),
    );
  };

  return {
    front: frontBoard(),
    left: side(0),
    right: side(1),
    back: backBoard(),
    bottom: bottomBoard(),
    slips: boards.slip === undefined ? [] : [slip(boards.slip, 0), slip(boards.slip, 1)],
  };
};

export const everyBoard = ({ slips, ...boards }: DrawerSolids): Manifold[] => [
  ...Object.values(boards),
  ...slips,
];
