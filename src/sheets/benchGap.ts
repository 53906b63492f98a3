import type { Drawer } from '../drawer/drawer.ts';
import type { Size } from '../paper/printable.ts';
import type { Notation } from '../units/notation.ts';
import { gapPicture } from './gapPicture.ts';
import { type Block, paragraph, stack } from './typeset/block.ts';
import type { TypeSizes } from './typeset/typeSizes.ts';

/** The gap above through the year, its picture of the given size; nothing where no climate is given. */
export const benchGap = (drawer: Drawer, unit: Notation, type: TypeSizes, size: Size): Block[] => {
  const shown = gapPicture(drawer, unit, type, size);
  const heading = { text: 'Gap above, through the year', size: type.heading, weight: 'bold' } as const;
  return shown === undefined ? [] : [stack([paragraph([heading], size.width), shown])];
};
