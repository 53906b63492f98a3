import type { Font } from 'fontkit';
import { type Affine, apply, compose } from '../drawing/affine.ts';
import type { Point, TextMark } from '../drawing/drawing.ts';
import { shownText } from '../drawing/shownText.ts';
import { type Fonts, openFont } from './fonts.ts';
import { lettersMap } from './letters.ts';

/** One step of a glyph's outline, in ems: its SVG command and the points that follow it. */
interface Step {
  readonly command: string;
  readonly points: readonly Point[];
}

interface Outline {
  readonly advance: number;
  readonly steps: readonly Step[];
}

const COMMANDS = { moveTo: 'M', lineTo: 'L', quadraticCurveTo: 'Q', bezierCurveTo: 'C', closePath: 'Z' };

const known = new WeakMap<Font, Map<string, Outline>>();

const outlineOf = (font: Font, character: string): Outline => {
  const outlines = known.get(font) ?? new Map<string, Outline>();
  known.set(font, outlines);
  const outline = outlines.get(character) ?? readOutline(font, character);
  outlines.set(character, outline);
  return outline;
};

const readOutline = (font: Font, character: string): Outline => {
  const glyph = font.glyphForCodePoint(character.codePointAt(0) ?? 0);
  const em = (units = 0) => units / font.unitsPerEm;
  return {
    advance: em(glyph.advanceWidth),
    steps: glyph.path.commands.map(({ command, args }) => ({
      command: COMMANDS[command],
      points: args.flatMap((x, i): Point[] => (i % 2 === 0 ? [[em(x), em(args[i + 1])]] : [])),
    })),
  };
};

/** A text as SVG path data: the outlines of its letters, set without kerning, through the map that is given. */
export const outlineText = (
  mark: TextMark,
  map: Affine,
  fonts: Fonts,
  format: (value: number) => string,
): string => {
  const font = openFont(fonts[mark.weight]);
  const letters = compose(lettersMap(mark), map);
  let data = '';
  let along = 0;
  for (const character of shownText(mark.text)) {
    const { advance, steps } = outlineOf(font, character);
    for (const { command, points } of steps) {
      data += command;
      for (const [u, v] of points) {
        const [x, y] = apply(letters, [along + u, v]);
        data += `${format(x)} ${format(y)} `;
      }
    }
    along += advance;
  }
  return data;
};
