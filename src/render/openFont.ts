import { create, type Font } from 'fontkit';

const opened = new WeakMap<Uint8Array, Font>();

/** The font in a file's bytes; the same bytes are read only once. */
export const openFont = (bytes: Uint8Array): Font => {
  const font = opened.get(bytes) ?? create(bytes);
  opened.set(bytes, font);
  return font;
};
