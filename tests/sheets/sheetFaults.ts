import { IDENTITY } from '../../src/drawing/affine.ts';
import { touches } from '../../src/drawing/clip.ts';
import type { Drawing, Mark, TextMark } from '../../src/drawing/drawing.ts';
import { textBox } from '../../src/drawing/textBox.ts';
import { CAP_HEIGHT } from '../../src/drawing/textWidth.ts';
import { inkBox, isInside, overlaps, segmentsOf } from '../paper/ink.ts';

/** The least em on a sheet, in mm: its capitals are 2.4 mm high. */
const LEAST = 2.4 / CAP_HEIGHT;

export const textsOf = ({ marks }: Drawing): TextMark[] => marks.filter((mark) => mark.kind === 'text');

/** Every text of a drawing, in the order in which it was set. */
export const wordsOf = (drawing: Drawing): string =>
  textsOf(drawing)
    .map(({ text }) => text)
    .join(' ');

const linesOf = (mark: Mark) => (mark.kind === 'text' ? [] : mark.paths.flatMap(segmentsOf));

/** All that a sheet must not have: small texts, texts over each other or over lines, marks beyond its area. */
export const sheetFaults = (drawing: Drawing): string[] => {
  const texts = textsOf(drawing);
  const boxes = texts.map(textBox);
  const segments = drawing.marks.flatMap(linesOf);
  return [
    ...texts.flatMap(({ text, size }) => (size < LEAST - 1e-9 ? [`${text} is only ${size} high`] : [])),
    ...texts.flatMap(({ text }, i) =>
      texts.slice(i + 1).flatMap((other, j) => {
        const [a, b] = [boxes[i], boxes[i + 1 + j]];
        return a && b && overlaps(a, b) ? [`${text} lies over ${other.text}`] : [];
      }),
    ),
    ...texts.flatMap(({ text }, i) => {
      const box = boxes[i];
      return box !== undefined && segments.some(([a, b]) => touches(box, a, b))
        ? [`a line crosses ${text}`]
        : [];
    }),
    ...drawing.marks.flatMap((mark) =>
      isInside(inkBox([mark], IDENTITY), drawing.box)
        ? []
        : [`${mark.kind === 'text' ? mark.text : `a ${mark.role}`} stands out`],
    ),
  ];
};
