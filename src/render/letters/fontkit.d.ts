/** The part of fontkit that the renderers use. */
declare module 'fontkit' {
  export interface PathCommand {
    readonly command: 'moveTo' | 'lineTo' | 'quadraticCurveTo' | 'bezierCurveTo' | 'closePath';
    readonly args: readonly number[];
  }

  export interface Glyph {
    readonly id: number;
    readonly codePoints: readonly number[];
    readonly advanceWidth: number;
    readonly path: { readonly commands: readonly PathCommand[] };
  }

  /** A glyph's place in a shaped text, font units: how far the pen moves, and where from the pen the glyph stands. */
  export interface GlyphPosition {
    readonly xAdvance: number;
    readonly xOffset: number;
    readonly yOffset: number;
  }

  export interface Subset {
    /** The glyphs of the font that the subset holds, by their number in the subset. */
    readonly glyphs: number[];
  }

  export interface Font {
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly characterSet: readonly number[];
    glyphForCodePoint(codePoint: number): Glyph;
    hasGlyphForCodePoint(codePoint: number): boolean;
    getGlyph: (id: number, codePoints?: readonly number[]) => Glyph;
    createSubset(): Subset;
    /** Shaped by the font's own rules; glyphs from left to right. */
    layout(
      text: string,
      features: undefined,
      script: undefined,
      language: undefined,
      direction: 'ltr' | 'rtl',
    ): { readonly glyphs: readonly Glyph[]; readonly positions: readonly GlyphPosition[] };
    readonly directory: { readonly tables: Readonly<Record<string, object>> };
  }

  /** A collection has fonts instead of glyphs. */
  export function create(bytes: Uint8Array): Font & { readonly fonts?: readonly Font[] };
}
