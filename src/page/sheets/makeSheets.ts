import { zipSync } from 'fflate';
import type { PrintPage } from '../../drawing/printPage.ts';
import { drawProof } from '../../paper/proofSheet.ts';
import { drillingOf } from '../../project/drillingOf.ts';
import { dxfFiles } from '../../project/dxfFiles.ts';
import { guidePieces } from '../../project/guidesOf.ts';
import { onlyNumbers } from '../../project/only.ts';
import { frameOfProject, partsOfProject } from '../../project/partsOfProject.ts';
import { piecesOf } from '../../project/piecesOf.ts';
import { hasGuides, type Project } from '../../project/project.ts';
import { readProject } from '../../project/readProject.ts';
import { type SheetSet, sheetsOf, USUAL_SHEETS } from '../../project/sheetsOf.ts';
import { svgFiles } from '../../project/svgFiles.ts';
import { partsCsv } from '../../project/tables/partsCsv.ts';
import type { Fonts } from '../../render/fonts.ts';
import { pagePaths } from '../../render/pagePaths.ts';
import { renderPdf } from '../../render/pdf.ts';
import { svgWindow } from '../../render/svgWindow.ts';
import type { PieceChoice } from '../../sheets/template/cornerPieces.ts';
import { type Complaint, sentence } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import type { Unit } from '../../units/unit.ts';
import { lettersOfJob } from './lettersOfJob.ts';
import { readChoice } from './readChoice.ts';
import { readPrinting } from './readPrinting.ts';
import type { DrawnPage, JobEnd, JobNews, SheetChoice, SheetCounts, SheetJob } from './sheetJob.ts';

type Tell = (news: JobNews) => void;

/** Does a job, and tells how far it is. */
export const makeSheets = async (
  { plan, choice, task }: SheetJob,
  bundled: Fonts,
  tell: Tell,
): Promise<JobEnd> => {
  const reading = readProject(plan);
  if (!reading.ok) throw new Error('this plan is not valid');
  const whole = reading.value;
  const refused = (complaints: readonly Complaint[]): JobEnd => ({
    is: 'refused',
    says: complaints.map((complaint) => sentence(complaint, whole.units)),
  });
  if (task.make === 'parts') {
    const table = partsCsv(partsOfProject(whole), whole.units, frameOfProject(whole));
    return {
      is: 'made',
      says: 'The parts, for a spreadsheet.',
      file: { name: whole.name, ending: '-parts.csv', blob: new Blob([table], { type: 'text/csv' }) },
    };
  }
  const letters = await lettersOfJob(plan, bundled, choice.font);
  if (!letters.ok) return refused(letters.complaints);
  const fonts = letters.value;
  if (task.make === 'proof') return proof(choice, unitOf(whole.units), fonts, refused);
  const read = readChoice(whole, choice);
  if (!read.ok) return refused(read.complaints);
  const { project, options } = read.value;
  const part = project.only === undefined ? '' : `-only-${onlyNumbers(whole, project.only)}`;
  if (task.make === 'pieces') return pieceZip(project, part, options.choice, fonts, tell);
  if (task.make === 'print') {
    const templates = sheetsOf(project, { ...options, kinds: ['templates', 'contents'] });
    if (!templates.ok) return refused(templates.complaints);
    const pages = drawPages(ofKind('templates', templates.value), fonts, tell);
    // What is not needed to print comes last.
    const all = sheetsOf(project, options);
    if (all.ok) tell({ is: 'counts', counts: countsOf(all.value) });
    for (const page of pages) tell({ is: 'picture', picture: await pictureOf(page) });
    return { is: 'made', says: '' };
  }
  const all = sheetsOf(project, { ...options, kinds: [...USUAL_SHEETS, task.kind] });
  if (!all.ok) return refused(all.complaints);
  const set = ofKind(task.kind, all.value);
  const pages = counted(set.pages(), set.count, tell);
  const { paper, count } = set;
  return {
    is: 'made',
    says: `${count} ${count === 1 ? 'sheet' : 'sheets'} of ${paper.name}. Print at 100 %, and lay a rule on both check bars before you cut.`,
    file: { name: project.name, ending: `${part}-${set.kind}.pdf`, blob: await pdf(set.title, pages, fonts) },
  };
};

const countsOf = (sets: readonly SheetSet[]): SheetCounts =>
  Object.fromEntries(sets.map(({ kind, count }) => [kind, count]));

