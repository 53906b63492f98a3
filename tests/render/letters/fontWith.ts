import { readFileSync } from 'node:fs';
import { create } from 'fontkit';

const SERIF = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSerif.ttf');

/**
 * A font file that has these letters only, each drawn as a letter of Latin: DejaVu Serif with another table of characters,
 * of format 12 (OpenType, `cmap`), at its end.
 */
export const fontWith = (letters: string): Uint8Array => {
  const serif = create(SERIF);
  const codes = [...letters].map((letter) => letter.codePointAt(0) ?? 0).sort((a, b) => a - b);
  const cmap = Buffer.alloc(12 + 16 + 12 * codes.length);
  cmap.writeUInt16BE(1, 2);
  cmap.writeUInt16BE(3, 4);
  cmap.writeUInt16BE(10, 6);
  cmap.writeUInt32BE(12, 8);
  cmap.writeUInt16BE(12, 12);
  cmap.writeUInt32BE(cmap.length - 12, 16);
  cmap.writeUInt32BE(codes.length, 24);
  codes.forEach((code, i) => {
    const glyph = serif.glyphForCodePoint(0x41 + (i % 26));
    [code, code, glyph.id].forEach((value, j) => {
      cmap.writeUInt32BE(value, 28 + 12 * i + 4 * j);
    });
  });
  const font = Buffer.concat([SERIF, cmap]);
  const entry = font.indexOf('cmap');
  let sum = 0;
  for (let at = 0; at < cmap.length; at += 4) sum = (sum + cmap.readUInt32BE(at)) >>> 0;
  font.writeUInt32BE(sum, entry + 4);
  font.writeUInt32BE(SERIF.length, entry + 8);
  font.writeUInt32BE(cmap.length, entry + 12);
  return font;
};
