import { type Phrase, say } from '../../units/phrase.ts';
import { openFont } from './openFont.ts';
import { hasWholeTables } from './wholeTables.ts';

/** TrueType by two names, OpenType with outlines of PostScript, and a collection of fonts. */
const SIGNATURES: ReadonlySet<string> = new Set(['\0\u0001\0\0', 'true', 'OTTO', 'ttcf']);

/** The largest font that is read, in bytes: the largest of all scripts together have half of that. */
export const LARGEST_FONT = 1 << 26;

const DAMAGED = say`this font is damaged: it cannot be read to its end`;

/** Why a file's bytes are no font that sheets can be drawn in; nothing where they are one. */
export const checkFont = (bytes: Uint8Array): Phrase | undefined => {
  if (bytes.length > LARGEST_FONT)
    return say`this holds more than ${LARGEST_FONT >> 20} MB, so it is not a font`;
  const signature = String.fromCharCode(...bytes.subarray(0, 4));
  if (/^wOF[F2]$/u.test(signature))
    return say`this is a font packed for web pages; a TrueType or OpenType file is needed (.ttf, .otf)`;
  const none = say`this is no font; a TrueType or OpenType file is needed (.ttf, .otf, .ttc)`;
  if (!SIGNATURES.has(signature)) return none;
  if (!hasWholeTables(bytes)) return DAMAGED;
  try {
    const font = openFont(bytes);
    const { tables } = font.directory;
    if (!('glyf' in tables || 'CFF ' in tables))
      return say`this font has no outlines that a PDF can hold; choose another one`;
    // What shaping, measuring and embedding read; a broken file fails here.
    const some = font.characterSet.slice(0, 3);
    font.layout(String.fromCodePoint(...some), undefined, undefined, undefined, 'ltr');
    for (const codePoint of some) font.glyphForCodePoint(codePoint).path.commands.at(-1);
    return font.unitsPerEm > 0 && some.length > 0 ? undefined : none;
  } catch {
    return DAMAGED;
  }
};
