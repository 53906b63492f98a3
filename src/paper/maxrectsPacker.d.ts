/**
 * The part of maxrects-packer that is used. Its own types name their files in a way that Node's resolution does not find,
 * and so does its main entry.
 */
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  interface PackedRectangle {
    readonly width: number;
    readonly height: number;
    /** From the left and from the top. */
    x: number;
    y: number;
    /** Turned by a quarter, its width and height left as they were. */
    rot: boolean;
  }

  export enum PACKING_LOGIC {
    MAX_AREA = 0,
    MAX_EDGE = 1,
    FILL_WIDTH = 2,
  }

  export class MaxRectsPacker<T extends PackedRectangle> {
    constructor(
      width: number,
      height: number,
      padding: number,
      options: {
        readonly smart: boolean;
        readonly pot: boolean;
        readonly square: boolean;
        readonly allowRotation: boolean;
        readonly logic: PACKING_LOGIC;
      },
    );
    readonly bins: readonly { readonly rects: T[] }[];
    /** Puts it on the first page that has room. */
    add(rectangle: T): T;
    /** The same for each, largest first. */
    addArray(rectangles: T[]): void;
  }
}
