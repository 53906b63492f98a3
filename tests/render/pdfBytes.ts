import type { PrintPage } from '../../src/drawing/printPage.ts';
import { renderPdf } from '../../src/render/pdf.ts';
import { FONTS } from './fonts.ts';

/** The whole file as one. */
export const pdfBytes = async (
  pages: Iterable<PrintPage>,
  title = 'Haberdashery chest',
): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  await renderPdf(pages, { title, fonts: FONTS }, (chunk) => {
    chunks.push(chunk);
  });
  return Buffer.concat(chunks);
};
