/** The part of fontkit that the renderers use. */
declare module 'fontkit' {
  export interface PathCommand {
    readonly command: 'moveTo' | 'lineTo' | 'quadraticCurveTo' | 'bezierCurveTo' | 'closePath';
    readonly args: readonly number[];
  }

  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly path: { readonly commands: readonly PathCommand[] };
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
    createSubset(): Subset;
  }

  export function create(bytes: Uint8Array): Font;
}
