import { readFileSync } from 'node:fs';
import type { Fonts } from '../render/fonts.ts';

let fonts: Fonts | undefined;

/** The fonts that the build lays beside the program; the same ones each time, so that what is read in them is kept. */
export const loadFonts = (): Fonts => {
  const read = (name: string) => readFileSync(new URL(`./fonts/${name}.ttf`, import.meta.url));
  fonts ??= { regular: read('DejaVuSansCondensed'), bold: read('DejaVuSansCondensed-Bold') };
  return fonts;
};
