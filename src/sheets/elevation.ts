import type { Cabinet, CabinetFront } from '../drawer/arrangement/cabinetFront.ts';
import type { Box, Mark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { rectangle, stroke, textMark } from '../drawing/shapes.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { fitText } from '../paper/fitText.ts';
import type { Size } from '../paper/printable.ts';
import { type ShortName, shortNames } from '../units/shortNames.ts';
import { SMALL } from './template/lettering.ts';
import { type Block, beside, paragraph, picture, stack } from './typeset/block.ts';

/** Scales, as 1 : n. */
const SCALES = [2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200];
/** Most height of the picture, as a share of the page's. */
const SHARE = 0.42;
/** Gap between a front's edge and its words, mm. */
const AIR = 1;

/**
 * The fronts of a set as they stand in the cabinet, each with its drawer's number and as much of its name as it has room
 * for; dashed, the box behind a lip. A note alone where a front would be too small for its number.
 */
export const elevation = (
  drawers: readonly { readonly name: string }[],
  cabinet: Cabinet,
  area: Size,
): Block => {
  const { width, height, rows, leftOut, planned } = cabinet;
  const fronts = rows.flat();
  const most = { width: area.width - PENS.medium.width, height: SHARE * area.height };
  const n = SCALES.find((each) => width <= each * most.width && height <= each * most.height);
  const note = (text: string) => paragraph([{ text, size: SMALL, weight: 'regular' }], area.width);
  if (n === undefined || !fronts.every((front) => holdsNumber(front, 1 / n)))
    return note('There are too many fronts to show them together on this paper.');
  const names = shortNames(drawers.map(({ name }) => [name]));
  const marks = fronts.flatMap((front) => {
    const name = names[front.index];
    return name === undefined ? [] : frontMarks(front, name, 1 / n);
  });
  const lips = fronts.some((front) => behindLip(front) !== undefined);
  const half = PENS.medium.width / 2;
  const box = { x0: -half, y0: -half, x1: width / n + half, y1: height / n + half };
  return stack(
    [
      note(
        [
          `Fronts, 1\u00A0:\u00A0${n}, numbered as below.`,
          ...(planned
            ? []
            : ['The plan gives no arrangement: the rows are assumed from its order and the heights.']),
          ...(lips ? ['Dashed: the box behind a lip.'] : []),
          ...(leftOut > 0
            ? [`${leftOut} more ${leftOut === 1 ? 'drawer is' : 'drawers are'} not drawn.`]
            : []),
        ].join(' '),
      ),
      beside([[(area.width - (box.x1 - box.x0)) / 2, picture({ box, marks })]]),
    ],
    AIR,
  );
};

/** The outline of the box behind a front with a lip. */
const behindLip = ({ x, y, width, height, lip }: CabinetFront): Box | undefined =>
  lip.sides + lip.top + lip.bottom === 0
    ? undefined
    : {
        x0: x + lip.sides,
        y0: y + lip.bottom,
        x1: x + width - lip.sides,
        y1: y + height - lip.top,
      };

/** What a front has room for words in. */
const faceOf = (front: CabinetFront): Box =>
  behindLip(front) ?? {
    x0: front.x,
    y0: front.y,
    x1: front.x + front.width,
    y1: front.y + front.height,
  };

const roomIn = ({ x0, x1 }: Box, scale: number): number => (x1 - x0) * scale - 2 * AIR;

const numberOf = ({ index }: CabinetFront): string => String(index + 1);

const holdsNumber = (front: CabinetFront, scale: number): boolean => {
  const face = faceOf(front);
  return (
    textWidth(numberOf(front), SMALL, 'bold') <= roomIn(face, scale) &&
    (ASCENT + DESCENT) * SMALL + AIR <= (face.y1 - face.y0) * scale
  );
};

const frontMarks = (front: CabinetFront, name: ShortName, scale: number): Mark[] => {
  const outline = ({ x0, y0, x1, y1 }: Box) => rectangle(x0 * scale, y0 * scale, x1 * scale, y1 * scale);
  const behind = behindLip(front);
  const { x, y, width, height } = front;
  const face = faceOf(front);
  const number = numberOf(front);
  const named = fitText(
    [name.item, ...name.shorter].map((each) => `${number} ${each}`),
    roomIn(face, scale),
    SMALL,
    'bold',
  );
  return [
    stroke('outline', 'medium', [outline({ x0: x, y0: y, x1: x + width, y1: y + height })]),
    ...(behind === undefined ? [] : [stroke('lap', 'groove', [outline(behind)])]),
    textMark(
      // A letter or two of a name say nothing.
      [...named].length > number.length + 4 || named === `${number} ${name.item}` ? named : number,
      [((face.x0 + face.x1) / 2) * scale, ((face.y0 + face.y1) / 2) * scale - (CAP_HEIGHT * SMALL) / 2],
      SMALL,
      { weight: 'bold', anchor: 'middle' },
    ),
  ];
};
