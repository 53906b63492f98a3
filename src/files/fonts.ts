import { readFileSync } from 'node:fs';
import type { Fonts } from '../render/fonts.ts';

/** The fonts that the build lays beside the program. */
export const loadFonts = (): Fonts => {
  const folder = new URL('./fonts/', import.meta.url);
  return {
    regular: readFileSync(new URL('DejaVuSansCondensed.ttf', folder)),
    bold: readFileSync(new URL('DejaVuSansCondensed-Bold.ttf', folder)),
  };
};
