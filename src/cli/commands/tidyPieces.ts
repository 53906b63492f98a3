import { readdir, rm } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { markedFile } from '../../files/guardOverwrite.ts';
import { guidePieces, guidesOf } from '../../project/guidesOf.ts';
import { piecesOf } from '../../project/piecesOf.ts';
import { hasGuides, type Project } from '../../project/project.ts';
import { SHEET_KINDS } from '../../project/sheetsOf.ts';
import { CREATOR, isOfPlan } from '../../render/mark.ts';
import { fileStem } from '../../sheets/fileStem.ts';
import { guidePiece } from '../../sheets/guide/drawGuide.ts';

/**
 * Finds the files of a plan's pieces in a folder that the plan does not make, however it is drawn, and removes them where
 * that is asked for. A piece or a guide carries the plan's name in its mark; a PDF has it in its file's name.
 * @returns what to say of each
 */
export const tidyPieces = async (project: Project, folder: string, remove: boolean): Promise<string[]> => {
  const ofPlan: string[] = [];
  for (const name of (await readdir(folder)).sort())
    if (await isPieceOf(project, folder, name)) ofPlan.push(name);
  const made = namesMade(project);
  const left = ofPlan.filter((name) => !made.has(name)).map((name) => join(folder, name));
  if (!remove)
    return left.map((path) => `${path}: this plan no longer makes this file; add --tidy to remove it`);
  for (const path of left) await rm(path);
  return left.map((path) => `${path}: removed; this plan no longer makes this file`);
};

const isPieceOf = async ({ name: plan }: Project, folder: string, name: string): Promise<boolean> => {
  if (!['.svg', '.dxf', '.pdf'].includes(extname(name))) return false;
  // What cannot be read is no piece that could be known.
  const { mark } = await markedFile(join(folder, name)).catch(() => ({ mark: undefined }));
  if (mark === undefined) return false;
  return (
    isOfPlan(mark, plan, name) ||
    (mark === CREATOR && SHEET_KINDS.some((kind) => name === pdfName(plan, kind)))
  );
};

export const pdfName = (plan: string, kind: string): string => `${fileStem(plan)}-${kind}.pdf`;

/** The name of every file that a project can be drawn as. */
const namesMade = (project: Project): ReadonlySet<string> => {
  const pieces = [false, true].flatMap((flat) =>
    piecesOf(project, { boards: ['tail', 'pin'], flat, rods: true }),
  );
  const kinds = [
    'templates',
    ...(hasGuides(project) ? ['guides'] : []),
    ...(project.set.family === undefined ? [] : ['bench', 'comparison']),
  ];
  return new Set([
    ...[...pieces, ...guidePieces(project)].map(({ name }) => `${name}.svg`),
    ...guidesOf(project).map(({ guide, titles }) => `${guidePiece(guide, titles).name}.dxf`),
    ...kinds.map((kind) => pdfName(project.name, kind)),
  ]);
};
