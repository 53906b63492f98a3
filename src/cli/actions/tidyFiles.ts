import { readdir, rm } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { markedFile } from '../../files/guardOverwrite.ts';
import { pdfName, pdfNames, pieceFileNames } from '../../project/fileNames.ts';
import type { Project } from '../../project/project.ts';
import { SHEET_KINDS } from '../../project/sheetsOf.ts';
import { CREATOR, isOfPlan } from '../../render/mark.ts';

/**
 * Finds the old files of a plan in a folder, and removes them where that is asked for: those that the plan does not make,
 * however it is drawn, and the PDFs that were left out this time. A piece or a guide carries the plan's name in its mark;
 * a PDF has it in its file's name.
 * @param leftOut names of PDFs that the plan makes, and this run did not
 * @returns what to say of each
 */
export const tidyFiles = async (
  project: Project,
  folder: string,
  { leftOut, remove }: { readonly leftOut: readonly string[]; readonly remove: boolean },
): Promise<string[]> => {
  const pdfs = new Set([...SHEET_KINDS.map((kind) => pdfName(project.name, kind)), ...leftOut]);
  const ofPlan: string[] = [];
  for (const name of (await readdir(folder)).sort())
    if (await isFileOf(project.name, pdfs, folder, name)) ofPlan.push(name);
  // A large set makes so many pieces that their names are not listed for nothing.
  const hasPieces = ofPlan.some((name) => !pdfs.has(name));
  const made = new Set([...pdfNames(project), ...(hasPieces ? pieceFileNames(project) : [])]);
  const told: string[] = [];
  for (const name of ofPlan) {
    const why = leftOut.includes(name)
      ? 'this run did not draw it, so it may be out of date'
      : made.has(name)
        ? undefined
        : 'this plan no longer makes this file';
    if (why === undefined) continue;
    const path = join(folder, name);
    if (remove) await rm(path);
    told.push(remove ? `${path}: removed; ${why}` : `${path}: ${why}; add --tidy to remove it`);
  }
  return told;
};

const isFileOf = async (
  plan: string,
  pdfs: ReadonlySet<string>,
  folder: string,
  name: string,
): Promise<boolean> => {
  if (!['.svg', '.dxf', '.pdf'].includes(extname(name))) return false;
  // What cannot be read is no file that could be known.
  const { mark } = await markedFile(join(folder, name)).catch(() => ({ mark: undefined }));
  if (mark === undefined) return false;
  return isOfPlan(mark, plan, name) || (mark === CREATOR && pdfs.has(name));
};
