import { bottomDepth } from './bottomDepth.ts';
import type { Hand } from './cornerLetters.ts';
import { type Sizes, sidesOf } from './drawerSizes.ts';
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
  /** Where each lies: one, or the left one and then the right one. */
  readonly boxes: readonly PartBox[];
}

/** Every kind of board in a drawer. */
export interface DrawerParts {
  readonly front: DrawerPart;
  /** Both sides, or the left one alone. */
  readonly side: DrawerPart;
  /** The right side where it is not as the left one. */
  readonly rightSide?: DrawerPart;
  readonly back: DrawerPart;
  readonly bottom: DrawerPart;
  /** Only where slips hold the bottom. */
  readonly slip?: DrawerPart;
}

/**
 * From the reference edge up to the underside of the bottom, in mm. A bottom that is thicker than its groove is let in with its
 * upper face at the groove's upper edge.
 */
export const bottomUnderside = ({ groove, stock }: Pick<DrawerSpec, 'groove' | 'stock'>): number =>
  Math.min(groove.offset, groove.offset + groove.width - stock.bottom.thickness);

/** Every board of a drawer, where it lies. */
export const boardsOf = (spec: DrawerSpec, sizes: Sizes): DrawerParts => {
  const { stock, groove, bottom } = spec;
  const { width, backWidth, height, sideHeight, depth, lap, rebate, wall, inside, backFrom, backHeight } =
    sizes;
  const hold = bottom.hold.kind === 'slips' ? bottom.hold : undefined;
  // Sides that converge leave the bottom what they leave it at the back.
  const converge = (width - backWidth) / 2;
  const [leftEdge, rightEdge] = [wall.left, wall.right].map(
    (side) => side + converge + (hold?.width ?? 0) - groove.depth + bottom.slack,
  ) as [number, number];
  const deep = bottomDepth(spec, sizes);
  const bottomFrom = stock.front.thickness - groove.depth;
  const bottomLevel = bottomUnderside(spec);
  const bottomBox: PartBox = {
    from: [leftEdge, bottomFrom, bottomLevel],
    to: [width - rightEdge, bottomFrom + deep, bottomLevel + stock.bottom.thickness],
  };
  const across = width - leftEdge - rightEdge;
  const solid = bottom.kind === 'solid';
  /** The same box at the right, as in a mirror. */
  const mirrored = ({ from, to }: PartBox): PartBox => ({
    from: [width - to[0], from[1], from[2]],
    to: [width - from[0], to[1], to[2]],
  });
  const { left, right } = sidesOf(spec);
  const sideOf = (hand: Hand): PartBox => ({ from: [0, lap, 0], to: [wall[hand], depth, sideHeight[hand]] });
  const slipBeside = (hand: Hand, { width: across, height: up }: SlipSize): PartBox => ({
    from: [wall[hand], stock.front.thickness, 0],
    to: [wall[hand] + across, stock.front.thickness + inside.depth, up],
  });
  const side = (hand: Hand, thickness: number, boxes: readonly PartBox[]): DrawerPart => ({
    length: depth - lap,
    width: sideHeight[hand],
    thickness,
    boxes,
  });
  const isAlike = left.thickness === right.thickness && sideHeight.left === sideHeight.right;
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
    side: side('left', left.thickness, [sideOf('left'), ...(isAlike ? [mirrored(sideOf('right'))] : [])]),
    ...(!isAlike && { rightSide: side('right', right.thickness, [mirrored(sideOf('right'))]) }),
    back: {
      length: backWidth,
      width: backHeight,
      thickness: stock.back.thickness,
      boxes: [
        {
          from: [converge, depth - stock.back.thickness, backFrom],
          to: [width - converge, depth, backFrom + backHeight],
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
            boxes: [slipBeside('left', hold), mirrored(slipBeside('right', hold))],
          },
        }),
  };
};

/** A slip's width across the drawer, and its height. */
type SlipSize = Readonly<Record<'width' | 'height', number>>;
