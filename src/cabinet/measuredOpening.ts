import type { Point } from '../drawing/drawing.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';

/** An opening that is there, as it was measured; lengths in mm. */
export interface MeasuredOpening {
  /** Along the lower edge in front, and behind. */
  readonly width: { readonly front: number; readonly back: number };
  /** In front on the left and on the right, and behind if given. */
  readonly height: { readonly left: number; readonly right: number; readonly back?: number };
  /** In front, from the lower left and from the upper left; without them it is taken as square. */
  readonly diagonals?: { readonly rising: number; readonly falling: number };
  readonly depth: number;
}

/** The front of a measured opening and the largest upright box that fits it. In mm, from the lower left corner. */
export interface OpeningShape {
  readonly lowerRight: Point;
  readonly upperLeft: Point;
  readonly upperRight: Point;
  /** How wide and high it is behind. */
  readonly back: { readonly width: number; readonly height?: number };
  /**
   * Standing on the lower edge, from the inner of the left corners to the inner of the right, as high as the lower of the
   * upper corners, and no wider or higher than the back.
   */
  readonly box: { readonly width: number; readonly height: number; readonly depth: number };
}

/**
 * The shape of an opening from its sides and diagonals. With w its lower edge, the upper left corner lies
 * (left² + w² - falling²)/2w from the lower left one, and the upper right (rising² + w² - right²)/2w: by the law of cosines.
 * @returns complaints with places in the opening, where no quadrilateral has such sides and diagonals
 */
export const shapeOf = ({ width, height, diagonals, depth }: MeasuredOpening): Result<OpeningShape> => {
  const w = width.front;
  const wrong = diagonals && [
    ...noTriangle('falling', diagonals.falling, w, height.left, 'left'),
    ...noTriangle('rising', diagonals.rising, w, height.right, 'right'),
  ];
  if (wrong !== undefined && wrong.length > 0) return refuse(...wrong);
  const left = diagonals ? (height.left ** 2 + w ** 2 - diagonals.falling ** 2) / (2 * w) : 0;
  const right = diagonals ? (diagonals.rising ** 2 + w ** 2 - height.right ** 2) / (2 * w) : w;
  const upperLeft: Point = [left, Math.sqrt(height.left ** 2 - left ** 2)];
  const upperRight: Point = [right, Math.sqrt(height.right ** 2 - (right - w) ** 2)];
  if (!isConvex([[0, 0], [w, 0], upperRight, upperLeft]))
    return refuse({
      at: ['diagonals'],
      says: say`with these diagonals the opening would be bent inwards or crossed at a corner; rising runs from the lower left corner, falling from the upper left`,
      remedy: say`measure them again`,
    });
  const across = Math.min(w, right) - Math.max(0, left);
  return accept({
    lowerRight: [w, 0],
    upperLeft,
    upperRight,
    back: { width: width.back, ...(height.back !== undefined && { height: height.back }) },
    box: {
      width: Math.min(across, width.back),
      height: Math.min(upperLeft[1], upperRight[1], height.back ?? Number.POSITIVE_INFINITY),
      depth,
    },
  });
};

const noTriangle = (
  diagonal: 'rising' | 'falling',
  length: number,
  width: number,
  side: number,
  hand: 'left' | 'right',
): Complaint[] =>
  length > Math.abs(width - side) + EPSILON && length < width + side - EPSILON
    ? []
    : [
        {
          at: ['diagonals', diagonal],
          says: say`a diagonal of ${mm(length)} does not reach across ${mm(width)} and a ${hand} side of ${mm(side)}; it must lie between ${atLeast(Math.abs(width - side))} and ${atMost(width + side)}`,
        },
      ];

/** Whether a path round the corners turns left at every one. */
const isConvex = (corners: readonly Point[]): boolean =>
  corners.every((corner, i) => {
    const [ax, ay] = corners.at(i - 1) ?? corner;
    const [cx, cy] = corners[(i + 1) % corners.length] ?? corner;
    return (corner[0] - ax) * (cy - corner[1]) - (corner[1] - ay) * (cx - corner[0]) > EPSILON;
  });
