/**
 * The two fonts of every sheet, as TrueType files: DejaVu Sans Condensed and its Bold. The package holds both, as
 * `halfpin/fonts/DejaVuSansCondensed.ttf` and `halfpin/fonts/DejaVuSansCondensed-Bold.ttf`, with every letter and the
 * rules that shape Arabic and Hebrew, but without the names of glyphs, which nothing here uses and which take long to read.
 */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
  /** A TrueType or OpenType file of the user's, for letters that both of these lack; it draws them in both weights. */
  readonly other?: Uint8Array;
  /** Names that are drawn within lines of English: each is ordered by itself, so that no figure beside it joins it. */
  readonly names?: readonly string[];
}
