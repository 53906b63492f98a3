import type { Drawing } from '../../drawing/drawing.ts';
import { SHEET } from '../../router/guide/guideBoard.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { SMALL } from '../template/lettering.ts';
import { paragraph } from '../typeset/block.ts';

/** Gap between the note and the guides above it, mm. */
const OVER = 1.6;

/** What a guide is made of, and how its fence is fixed (common practice), drawn up from 0, 0 and `width` mm wide. */
export const guideNote = (units: Notation, width: number): Drawing => {
  const [least, most] = SHEET[unitOf(units)];
  const sheet = `${formatNumber(least, units)} to ${formatLength(most, units)}`.replaceAll(' ', '\u00A0');
  const { height, marks } = paragraph(
    [
      { text: 'Guide:', size: SMALL, weight: 'bold' },
      {
        text: `sheet material, thickness ${sheet}, and more than the guide bush’s collar is long.`,
        size: SMALL,
        weight: 'regular',
      },
      { text: 'Fence:', size: SMALL, weight: 'bold' },
      {
        text: 'a straight batten. Glue and screw it under the guide, its face on the fence line and square to the guide.',
        size: SMALL,
        weight: 'regular',
      },
    ],
    width,
  );
  return { box: { x0: 0, y0: 0, x1: width, y1: height + OVER }, marks: marks(0, height) };
};
