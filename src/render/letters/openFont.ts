import { create, type Font, type Glyph } from 'fontkit';

const opened = new WeakMap<Uint8Array, Font>();

/** The font in a file's bytes, of a collection the first; the same bytes are read only once. */
export const openFont = (bytes: Uint8Array): Font => {
  const known = opened.get(bytes);
  if (known !== undefined) return known;
  const read = create(bytes);
  const font = read.fonts === undefined ? read : read.fonts[0];
  if (font === undefined) throw new Error('the collection is empty');
  tellCharacters(font);
  opened.set(bytes, font);
  return font;
};

/** Fontkit keeps each glyph with the characters that it first stood for; after this each stands for those it is asked for. */
const tellCharacters = (font: Font): void => {
  const kept = font.getGlyph.bind(font);
  // What is worked out of a glyph, as its outline, is kept with it.
  const glyphs = new Map<string, Glyph>();
  font.getGlyph = (id, codePoints = []) => {
    const key = `${id} ${codePoints}`;
    const known = glyphs.get(key);
    if (known !== undefined) return known;
    const glyph: Glyph = Object.create(kept(id));
    glyphs.set(key, Object.defineProperty(glyph, 'codePoints', { value: codePoints }));
    return glyph;
  };
};
