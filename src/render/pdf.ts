import type { Font } from 'fontkit';
import PDFDocument from 'pdfkit';
import type { PrintPage } from '../drawing/printPage.ts';
import { shownText } from '../drawing/shownText.ts';
import type { Fonts } from './fonts.ts';
import { GlyphEncoder } from './glyphEncoder.ts';
import { CREATOR } from './mark.ts';
import { contentOf, POINTS_PER_MM } from './pdfContent.ts';

/** A PDF's title and fonts. */
export interface PdfOptions {
  readonly title: string;
  readonly fonts: Fonts;
}

/** Viewer preferences: no scaling, and the paper of the pages. */
const FULL_SIZE = { PrintScaling: 'None', PickTrayByPDFSize: true };

class FullSizeDocument extends PDFDocument {
  /** The reference to the viewer's preferences is made in the constructor, from the option `displayTitle`. */
  override ref(data: object = {}): PDFKit.PDFKitReference {
    return super.ref('DisplayDocTitle' in data ? { ...data, ...FULL_SIZE } : data);
  }

  /** No XMP: pdfkit's needs a date and does not escape the title; the document information holds the same facts. */
  override endMetadata(): void {}
}

/** Bytes gathered before each call of the sink. */
const CHUNK = 1 << 16;

/**
 * Writes pages as a PDF that prints at full size: its viewer preferences ask for no scaling and for the paper of the
 * pages. Pages are drawn one at a time and their bytes passed on in chunks, so thousands need no more memory than one.
 * The same pages give the same bytes in every version of Node and in a browser.
 * @param pages at least one
 * @param sink receives the file's bytes in order; where it returns a promise, writing waits for it
 * @example
 * ```ts
 * const sheets = sheetsOf(project, { paper });
 * const chunks: Uint8Array[] = [];
 * if (sheets.ok)
 *   for (const { title, pages } of sheets.value)
 *     await renderPdf(pages(), { title, fonts }, (chunk) => void chunks.push(chunk));
 * ```
 */
export const renderPdf = async (
  pages: Iterable<PrintPage>,
  { title, fonts }: PdfOptions,
  sink: (chunk: Uint8Array) => void | Promise<void>,
): Promise<void> => {
  const document = new FullSizeDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    // The date makes the file's identifier, so it must not be today's.
    info: { Title: shownText(title), Creator: CREATOR, CreationDate: new Date(0) },
  });
  delete document.info.CreationDate;

  let gathered: Uint8Array[] = [];
  let length = 0;
  document.on('data', (chunk) => {
    gathered.push(chunk);
    length += chunk.length;
  });
  const handOn = async (least: number) => {
    // The document hands its bytes over in a microtask.
    await null;
    if (length < least) return;
    const chunk = new Uint8Array(length);
    let at = 0;
    for (const part of gathered) {
      chunk.set(part, at);
      at += part.length;
    }
    gathered = [];
    length = 0;
    await sink(chunk);
  };

  // From bytes, pdfkit does not have to encode the text letter by letter.
  const utf8 = new TextEncoder();
  const encoders = new Map<Font, GlyphEncoder>();
  const encoderOf = (font: Font): GlyphEncoder => {
    const encoder = encoders.get(font) ?? new GlyphEncoder(document, font);
    encoders.set(font, encoder);
    return encoder;
  };
  for (const page of pages) {
    document.addPage({ size: [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM], margin: 0 });
    const content = `${contentOf(page, fonts, encoderOf)}\n`;
    // All of it is ASCII: one byte a character.
    const bytes = new Uint8Array(content.length);
    utf8.encodeInto(content, bytes);
    document.addContent(bytes);
    await handOn(CHUNK);
  }
  document.end();
  await handOn(1);
};
