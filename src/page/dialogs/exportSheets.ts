import { zipSync } from 'fflate';
import { type Affine, compose } from '../../drawing/affine.ts';
import type { PrintPage } from '../../drawing/printPage.ts';
import type { Paper } from '../../paper/paperSizes.ts';
import { drawProof } from '../../paper/proofSheet.ts';
import { dxfFiles } from '../../project/dxfFiles.ts';
import { guidePieces } from '../../project/guidesOf.ts';
import { piecesOf } from '../../project/piecesOf.ts';
import type { Project } from '../../project/project.ts';
import { svgFiles } from '../../project/svgFiles.ts';
import type { Fonts } from '../../render/fonts.ts';
import { renderPdf } from '../../render/pdf.ts';
import { renderSvg } from '../../render/svg.ts';
import type { PieceChoice } from '../../sheets/template/cornerPieces.ts';
import { accept, type Result } from '../../units/complaint.ts';
import type { Unit } from '../../units/unit.ts';

export { sheetsOf } from '../../project/sheetsOf.ts';

/** A PDF's bytes, in order. */
export const pdf = async (
  title: string,
  pages: Iterable<PrintPage>,
  fonts: Fonts,
): Promise<Uint8Array<ArrayBuffer>[]> => {
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  await renderPdf(pages, { title, fonts }, (chunk) => {
    chunks.push(new Uint8Array(chunk));
  });
  return chunks;
};

/** A proof sheet, to measure a printer's error. */
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
export const pieceZip = (project: Project, choice: PieceChoice, fonts: Fonts): Uint8Array<ArrayBuffer> => {
  const encoder = new TextEncoder();
  const pieces = [...piecesOf(project, choice), ...guidePieces(project)];
  const files = [...svgFiles(pieces, { fonts, window }, project.name), ...dxfFiles(project)].map(
    ({ name, text }) => [name, encoder.encode(text())] as const,
  );
  // The earliest date of a ZIP file, so that the same plan gives the same bytes.
  return new Uint8Array(zipSync(Object.fromEntries(files), { mtime: new Date(1980, 0, 1) }));
};

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** A page at full size, for the browser to print. */
export const pageSvg = ({ width, height, placed }: PrintPage, fonts: Fonts): SVGSVGElement => {
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
