import type { Cabinet, CabinetFront } from '../drawer/arrangement/cabinetFront.ts';
import type { Box, Mark, Point } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import { rectangle, stroke, textMark } from '../drawing/shapes.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, textWidth } from '../drawing/textWidth.ts';
import { fitText } from '../paper/fitText.ts';
import type { Size } from '../paper/printable.ts';
import { shortNames } from '../units/shortNames.ts';
import { SMALL } from './template/lettering.ts';
import { type Block, beside, paragraph, picture, stack } from './typeset/block.ts';

/** Scales, as 1 : n. */
export const SCALES = [2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200];
/** Most height of the picture, as a share of the page's. */
const SHARE = 0.42;
/** Gap between a front's edge and its words, mm. */
const AIR = 1;
/** Height of a front's lower part that is left to marks other than words, mm. */
const MARKS = 2.4;

/** What is written on a front, and drawn of it beside its outline. */
export interface FrontWords {
  /** What it must have room for. */
  readonly number: string;
  /** The whole line in its wordings, the longest first, the number among them. */
  readonly wordings: readonly string[];
  /** A second line where there is room for it, in its wordings. */
  readonly below?: readonly string[];
  /** More marks, in what of the front has room for words. */
  marks?(face: Box): readonly Mark[];
}

/**
 * The fronts of a set as they stand in the cabinet, each with its drawer's number and as much of its name as it has room
 * for; dashed, the box behind a lip. A note alone where a front would be too small for its number.
 */
export const elevation = (
  drawers: readonly { readonly name: string }[],
  cabinet: Cabinet,
  area: Size,
): Block => {
  const names = shortNames(drawers.map(({ name }) => [name]));
  return frontsView(cabinet, area, 'numbered as below', ({ index }) => {
    const number = String(index + 1);
    const { item, shorter } = names[index] ?? { item: '', shorter: [] };
    return { number, wordings: [item, ...shorter].map((each) => `${number} ${each}`) };
  });
};

/**
 * The fronts of a set as they stand in the cabinet, with words of any kind.
 * @param how in words, what is written on them
 * @param wordsOf given a front, and which of its drawer's fronts it is, from 1
 */
export const frontsView = (
  cabinet: Cabinet,
  area: Size,
  how: string,
  wordsOf: (front: CabinetFront, copy: number) => FrontWords,
): Block => {
  const { width, height, rows, leftOut, planned } = cabinet;
  const copies = new Map<number, number>();
  const fronts = rows.flat().map((front) => {
    const copy = (copies.get(front.index) ?? 0) + 1;
    copies.set(front.index, copy);
    return { front, words: wordsOf(front, copy) };
  });
  const most = { width: area.width - PENS.medium.width, height: SHARE * area.height };
  const n = SCALES.find((each) => width <= each * most.width && height <= each * most.height);
  const note = (text: string) => paragraph([{ text, size: SMALL, weight: 'regular' }], area.width);
  if (n === undefined || !fronts.every(({ front, words }) => holdsNumber(front, words.number, 1 / n)))
    return note('There are too many fronts to show them together on this paper.');
  const marks = fronts.flatMap(({ front, words }) => frontMarks(front, words, 1 / n));
  const lips = fronts.some(({ front }) => behindLip(front) !== undefined);
  const half = PENS.medium.width / 2;
  const box = { x0: -half, y0: -half, x1: width / n + half, y1: height / n + half };
  return stack(
    [
      note(
        [
          `Fronts, 1\u00A0:\u00A0${n}, ${how}.`,
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

const LINE = (ASCENT + DESCENT) * SMALL;

const holdsNumber = (front: CabinetFront, number: string, scale: number): boolean => {
  const face = faceOf(front);
  return textWidth(number, SMALL, 'bold') <= roomIn(face, scale) && LINE + AIR <= (face.y1 - face.y0) * scale;
};

const frontMarks = (front: CabinetFront, words: FrontWords, scale: number): Mark[] => {
  const outline = ({ x0, y0, x1, y1 }: Box) => rectangle(x0 * scale, y0 * scale, x1 * scale, y1 * scale);
  const behind = behindLip(front);
  const { x, y, width, height } = front;
  const { x0, y0, x1, y1 } = faceOf(front);
  const face = { x0: x0 * scale, y0: y0 * scale, x1: x1 * scale, y1: y1 * scale };
  const { number, wordings, below } = words;
  const named = fitText(wordings, roomIn(faceOf(front), scale), SMALL, 'bold');
  // A letter or two of a name say nothing.
  const first = [...named].length > number.length + 4 || wordings.includes(named) ? named : number;
  const more = words.marks?.(face) ?? [];
  // Marks of a front are along its lower edge.
  const room = face.y1 - face.y0 - (more.length > 0 ? MARKS : 0);
  const drawn = room >= LINE + AIR ? more : [];
  const low = face.y0 + (drawn.length > 0 ? MARKS : 0);
  const second = below && fitText(below, roomIn(faceOf(front), scale), SMALL, 'regular');
  const hasSecond = second !== undefined && below?.includes(second) && face.y1 - low >= 2 * LINE + AIR;
  const middle = (low + face.y1) / 2 - (CAP_HEIGHT * SMALL) / 2;
  const at = (up: number): Point => [(face.x0 + face.x1) / 2, middle + up];
  return [
    stroke('outline', 'medium', [outline({ x0: x, y0: y, x1: x + width, y1: y + height })]),
    ...(behind === undefined ? [] : [stroke('lap', 'groove', [outline(behind)])]),
    textMark(first, at(hasSecond ? LINE / 2 : 0), SMALL, { weight: 'bold', anchor: 'middle' }),
    ...(hasSecond ? [textMark(second, at(-LINE / 2), SMALL, { anchor: 'middle' })] : []),
    ...drawn,
  ];
};
