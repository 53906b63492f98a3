import type { Font, Glyph } from 'fontkit';
import { type Affine, apply, compose } from '../drawing/affine.ts';
import type { Point, TextMark } from '../drawing/drawing.ts';
import { shownText } from '../drawing/shownText.ts';
import { isPlain } from '../drawing/textWidth.ts';
import type { Fonts } from './fonts.ts';
import { openFont } from './letters/openFont.ts';
import { setText } from './letters/setText.ts';
import { svgNumber } from './svgNumber.ts';
import { textMatrix } from './textMatrix.ts';

/** A letter at one size and turn: SVG path data, to 0.001, from `start`, mm from the letter's origin. */
interface Letter {
  /** In ems. */
  readonly advance: number;
  readonly start: Point;
  /** Relative commands; nothing for a space. */
  readonly data: string;
}

const COMMANDS = { moveTo: 'm', lineTo: 'l', quadraticCurveTo: 'q', bezierCurveTo: 'c', closePath: 'z' };

/** Steps as path data; a minus divides numbers as well as a space does. */
const stepsData = (steps: readonly Point[]): string =>
  steps
    .flat()
    .map(svgNumber)
    .reduce((data, step) => (data === '' || step.startsWith('-') ? data + step : `${data} ${step}`), '');

/** A relative command; a line along an axis has its own shorter command. */
const commandData = (command: keyof typeof COMMANDS, steps: readonly Point[]): string => {
  const [[x, y] = [0, 0]] = steps;
  if (command === 'lineTo' && y === 0) return `h${svgNumber(x)}`;
  if (command === 'lineTo' && x === 0) return `v${svgNumber(y)}`;
  return COMMANDS[command] + stepsData(steps);
};

const drawLetter = (font: Font, glyph: Glyph, map: Affine): Letter => {
  const { unitsPerEm } = font;
  const em = (units = 0): number => units / unitsPerEm;
  const points = (args: readonly number[]): Point[] =>
    args.flatMap((x, i) => (i % 2 === 0 ? [apply(map, [em(x), em(args[i + 1])])] : []));
  const commands = glyph.path.commands;
  const [start = [0, 0]] = points(commands[0]?.args ?? []);
  // Steps are between rounded points, so that their errors do not add up.
  const rounded = ([x, y]: Point): Point => [
    Math.round((x - start[0]) * 1e3) / 1e3,
    Math.round((y - start[1]) * 1e3) / 1e3,
  ];
  let data = '';
  let contour: Point = [0, 0];
  let from: Point = [0, 0];
  for (const { command, args } of commands) {
    const to = points(args).map(rounded);
    data += commandData(
      command,
      to.map(([x, y]): Point => [x - from[0], y - from[1]]),
    );
    from = command === 'closePath' ? contour : (to.at(-1) ?? from);
    if (command === 'moveTo') contour = from;
  }
  return { advance: em(glyph.advanceWidth), start, data: data.replace(/^m0 0/u, '') };
};

/** Cache of drawn letters, by font, by size and turn, and by character; those of shaped text by glyph. */
const drawn = new WeakMap<Font, Map<string, Map<string | number, Letter>>>();

const lettersIn = (font: Font, size: string): Map<string | number, Letter> => {
  const sizes = drawn.get(font) ?? new Map<string, Map<string | number, Letter>>();
  drawn.set(font, sizes);
  const letters = sizes.get(size) ?? new Map<string | number, Letter>();
  sizes.set(size, letters);
  return letters;
};

/** A text as SVG path data, mapped by `map`: the outlines of its letters, plain text set without kerning. */
export const outlineText = (mark: TextMark, map: Affine, fonts: Fonts): string => {
  const [a, b, c, d, e, f] = compose(textMatrix(mark), map);
  const size = `${a} ${b} ${c} ${d}`;
  const still: Affine = [a, b, c, d, 0, 0];
  /** A letter with its origin at a place, ems. */
  const put = ({ start: [x, y], data }: Letter, along: number, up: number): string =>
    data === ''
      ? ''
      : `M${svgNumber(e + a * along + c * up + x)} ${svgNumber(f + b * along + d * up + y)}${data}`;
  let data = '';
  if (!isPlain(mark.text, mark.weight)) {
    for (const { font, glyph, at } of setText(mark.text, mark.weight, fonts).glyphs) {
      const letters = lettersIn(font, size);
      const letter = letters.get(glyph.id) ?? drawLetter(font, glyph, still);
      letters.set(glyph.id, letter);
      data += put(letter, ...at);
    }
    return data;
  }
  const font = openFont(fonts[mark.weight]);
  const letters = lettersIn(font, size);
  let along = 0;
  for (const character of shownText(mark.text)) {
    let letter = letters.get(character);
    if (letter === undefined) {
      letter = drawLetter(font, font.glyphForCodePoint(character.codePointAt(0) ?? 0), still);
      letters.set(character, letter);
    }
    data += put(letter, along, 0);
    along += letter.advance;
  }
  return data;
};
