import { mm, type Phrase, say } from '../units/phrase.ts';
import type { Drawer } from './drawer.ts';
import type { Rebate } from './drawerSizes.ts';

/** The edges of a front that its rebate runs along: `its ends and its upper edge`. */
export const rebatedEdges = ({ sides, top, bottom }: Rebate): string =>
  [
    ...(sides > 0 ? ['its ends'] : []),
    ...(top > 0 && bottom > 0
      ? ['both edges']
      : [...(top > 0 ? ['its upper edge'] : []), ...(bottom > 0 ? ['its lower edge'] : [])]),
  ].join(' and ');

/**
 * Where a front with a lip is marked from: the joint ends at the rebate's shoulders, and its reference edge is the
 * rebate's lower edge, while the lip extends beyond both. Nothing for an inset front.
 */
export const rebateFirst = ({ spec, sizes: { rebate }, front }: Drawer): Phrase[] =>
  spec.lip === undefined
    ? []
    : [
        [
          ...say`cut the front's rebate first, along ${rebatedEdges(rebate)}, ${mm(front.depth)} deep`,
          ...(rebate.sides > 0
            ? say`; gauge the front from the rebate's shoulder, ${mm(rebate.sides)} in from the front's own end`
            : []),
          ...(rebate.bottom > 0
            ? say`; mark it from the rebate's lower edge, ${mm(rebate.bottom)} above the front's own`
            : []),
        ],
      ];
