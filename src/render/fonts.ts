/**
 * The two fonts of every sheet, as TrueType files: DejaVu Sans Condensed and its Bold. The package holds both, as
 * `halfpin/fonts/DejaVuSansCondensed.ttf` and `halfpin/fonts/DejaVuSansCondensed-Bold.ttf`, with every letter but without
 * kerning and the names of glyphs, which nothing here uses and which take long to read.
 */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}