const ofKind = (kind: SheetSet['kind'], all: readonly SheetSet[]): SheetSet => {
  const found = all.find((each) => each.kind === kind);
  if (found === undefined) throw new Error('there are no such sheets of this plan');
  return found;
};

/** The same items; before one is drawn, its number is told. */
function* counted<T>(items: Iterable<T>, of: number, tell: Tell): Generator<T, void> {
  let number = 0;
  for (const item of items) {
    number += 1;
    tell({ is: 'progress', number, of });
    yield item;
  }
}

const pdf = async (title: string, pages: Iterable<PrintPage>, fonts: Fonts): Promise<Blob> => {
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  await renderPdf(pages, { title, fonts }, (chunk) => {
    chunks.push(new Uint8Array(chunk));
  });
  return new Blob(chunks, { type: 'application/pdf' });
};

/** Tells the number of pages, then each of them. */
const drawPages = (set: SheetSet, fonts: Fonts, tell: Tell): DrawnPage[] => {
  tell({ is: 'counts', counts: countsOf([set]) });
  const pages: DrawnPage[] = [];
  for (const page of set.pages()) {
    const { width, height } = page;
    const drawn = { width, height, paths: pagePaths(page, fonts) };
    pages.push(drawn);
    tell({ is: 'page', page: drawn });
  }
  tell({ is: 'drawn' });
  return pages;
};

/** Width of a small picture of a page, in px. */
const PICTURE = 300;

const pictureOf = ({ width, height, paths }: DrawnPage): Promise<Blob> => {
  const scale = PICTURE / width;
  const canvas = new OffscreenCanvas(PICTURE, Math.round(height * scale));
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('the browser cannot draw');
  context.scale(scale, scale);
  for (const { look, data } of paths) {
    const path = new Path2D(data);
    const { fill = 'none', stroke = 'none', 'stroke-width': pen, 'stroke-dasharray': dash } = look;
    if (fill !== 'none') {
      context.fillStyle = fill;
      context.fill(path);
    }
    if (stroke !== 'none') {
      context.strokeStyle = stroke;
      context.lineWidth = Number(pen);
      context.setLineDash(dash?.split(' ').map(Number) ?? []);
      context.stroke(path);
    }
  }
  return canvas.convertToBlob();
};

/** A proof sheet, to measure a printer's error. */
const proof = async (
  choice: SheetChoice,
  unit: Unit,
  fonts: Fonts,
  refused: (complaints: readonly Complaint[]) => JobEnd,
): Promise<JobEnd> => {
  const printing = readPrinting(choice, unit);
  if (!printing.ok) return refused(printing.complaints);
  const { paper, margin } = printing.value;
  const drawn = drawProof(paper, margin, unit);
  if (!drawn.ok) return refused(drawn.complaints);
  return {
    is: 'made',
    says: 'Print it at 100 %, measure it with a steel rule, and type in below what you read.',
    file: {
      name: `proof-${paper.name}`,
      ending: '.pdf',
      blob: await pdf(`Proof sheet for ${paper.name}`, [drawn.value.page], fonts),
    },
  };
};

/**
 * Every piece as an SVG file, and every guide as a DXF file too, all in one zip.
 * @param part what stands for a choice of the drawers in the file's name
 */
const pieceZip = (project: Project, part: string, choice: PieceChoice, fonts: Fonts, tell: Tell): JobEnd => {
  const encoder = new TextEncoder();
  const pieces = [...piecesOf(project, choice), ...drillingOf(project), ...guidePieces(project)];
  const drawn = [...svgFiles(pieces, { fonts, window: svgWindow() }, project.name), ...dxfFiles(project)];
  const files = [...counted(drawn, drawn.length, tell)].map(
    ({ name, text }) => [name, encoder.encode(text())] as const,
  );
  // The earliest date of a ZIP file, so that the same plan gives the same bytes.
  const zip = new Uint8Array(zipSync(Object.fromEntries(files), { mtime: new Date(1980, 0, 1) }));
  return {
    is: 'made',
    says: hasGuides(project)
      ? 'Every template and guide as an SVG file, the guides as DXF too, in one zip.'
      : 'Every template as an SVG file, in one zip.',
    file: {
      name: project.name,
      ending: `${part}-pieces.zip`,
      blob: new Blob([zip], { type: 'application/zip' }),
    },
  };
};
