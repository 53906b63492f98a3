import { readFileSync } from 'node:fs';
import type { Fonts } from '../render/fonts.ts';

let fonts: Fonts | undefined;

/** The fonts beside the program; the same objects each time, so that what is parsed of them can be cached. */
export const loadFonts = (): Fonts => {
  const read = (name: string) => readFileSync(new URL(`./fonts/${name}.ttf`, import.meta.url));
  fonts ??= { regular: read('DejaVuSansCondensed'), bold: read('DejaVuSansCondensed-Bold') };
  return fonts;
};
