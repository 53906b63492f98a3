import { readFileSync } from 'node:fs';
import type { Drawing } from '../drawing/drawing.ts';
import type { PrintPage } from '../drawing/printPage.ts';
import type { Size } from '../paper/printable.ts';
import type { Fonts } from '../render/fonts.ts';
import type { SvgMeta } from '../render/svg.ts';
import { writeWhole } from './writeWhole.ts';

let fonts: Fonts | undefined;

/** The fonts beside the program; the same objects each time, so that what is parsed of them can be cached. */
export const loadFonts = (): Fonts => {
  const read = (name: string) => readFileSync(new URL(`./fonts/${name}.ttf`, import.meta.url));
  fonts ??= { regular: read('DejaVuSansCondensed'), bold: read('DejaVuSansCondensed-Bold') };
  return fonts;
};

/** Adds to the fonts another one, for letters that they lack, and the names that they must order and shape. */
export const addLetters = (names: readonly string[], other: Uint8Array | undefined): Fonts => {
  const { regular, bold } = loadFonts();
  fonts = { regular, bold, names, ...(other && { other }) };
  return fonts;
};

/**
 * Writes pages as a PDF, whole or not at all.
 * @returns the size of each page
 */
export const writePdf = async (path: string, title: string, pages: Iterable<PrintPage>): Promise<Size[]> => {
  // The PDF library is by far the largest.
  const { renderPdf } = await import('../render/pdf.ts');
  const sizes: Size[] = [];
  const noted = function* (): Generator<PrintPage, void> {
    for (const page of pages) {
      sizes.push({ width: page.width, height: page.height });
      yield page;
    }
  };
  await writeWhole(path, (write) => renderPdf(noted(), { title, fonts: loadFonts() }, write));
  return sizes;
};

/** Writes a drawing as an SVG file, whole or not at all. */
export const writeSvg = async (path: string, drawing: Drawing, meta: SvgMeta): Promise<void> => {
  // What draws SVG is loaded when it is needed: most commands write none.
  const [{ renderSvg }, { svgWindow }] = await Promise.all([
    import('../render/svg.ts'),
    import('../render/svgWindow.ts'),
  ]);
  const tools = { fonts: loadFonts(), window: svgWindow() };
  await writeWhole(path, (write) => write(renderSvg(drawing, meta, tools)));
};
