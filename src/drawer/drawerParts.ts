import { bottomDepth } from './bottomDepth.ts';
import { grooveTop, type Sizes } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';

/** A point in a drawer, in mm: x from the left side's outside face, y back from the front's outside face, z up from the reference edge. */
export type Point3 = readonly [x: number, y: number, z: number];

/** The box that a board fills with its joints' tails, its lip and what enters its grooves. */
export interface PartBox {
  readonly from: Point3;
  readonly to: Point3;
}

/** One kind of board in a drawer, at its finished size. */
export interface DrawerPart {
  /** Along the grain; of a panel, which has none that matters, from front to back. */
  readonly length: number;
  readonly width: number;
  /** Of a proud side: before it is planed flush. */
  readonly thickness: number;
  /** Where each lies: one, or the left one and then the right one. Sides are planed flush. */
  readonly boxes: readonly PartBox[];
}

/** Every kind of board in a drawer. */
export interface DrawerParts {
  readonly front: DrawerPart;
  readonly side: DrawerPart;
  readonly back: DrawerPart;
  readonly bottom: DrawerPart;
  /** Only where slips hold the bottom. */
  readonly slip?: DrawerPart;
}

/** Every board of a drawer, where it lies. */
export const boardsOf = (spec: DrawerSpec, sizes: Sizes): DrawerParts => {
  const { stock, groove, bottom } = spec;
  const { width, height, depth, lap, backLap, rebate, wall, inside, backFrom, backHeight } = sizes;
  const hold = bottom.hold.kind === 'slips' ? bottom.hold : undefined;
  const bottomSide = wall + (hold?.width ?? 0) - groove.depth + bottom.slack;
  const deep = bottomDepth(spec, sizes);
  const bottomFrom = stock.front.thickness - groove.depth + (spec.box === undefined ? 0 : bottom.slack);
  // A bottom that is thicker than its groove is let in with its upper face at the groove's upper edge.
  const bottomLevel = Math.min(groove.offset, grooveTop(groove) - stock.bottom.thickness);
  const bottomBox: PartBox = {
    from: [bottomSide, bottomFrom, bottomLevel],
    to: [width - bottomSide, bottomFrom + deep, bottomLevel + stock.bottom.thickness],
  };
  const across = width - 2 * bottomSide;
  const solid = bottom.kind === 'solid';
  /** The same box at the left and, as in a mirror, at the right. */
  const pair = ({ from, to }: PartBox): PartBox[] => [
    { from, to },
    { from: [width - to[0], from[1], from[2]], to: [width - from[0], to[1], to[2]] },
  ];
  return {
    front: {
      length: width + 2 * rebate.sides,
      width: height + rebate.top + rebate.bottom,
      thickness: stock.front.thickness,
      boxes: [
        {
          from: [0 - rebate.sides, 0, 0 - rebate.bottom],
          to: [width + rebate.sides, stock.front.thickness, height + rebate.top],
        },
      ],
    },
    side: {
      length: depth - lap - backLap,
      width: height,
      thickness: stock.side.thickness,
      boxes: pair({ from: [0, lap, 0], to: [wall, depth - backLap, height] }),
    },
    back: {
      length: width,
      width: backHeight,
      thickness: stock.back.thickness,
      boxes: [
        {
          from: [0, depth - stock.back.thickness, backFrom],
          to: [width, depth, backFrom + backHeight],
        },
      ],
    },
    bottom: {
      length: solid ? across : deep,
      width: solid ? deep : across,
      thickness: stock.bottom.thickness,
      boxes: [bottomBox],
    },
    ...(hold === undefined
      ? {}
      : {
          slip: {
            length: inside.depth,
            width: hold.height,
            thickness: hold.width,
            boxes: pair({
              from: [wall, stock.front.thickness, 0],
              to: [wall + hold.width, stock.front.thickness + inside.depth, hold.height],
            }),
          },
        }),
  };
};
