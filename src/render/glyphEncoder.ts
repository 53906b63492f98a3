import type { Font, Glyph } from 'fontkit';
import { shownText } from '../drawing/shownText.ts';

/** A subset font numbers its glyphs in 16 bits; this leaves room for the parts of composite glyphs. */
const MOST_GLYPHS = 60_000;

/** Code of the box drawn for a missing character. */
const BOX = '0000';

/**
 * Encodes text in one font of a PDF, glyph by glyph, without kerning and without a cache of texts. It writes directly to the
 * font that pdfkit embeds, a private part of pdfkit: the words of a page need 0.4 of the time of pdfkit's own `text()`
 * (`npm run bench`).
 */
export class GlyphEncoder {
  readonly #document: PDFKit.PDFDocument;
  readonly #font: PDFKit.EmbeddedFont;
  readonly #source: Font;
  readonly #codes = new Map<string, string>();

  constructor(document: PDFKit.PDFDocument, source: Font) {
    this.#document = document;
    this.#source = source;
    this.#font = document.font(source)._font;
  }

  /** The font's resource name, registered with the current page. */
  resourceName(): string {
    this.#document.page.fonts[this.#font.id] = this.#font.ref();
    return this.#font.id;
  }

  /** A text as a hexadecimal string of the font's glyph numbers. */
  encode(text: string): string {
    let codes = '';
    for (const character of shownText(text)) codes += this.#codes.get(character) ?? this.#add(character);
    return codes;
  }

  /**
   * Every character gets a glyph of its own in the subset, even where several are drawn as the same box, so that the
   * text can be read back out of the file.
   */
  #add(character: string): string {
    const codePoint = character.codePointAt(0) ?? 0;
    const code = this.#embed(this.#source.glyphForCodePoint(codePoint), [codePoint]);
    this.#codes.set(character, code);
    return code;
  }

  /** A glyph of shaped text, which stands for these characters and moves the pen by so many ems, as its number in hexadecimal. */
  encodeGlyph(glyph: Glyph, codePoints: readonly number[], advance: number): string {
    const key = `${glyph.id}: ${codePoints.join(' ')} ${advance}`;
    const code = this.#codes.get(key) ?? this.#embed(glyph, codePoints, 1e3 * advance);
    this.#codes.set(key, code);
    return code;
  }

  #embed(glyph: Glyph, codePoints: readonly number[], width = glyph.advanceWidth * this.#font.scale): string {
    const { subset, unicode, widths } = this.#font;
    if (subset.glyphs.length === MOST_GLYPHS) return BOX;
    const slot = subset.glyphs.push(glyph.id) - 1;
    unicode[slot] = codePoints;
    widths[slot] = width;
    return slot.toString(16).padStart(4, '0');
  }
}
