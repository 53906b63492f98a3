import type { OpeningShape } from '../../cabinet/measuredOpening.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { mm, say } from '../../units/phrase.ts';
import type { DrawerSpec, Fit } from '../drawerSpec.ts';

/** Where a measured opening is so far out of square that the drawer's clearances do not hide it, and what to do. */
export const adviseOpening = ({ space }: DrawerSpec): Complaint[] =>
  space.kind === 'opening' && space.shape !== undefined ? outOfSquare(space.shape, space.fit) : [];

const outOfSquare = (
  { lowerRight: [width], upperLeft, upperRight, back }: OpeningShape,
  { side, top }: Fit,
): Complaint[] => {
  const leans = [
    { hand: 'left', lean: upperLeft[0] },
    { hand: 'right', lean: upperRight[0] - width },
  ];
  const rise = upperRight[1] - upperLeft[1];
  const taper = width - back.width;
  const drop = Math.min(upperLeft[1], upperRight[1]) - (back.height ?? Number.POSITIVE_INFINITY);
  return [
    ...leans.flatMap(({ hand, lean }) =>
      Math.abs(lean) <= side + EPSILON
        ? []
        : [
            {
              at: ['opening'],
              says: say`the opening's ${hand} side is ${mm(Math.abs(lean))} out of plumb, to the ${lean > 0 ? 'right' : 'left'} at its upper end, more than the clearance of ${mm(side)}: plane it or shim it upright, or cut the front wider and plane it to the opening`,
            },
          ],
    ),
    ...(Math.abs(rise) <= top + EPSILON
      ? []
      : [
          {
            at: ['opening'],
            says: say`the opening is ${mm(Math.abs(rise))} higher on the ${rise > 0 ? 'right' : 'left'}, more than the clearance of ${mm(top)} above: cut the front higher and plane its upper edge to the opening`,
          },
        ]),
    ...(taper <= side + EPSILON
      ? []
      : [
          {
            at: ['opening', 'width'],
            says: say`the opening is ${mm(taper)} narrower behind than in front, more than the clearance of ${mm(side)}; the drawer is as narrow as the back: plane the sides of the opening, or taper the drawer`,
          },
        ]),
    ...(drop <= top + EPSILON
      ? []
      : [
          {
            at: ['opening', 'height'],
            says: say`the opening is ${mm(drop)} lower behind than in front, more than the clearance of ${mm(top)} above; the drawer is as low as the back`,
          },
        ]),
  ];
};
