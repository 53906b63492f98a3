import { readdir, rm } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { markedFile } from '../../files/guardOverwrite.ts';
import { pdfName, pdfNames, pieceFileNames } from '../../project/fileNames.ts';
import type { Project } from '../../project/project.ts';
import { SHEET_KINDS } from '../../project/sheetsOf.ts';
import { CREATOR, isOfPlan } from '../../render/mark.ts';

/** A file in a plan's name that is no longer of use to it. */
interface OldFile {
  readonly path: string;
  readonly why: string;
}

/**
 * Finds the old files of a plan in a folder: those that the plan does not make, however it is drawn, and the PDFs that were
 * left out this time. A piece or a guide carries the plan's name in its mark; a PDF has it in its file's name.
 * @param leftOut names of PDFs that the plan makes, and this run did not
 */
export const oldFilesOf = async (
  project: Project,
  folder: string,
  leftOut: readonly string[],
): Promise<OldFile[]> => {
  const pdfs = new Set([...SHEET_KINDS.map((kind) => pdfName(project.name, kind)), ...leftOut]);
  const ofPlan: string[] = [];
  for (const name of (await readdir(folder)).sort())
    if (await isFileOf(project.name, pdfs, folder, name)) ofPlan.push(name);
  // A large set makes so many pieces that their names are not listed for nothing.
  const hasPieces = ofPlan.some((name) => !pdfs.has(name));
  const made = new Set([...pdfNames(project), ...(hasPieces ? pieceFileNames(project) : [])]);
  return ofPlan.flatMap((name) => {
    const path = join(folder, name);
    if (leftOut.includes(name)) return [{ path, why: 'this run did not draw it, so it may be out of date' }];
    return made.has(name) ? [] : [{ path, why: 'this plan does not make this file, or no longer' }];
  });
};

/**
 * Removes old files of a plan where that is asked for, unless other plans have its name: the files may be theirs.
 * @returns what to say of each
 */
export const tidyFiles = async (
  old: readonly OldFile[],
  namesakes: readonly string[],
  remove: boolean,
): Promise<string[]> => {
  if (namesakes.length > 0)
    return old.map(({ path, why }) => `${path}: kept, as it may be of ${namesakes.join(', ')}; ${why}`);
  if (remove) for (const { path } of old) await rm(path);
  return old.map(({ path, why }) =>
    remove
      ? `${path}: removed; ${why}`
      : `${path}: ${why}; add --tidy to remove it, unless another plan of this name made it`,
  );
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
