import PDFDocument from 'pdfkit';
import { type Affine, apply, compose } from '../drawing/affine.ts';
import type { Mark, Path, PenName, TextMark } from '../drawing/drawing.ts';
import type { Page } from '../drawing/page.ts';
import { PENS } from '../drawing/pens.ts';
import { shownText } from '../drawing/shownText.ts';
import { type Fonts, openFont } from './fonts.ts';
import { Lettering } from './lettering.ts';
import { lettersMap } from './letters.ts';

export interface PdfOptions {
  readonly title: string;
  readonly fonts: Fonts;
}

const POINTS_PER_MM = 72 / 25.4;

/** Bytes gathered before they are handed on. */
const CHUNK = 1 << 16;

/**
 * Writes pages as a PDF that prints at full size: its viewer preferences ask for no scaling and for the paper of the
 * pages. Pages are taken one at a time and their bytes handed on as they fill up, so thousands need no more memory than
 * one. The same pages give the same bytes in every version of Node and in a browser.
 * @param pages at least one
 * @param sink takes the file's bytes in order; where it returns a promise, writing waits for it
 */
export const renderPdf = async (
  pages: Iterable<Page>,
  { title, fonts }: PdfOptions,
  sink: (chunk: Uint8Array) => void | Promise<void>,
): Promise<void> => {
  const document = new PDFDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    // The date makes the file's identifier, so it must not be today's.
    info: { Title: shownText(title), Creator: 'Halfpin', CreationDate: new Date(0) },
  });
  delete document.info.CreationDate;
  // pdfkit's XMP wants a date and does not escape the title; the document information says the same.
  document.endMetadata = () => {};
  const preferences = document._root.data.ViewerPreferences.data;
  preferences.PrintScaling = 'None';
  preferences.PickTrayByPDFSize = true;

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

  const letterings = new Map<TextMark['weight'], Lettering>();
  const letteringOf = (weight: TextMark['weight']): Lettering => {
    const lettering = letterings.get(weight) ?? new Lettering(document, openFont(fonts[weight]));
    letterings.set(weight, lettering);
    return lettering;
  };
  for (const page of pages) {
    document.addPage({ size: [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM], margin: 0 });
    document.addContent(contentOf(page, letteringOf));
    await handOn(CHUNK);
  }
  document.end();
  await handOn(1);
};

/** A page's content stream. */
const contentOf = (page: Page, letteringOf: (weight: TextMark['weight']) => Lettering): string => {
  // pdfkit starts each page with a map to points that run downward from the top left.
  const toPoints: Affine = [POINTS_PER_MM, 0, 0, -POINTS_PER_MM, 0, page.height * POINTS_PER_MM];
  const lines: string[] = [];
  for (const { drawing, at } of page.placed) {
    const map = compose(at, toPoints);
    drawing.marks.forEach((mark, i) => {
      switch (mark.kind) {
        case 'stroke': {
          // Marks in a row that share a pen make one path.
          if (!drawnWith(drawing.marks[i - 1], mark.pen)) lines.push(penOperators(mark.pen));
          for (const path of mark.paths) lines.push(pathOperators(path, map));
          if (!drawnWith(drawing.marks[i + 1], mark.pen)) lines.push('S');
          break;
        }
        case 'fill':
          lines.push(`q ${factor(mark.tone)} g`);
          for (const path of mark.paths) lines.push(pathOperators(path, map));
          lines.push('f Q');
          break;
        case 'text':
          lines.push(textOperators(mark, map, letteringOf(mark.weight)));
          break;
      }
    });
  }
  return lines.join('\n');
};

const drawnWith = (mark: Mark | undefined, pen: PenName): boolean =>
  mark?.kind === 'stroke' && mark.pen === pen;

/** Coordinates to the thousandth of a point, a third of a micrometre. */
const coordinate = (points: number): number => Math.round(points * 1e3) / 1e3;
const factor = (value: number): number => Math.round(value * 1e6) / 1e6;

const penOperators = (name: PenName): string => {
  const { width, dash = [] } = PENS[name];
  const lengths = dash.map((part) => factor(part * POINTS_PER_MM));
  return `${factor(width * POINTS_PER_MM)} w [${lengths.join(' ')}] 0 d`;
};

const pathOperators = ({ points, closed }: Path, map: Affine): string => {
  let operators = '';
  for (const point of points) {
    const [x, y] = apply(map, point);
    operators += `${coordinate(x)} ${coordinate(y)} ${operators === '' ? 'm' : 'l'} `;
  }
  return closed === true ? `${operators}h` : operators;
};

const textOperators = (mark: TextMark, map: Affine, lettering: Lettering): string => {
  const [a, b, c, d, x, y] = compose(lettersMap(mark), map);
  const matrix = [factor(a), factor(b), factor(c), factor(d), coordinate(x), coordinate(y)];
  return `BT /${lettering.name()} 1 Tf ${matrix.join(' ')} Tm <${lettering.spell(mark.text)}> Tj ET`;
};
