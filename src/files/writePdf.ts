import type { PrintPage } from '../drawing/printPage.ts';
import type { Size } from '../paper/printable.ts';
import { loadFonts } from './loadFonts.ts';
import { writeWhole } from './writeWhole.ts';

/**
 * Writes pages as a PDF, whole or not at all.
 * @returns the size of each page
 */
export const writePdf = async (path: string, title: string, pages: Iterable<PrintPage>): Promise<Size[]> => {
  // The PDF library is by far the largest.
  const { renderPdf } = await import('../render/pdf.ts');
  const fonts = loadFonts();
  const sizes: Size[] = [];
  const noted = function* (): Generator<PrintPage, void> {
    for (const page of pages) {
      sizes.push({ width: page.width, height: page.height });
      yield page;
    }
  };
  await writeWhole(path, (write) => renderPdf(noted(), { title, fonts }, write));
  return sizes;
};
