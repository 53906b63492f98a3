import type { Drawer } from '../drawer/drawer.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Size } from '../paper/printable.ts';
import { formatLength } from '../units/formatLength.ts';
import type { Notation } from '../units/notation.ts';
import { gapPicture } from './gapPicture.ts';
import { type Block, paragraph, stack } from './typeset/block.ts';
import { flow } from './typeset/flow.ts';
import { type TypeSizes, typeSizes } from './typeset/typeSizes.ts';

const TYPE: TypeSizes = typeSizes(1);
const GAP = 8;
/** Size of a picture where its paper has room, mm. */
const PICTURE: Size = { width: 150, height: 66 };

/** A drawer's gap through the year, headed by its name; none without an opening, or without a climate. */
const headedPicture = (drawer: Drawer, unit: Notation, width: number): Block | undefined => {
  const shown = gapPicture(drawer, unit, TYPE, { ...PICTURE, width: Math.min(PICTURE.width, width) });
  const { spec, sizes } = drawer;
  if (shown === undefined || spec.space.kind === 'size') return undefined;
  const measure = (value: number) => formatLength(value, unit).replaceAll(' ', '\u00A0');
  const text = `gap above; made ${measure(sizes.height)} high for an opening of ${measure(spec.space.opening.height)}`;
  return stack(
    [
      paragraph(
        [
          { text: spec.name, size: TYPE.heading, weight: 'bold' },
          { text, size: TYPE.note, weight: 'regular' },
        ],
        width,
      ),
      shown,
    ],
    1,
  );
};

/** The picture of one drawer as a drawing of its own. */
export const gapDrawing = (drawer: Drawer, unit: Notation): Drawing | undefined => {
  const block = headedPicture(drawer, unit, PICTURE.width);
  return (
    block && {
      box: { x0: 0, y0: 0, x1: PICTURE.width, y1: block.height },
      marks: block.marks(0, block.height),
    }
  );
};

/** The pictures of a whole set, in its order. */
export const gapSheets = (
  drawers: readonly Drawer[],
  { title, units, area }: { readonly title: string; readonly units: Notation; readonly area: Size },
): Drawing[] => {
  const head = paragraph([{ text: `${title}: gaps through the year`, size: 6, weight: 'bold' }], area.width);
  const pictures = drawers.flatMap((drawer) => {
    const block = headedPicture(drawer, units, area.width);
    return block === undefined ? [] : [[block]];
  });
  return flow({ head: [head, head], wide: pictures, narrow: [], columns: 1, gap: GAP }, area).draw();
};
