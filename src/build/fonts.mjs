import { readFileSync } from 'node:fs';
import { fromRoot } from './bundling.mjs';

/** The tables needed to draw letters one by one and to embed them in a PDF, and the rules that shape Arabic and Hebrew. */
const TABLES = [
  ...['OS/2', 'cmap', 'cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'prep'],
  ...['GDEF', 'GPOS', 'GSUB'],
];

const tablesOf = (font) => {
  const count = font.readUInt16BE(4);
  return new Map(
    Array.from({ length: count }, (_, i) => {
      const at = 12 + 16 * i;
      const from = font.readUInt32BE(at + 8);
      const tag = font.toString('latin1', at, at + 4);
      return [tag, font.subarray(from, from + font.readUInt32BE(at + 12))];
    }),
  );
};

/** The `post` table without glyph names: to read 6,000 of them would be slower than all else. */
const withoutGlyphNames = (post) => {
  const bare = Buffer.from(post.subarray(0, 32));
  bare.writeUInt32BE(0x00030000);
  return bare;
};

/** A table of names with one only, the sixth, in UTF-16 for Windows: a PDF needs no other. */
const postscriptName = (name) => {
  const text = Buffer.from(name, 'utf16le').swap16();
  const header = [0, 1, 18, 3, 1, 0x409, 6, text.length, 0];
  const table = Buffer.alloc(18 + text.length);
  header.forEach((value, i) => {
    table.writeUInt16BE(value, 2 * i);
  });
  text.copy(table, 18);
  return table;
};

/** The sum of a table's words of four bytes. */
const checksum = (table) => {
  let sum = 0;
  for (let at = 0; at < table.length; at += 4) sum = (sum + table.readUInt32BE(at)) >>> 0;
  return sum;
};

const padded = (table) => Buffer.concat([table, Buffer.alloc((4 - (table.length % 4)) % 4)]);

/** A TrueType file of these tables. The sum over the whole file, in `head`, stays the whole font's: nothing that draws looks at it. */
const fontOf = (tables) => {
  const tags = [...tables.keys()].sort();
  const most = 2 ** Math.floor(Math.log2(tags.length));
  const directory = Buffer.alloc(12 + 16 * tags.length);
  directory.writeUInt32BE(0x00010000);
  directory.writeUInt16BE(tags.length, 4);
  directory.writeUInt16BE(16 * most, 6);
  directory.writeUInt16BE(Math.log2(most), 8);
  directory.writeUInt16BE(16 * (tags.length - most), 10);
  let at = directory.length;
  const bodies = tags.map((tag, i) => {
    const table = tables.get(tag);
    const body = padded(table);
    directory.write(tag, 12 + 16 * i, 'latin1');
    directory.writeUInt32BE(checksum(body), 16 + 16 * i);
    directory.writeUInt32BE(at, 20 + 16 * i);
    directory.writeUInt32BE(table.length, 24 + 16 * i);
    at += body.length;
    return body;
  });
  return Buffer.concat([directory, ...bodies]);
};

/** A font of the sheets as a TrueType file: every letter, without what is slow to read and not used. */
export const font = (name) => {
  const path = fromRoot(`node_modules/dejavu-fonts-ttf/ttf/${name}.ttf`);
  const whole = tablesOf(readFileSync(path));
  const tables = new Map(TABLES.map((tag) => [tag, whole.get(tag)]));
  tables.set('name', postscriptName(name));
  tables.set('post', withoutGlyphNames(whole.get('post')));
  return fontOf(tables);
};
