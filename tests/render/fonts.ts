import { readFileSync } from 'node:fs';
import type { Fonts } from '../../src/render/fonts.ts';

const read = (name: string): Uint8Array =>
  readFileSync(new URL(`../../node_modules/dejavu-fonts-ttf/ttf/${name}.ttf`, import.meta.url));

export const FONTS: Fonts = {
  regular: read('DejaVuSansCondensed'),
  bold: read('DejaVuSansCondensed-Bold'),
};
