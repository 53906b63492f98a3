import type { Page } from '../drawing/page.ts';
import { loadFonts } from './fonts.ts';
import { writeWhole } from './writeWhole.ts';

/** Writes pages as a PDF, whole or not at all. */
export const writePdf = async (path: string, title: string, pages: Iterable<Page>): Promise<void> => {
  // Making PDFs takes by far the largest of the libraries.
  const { renderPdf } = await import('../render/pdf.ts');
  const fonts = loadFonts();
  await writeWhole(path, (write) => renderPdf(pages, { title, fonts }, write));
};
