import bidiFactory from 'bidi-js';
import type { Font, Glyph } from 'fontkit';
import type { TextMark } from '../../drawing/drawing.ts';
import { shownText } from '../../drawing/shownText.ts';
import { isPlain, measureShapedBy } from '../../drawing/textWidth.ts';
import type { Fonts } from '../fonts.ts';
import { openFont } from './openFont.ts';

/** A glyph of a line of text, lengths in ems. */
export interface SetGlyph {
  readonly font: Font;
  readonly glyph: Glyph;
  /** The characters that it stands for, as they are read. */
  readonly codePoints: readonly number[];
  /** Whether they are read from right to left. */
  readonly backward: boolean;
  /** Its origin, from the start of the line on the baseline. */
  readonly at: readonly [x: number, y: number];
  /** What it takes of the line; nothing for an accent. */
  readonly advance: number;
}

/** A line of text, ems: its glyphs in the order in which they are read. */
export interface SetLine {
  readonly width: number;
  readonly glyphs: readonly SetGlyph[];
}

/** The fonts that a text is set in: the first that has a letter draws it. */
export const fontsFor = (weight: TextMark['weight'], { regular, bold, other }: Fonts): readonly Font[] =>
  [weight === 'bold' ? bold : regular, regular, other].flatMap((bytes) => bytes ?? []).map(openFont);

const IGNORABLE = /^\p{Default_Ignorable_Code_Point}$/u;

let graphemes: Intl.Segmenter | undefined;

/** The letters of a text, each with its accents and with its place in the text. */
export const lettersOf = (text: string): { readonly letter: string; readonly index: number }[] => {
  // To make one takes as long as to draw a template, and most texts need none.
  graphemes ??= new Intl.Segmenter('und', { granularity: 'grapheme' });
  return [...graphemes.segment(text)].map(({ segment, index }) => ({ letter: segment, index }));
};

/** The first font that has every sign of a letter. */
export const fontOf = (letter: string, fonts: readonly Font[]): Font | undefined =>
  fonts.find((font) =>
    [...letter].every((sign) => IGNORABLE.test(sign) || font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0)),
  );

/** What is shaped as one: letters of one font, one direction and one way of shaping. */
interface Run {
  readonly font: Font;
  readonly level: number;
  readonly shaper: number;
  text: string;
}

/** Set without the font's rules, as all plain text is. */
const PLAIN = -1;

/** Scripts of India have a shaper each, and lie in blocks of 128. Any other font's letters are shaped by one rule. */
const shaperOf = (letter: string): number => {
  const code = letter.codePointAt(0) ?? 0;
  return code >= 0x900 && code < 0xe00 ? code >> 7 : 0;
};

const [ISOLATE, END_OF_ISOLATE] = ['\u2068', '\u2069'];

/** Names with letters that run from right to left stand by themselves (first strong isolate, UAX 9). */
const isolated = (text: string, names: readonly string[]): string =>
  names.reduce((all, name) => all.replaceAll(name, `${ISOLATE}${name}${END_OF_ISOLATE}`), text);

const bidi = bidiFactory();

/** The runs of a text as they are read, in lines that are English as a whole. */
const runsOf = (text: string, weight: TextMark['weight'], fonts: Fonts): Run[] => {
  const chain = fontsFor(weight, fonts);
  const { levels } = bidi.getEmbeddingLevels(text, 'ltr');
  const runs: Run[] = [];
  for (const { letter, index } of lettersOf(text)) {
    if (letter === ISOLATE || letter === END_OF_ISOLATE) continue;
    const found = fontOf(letter, chain);
    const font = found ?? chain[0];
    if (font === undefined) continue;
    const level = levels[index] ?? 0;
    const isSet = found === undefined || (found === chain[0] && level % 2 === 0 && isPlain(letter, weight));
    const shaper = isSet ? PLAIN : shaperOf(letter);
    const last = runs.at(-1);
    if (last?.font === font && last.level === level && last.shaper === shaper) last.text += letter;
    else runs.push({ font, level, shaper, text: letter });
  }
  return runs;
};

/** Runs from left to right: from the highest level down, what lies between lower ones is turned round (UAX 9, rule L2). */
const fromTheLeft = (runs: readonly Run[]): Run[] => {
  const ordered = [...runs];
  for (let level = Math.max(0, ...runs.map((run) => run.level)); level > 0; level--)
    for (let from = 0; from < ordered.length; from++) {
      let to = from;
      while ((ordered[to]?.level ?? 0) >= level) to++;
      ordered.splice(from, to - from, ...ordered.slice(from, to).reverse());
      from = to;
    }
  return ordered;
};

/** Brackets turn round where the text runs from the right; each is the other's mirror. */
const mirrored = (text: string): string =>
  [...text].map((character) => bidi.getMirroredCharacter(character) ?? character).join('');

/** A run by itself, its glyphs from left to right. */
const setRun = ({ font, level, shaper, text }: Run): SetLine => {
  const { unitsPerEm } = font;
  const em = (units: number): number => units / unitsPerEm;
  const backward = level % 2 === 1;
  const { glyphs, positions } =
    shaper === PLAIN
      ? { glyphs: [...text].map((sign) => font.glyphForCodePoint(sign.codePointAt(0) ?? 0)), positions: [] }
      : font.layout(
          backward ? mirrored(text) : text,
          undefined,
          undefined,
          undefined,
          backward ? 'rtl' : 'ltr',
        );
  let width = 0;
  const set = glyphs.map((glyph, i): SetGlyph => {
    const { xAdvance = glyph.advanceWidth, xOffset = 0, yOffset = 0 } = positions[i] ?? {};
    const written = String.fromCodePoint(...glyph.codePoints);
    const codePoints = [...(backward ? mirrored(written) : written)].map((sign) => sign.codePointAt(0) ?? 0);
    const at = [width + em(xOffset), em(yOffset)] as const;
    width += em(xAdvance);
    return { font, glyph, codePoints, backward, at, advance: em(xAdvance) };
  });
  return { width, glyphs: set };
};

const setRuns = (runs: readonly Run[]): SetLine => {
  let width = 0;
  const lines = new Map<Run, SetGlyph[]>();
  for (const run of fromTheLeft(runs)) {
    const line = setRun(run);
    const from = width;
    lines.set(
      run,
      line.glyphs.map((each) => ({ ...each, at: [from + each.at[0], each.at[1]] })),
    );
    width += line.width;
  }
  const read = runs.flatMap((run) => {
    const glyphs = lines.get(run) ?? [];
    return run.level % 2 === 1 ? glyphs.reverse() : glyphs;
  });
  return { width, glyphs: read };
};

/** Cache of texts that have been set. */
const set = new WeakMap<Fonts, Map<string, SetLine>>();

/**
 * Sets a line of text that is not plain. It is ordered by the Unicode bidirectional algorithm (UAX 9) as a line of English,
 * in which each of the fonts' names is ordered by itself, and shaped by the rules of the fonts that have its letters.
 */
export const setText = (text: string, weight: TextMark['weight'], fonts: Fonts): SetLine => {
  const lines = set.get(fonts) ?? new Map<string, SetLine>();
  set.set(fonts, lines);
  const key = `${weight} ${text}`;
  const known = lines.get(key);
  if (known !== undefined) return known;
  const line = setRuns(runsOf(isolated(shownText(text), fonts.names ?? []), weight, fonts));
  lines.set(key, line);
  return line;
};

/** Has these fonts measure, from now on, every text that is not plain, as they draw it. */
export const measureWith = (fonts: Fonts): void =>
  measureShapedBy((text, weight) => setText(text, weight, fonts).width);
