import type { Font } from 'fontkit';
import { type Affine, apply, compose } from '../drawing/affine.ts';
import type { Mark, Path, PenName, TextMark } from '../drawing/drawing.ts';
import { PENS } from '../drawing/pens.ts';
import type { PrintPage } from '../drawing/printPage.ts';
import { isPlain } from '../drawing/textWidth.ts';
import type { Fonts } from './fonts.ts';
import type { GlyphEncoder } from './glyphEncoder.ts';
import { openFont } from './letters/openFont.ts';
import { type SetGlyph, setText } from './letters/setText.ts';
import { textMatrix } from './textMatrix.ts';

/** A PDF's unit is the point, 1/72 in. */
export const POINTS_PER_MM = 72 / 25.4;

/** A page as the operators of a PDF's content stream. */
export const contentOf = (page: PrintPage, fonts: Fonts, encoderOf: (font: Font) => GlyphEncoder): string => {
  // pdfkit starts each page with a map to points that run downward from the top left.
  const toPoints: Affine = [POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0, page.height * POINTS_PER_MM];
  const lines: string[] = [];
  for (const { drawing, at } of page.placed) {
    const map = compose(at, toPoints);
    // Painting without a path is an error.
    const marks = drawing.marks.filter((mark) => mark.kind === 'text' || mark.paths.length > 0);
    marks.forEach((mark, i) => {
      switch (mark.kind) {
        case 'stroke': {
          // Marks in a row that share a pen make one path.
          if (!drawnWith(marks[i - 1], mark.pen)) lines.push(penOperators(mark.pen));
          for (const path of mark.paths) lines.push(pathOperators(path, map));
          if (!drawnWith(marks[i + 1], mark.pen)) lines.push('S');
          break;
        }
        case 'fill':
          lines.push(`q ${factor(mark.tone)} g`);
          for (const path of mark.paths) lines.push(pathOperators(path, map));
          lines.push('f Q');
          break;
        case 'text':
          lines.push(textOperators(mark, map, fonts, encoderOf));
          break;
      }
    });
  }
  return lines.join('\n');
};

const drawnWith = (mark: Mark | undefined, pen: PenName): boolean =>
  mark?.kind === 'stroke' && mark.pen === pen;

/** Every decimal fraction of three places as it is written, without zeros at its end: '', '.001', …, '.999'. */
const FRACTIONS = Array.from({ length: 1e3 }, (_, i) => String(i / 1e3).slice(1));

/**
 * A coordinate to a thousandth of a point, a third of a micrometre. Fractions come from a table: printing a double is many
 * times slower.
 */
const coordinate = (points: number): string => {
  const steps = Math.round(points * 1e3);
  const size = Math.abs(steps);
  return `${steps < 0 ? '-' : ''}${Math.floor(size / 1e3)}${FRACTIONS[size % 1e3]}`;
};
const factor = (value: number): number => Math.round(value * 1e6) / 1e6;

const penOperators = (name: PenName): string => {
  const { width, dash = [] } = PENS[name];
  const lengths = dash.map((part) => factor(part * POINTS_PER_MM));
  return `${factor(width * POINTS_PER_MM)} w [${lengths.join(' ')}] 0 d`;
};

const pathOperators = ({ points, closed }: Path, map: Affine): string => {
  let operators = '';
  for (const point of points) {
    const to = apply(map, point);
    operators += `${coordinate(to[0])} ${coordinate(to[1])} ${operators === '' ? 'm' : 'l'} `;
  }
  return closed === true ? `${operators}h` : operators;
};

const textOperators = (
  mark: TextMark,
  map: Affine,
  fonts: Fonts,
  encoderOf: (font: Font) => GlyphEncoder,
): string => {
  const [a, b, c, d, x, y] = compose(textMatrix(mark), map);
  const matrix = [factor(a), factor(b), factor(c), factor(d), coordinate(x), coordinate(y)].join(' ');
  if (!isPlain(mark.text, mark.weight))
    return `BT ${matrix} Tm ${shapedOperators(mark, fonts, encoderOf)} ET`;
  const encoder = encoderOf(openFont(fonts[mark.weight]));
  return `BT /${encoder.resourceName()} 1 Tf ${matrix} Tm <${encoder.encode(mark.text)}> Tj ET`;
};

/** A glyph or a blank that is read as some characters; places and widths in ems. */
interface Shown extends Pick<SetGlyph, 'glyph' | 'codePoints' | 'at' | 'advance'> {}

/**
 * A glyph that joins several letters from the right, as the last of them, with a blank for each of the others where it
 * would stand: readers take the letters of one glyph from left to right.
 */
const separated = ({ font, glyph, codePoints, backward, at: [x, y], advance }: SetGlyph): Shown[] => {
  if (!backward || codePoints.length < 2) return [{ glyph, codePoints, at: [x, y], advance }];
  const share = advance / codePoints.length;
  const blank = font.glyphForCodePoint(0x20);
  return codePoints.map((codePoint, i) => {
    const before = codePoints.length - 1 - i;
    return {
      glyph: before === 0 ? glyph : blank,
      codePoints: [codePoint],
      at: [x + before * share, y],
      advance: share,
    };
  });
};

/**
 * The glyphs of a text that is not plain, in the order in which they are read, for readers of the file; so the pen moves
 * to each, by thousandths of an em to the left.
 */
const shapedOperators = (
  { text, weight }: TextMark,
  fonts: Fonts,
  encoderOf: (font: Font) => GlyphEncoder,
): string => {
  const operators: string[] = [];
  let inFont: Font | undefined;
  let pen = 0;
  let rise = 0;
  for (const set of setText(text, weight, fonts).glyphs) {
    const encoder = encoderOf(set.font);
    if (set.font !== inFont) operators.push(`/${encoder.resourceName()} 1 Tf`);
    inFont = set.font;
    for (const { glyph, codePoints, at, advance } of separated(set)) {
      if (at[1] !== rise) operators.push(`${factor(at[1])} Ts`);
      rise = at[1];
      const back = factor(1e3 * (pen - at[0]));
      operators.push(
        `[${back === 0 ? '' : `${back} `}<${encoder.encodeGlyph(glyph, codePoints, advance)}>] TJ`,
      );
      pen = at[0] + advance;
    }
  }
  // The rise outlives the text.
  if (rise !== 0) operators.push('0 Ts');
  return operators.join(' ');
};
