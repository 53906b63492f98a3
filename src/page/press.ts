import { zipSync } from 'fflate';
import { accept, type Result, refuse } from '../complaint.ts';
import { type Affine, compose } from '../drawing/affine.ts';
import type { Page } from '../drawing/page.ts';
import type { Cuts } from '../guided/cutCorners.ts';
import { drawProof } from '../paper/proof.ts';
import { layPages, type Sheets } from '../paper/sheets.ts';
import type { Paper } from '../paper/sizes.ts';
import { renderDxf } from '../render/dxf.ts';
import type { Fonts } from '../render/fonts.ts';
import { renderPdf } from '../render/pdf.ts';
import { pieceSvg } from '../render/pieceSvg.ts';
import { renderSvg } from '../render/svg.ts';
import type { PieceChoice } from '../template/corner.ts';
import { guideLayers, guidePiece } from '../template/drawGuide.ts';
import { setGuides } from '../template/setGuides.ts';
import {
  type SetLayout,
  type SheetWish,
  type SheetWork,
  setLayouts,
  setPieces,
} from '../template/setLayouts.ts';
import type { Unit } from '../units/unit.ts';

/** What sheets are made from: a set, and how its corners are cut. */
export interface PressWork extends Omit<SheetWork, 'guides'> {
  readonly cuts: Cuts;
}

/** What is to be printed, and how. */
export interface PressWish extends SheetWish {
  readonly choice: PieceChoice;
}

export interface PressSheets {
  readonly name: SetLayout['name'];
  readonly title: string;
  readonly sheets: Sheets;
}

/** Every kind of sheet of a set, as the program's `draw` makes them. */
export const layAll = (set: PressWork, wish: PressWish): Result<PressSheets[]> => {
  const guides = setGuides(set, set.cuts).map(({ guide, titles }) => guidePiece(guide, titles));
  const work = { ...set, guides };
  const laid = setLayouts(work, setPieces(work, wish.choice), wish).map(({ name, layout }) => ({
    name,
    title: `${wish.title}: ${name}`,
    sheets: layPages(layout),
  }));
  const complaints = laid.flatMap(({ sheets }) => (sheets.ok ? [] : sheets.complaints));
  if (complaints.length > 0) return refuse(...complaints);
  return accept(
    laid.flatMap(({ name, title, sheets }) => (sheets.ok ? [{ name, title, sheets: sheets.value }] : [])),
  );
};

/** A PDF's bytes, in order. */
export const pdf = async (
  title: string,
  pages: Iterable<Page>,
  fonts: Fonts,
): Promise<Uint8Array<ArrayBuffer>[]> => {
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  await renderPdf(pages, { title, fonts }, (chunk) => {
    chunks.push(new Uint8Array(chunk));
  });
  return chunks;
};

/** A sheet that shows how a printer errs. */
export const proof = async (
  paper: Paper,
  margin: number,
  unit: Unit,
  fonts: Fonts,
): Promise<Result<Uint8Array<ArrayBuffer>[]>> => {
  const drawn = drawProof(paper, margin, unit);
  return drawn.ok ? accept(await pdf(`Proof sheet for ${paper.name}`, [drawn.value.page], fonts)) : drawn;
};

/** Every piece as an SVG file, and every guide as a DXF file too, all in one zip. */
export const pieceZip = (work: PressWork, choice: PieceChoice, fonts: Fonts): Uint8Array<ArrayBuffer> => {
  const tools = { fonts, window };
  const encoder = new TextEncoder();
  const guides = setGuides(work, work.cuts).map(({ guide, titles }) => ({
    guide,
    piece: guidePiece(guide, titles),
  }));
  const pieces = [...setPieces(work, choice), ...guides.map(({ piece }) => piece)];
  const files = [
    ...pieces.map((piece) => [`${piece.name}.svg`, pieceSvg(piece, tools)] as const),
    ...guides.map(
      ({ guide, piece }) =>
        [`${piece.name}.dxf`, renderDxf(guideLayers(guide), `Halfpin: ${piece.title}`)] as const,
    ),
  ].map(([name, text]) => [name, encoder.encode(text)]);
  // The first day a zip can tell, so that the same plan gives the same bytes.
  return new Uint8Array(zipSync(Object.fromEntries(files), { mtime: new Date(1980, 0, 1) }));
};

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** A page at full size, for the browser to print. */
export const pageSvg = ({ width, height, placed }: Page, fonts: Fonts): SVGSVGElement => {
  const svg = document.createElementNS(NAMESPACE, 'svg');
  svg.setAttribute('width', `${width}mm`);
  svg.setAttribute('height', `${height}mm`);
  svg.setAttribute('viewBox', `0 0 ${width} ${height}`);
  const toPage: Affine = [1, 0, 0, -1, 0, height];
  for (const { drawing, at } of placed) {
    const text = renderSvg(drawing, { title: '' }, { fonts, window });
    const drawn = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
    const fromFile: Affine = [1, 0, 0, -1, drawing.box.x0, drawing.box.y1];
    const group = document.createElementNS(NAMESPACE, 'g');
    group.setAttribute('transform', `matrix(${compose(compose(fromFile, at), toPage).join(' ')})`);
    group.append(...[...drawn.children].filter(({ tagName }) => tagName === 'g'));
    svg.append(group);
  }
  return svg;
};
