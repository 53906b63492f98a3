import { create, type Font } from 'fontkit';

/** The two fonts of every sheet, as TrueType files: DejaVu Sans Condensed and its Bold. */
export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

const opened = new WeakMap<Uint8Array, Font>();

/** The font in a file's bytes; the same bytes are read only once. */
export const openFont = (bytes: Uint8Array): Font => {
  const font = opened.get(bytes) ?? create(bytes);
  opened.set(bytes, font);
  return font;
};
