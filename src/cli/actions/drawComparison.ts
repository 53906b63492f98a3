import { join } from 'node:path';
import { refuseOptions } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { writePdf } from '../../files/writeDrawn.ts';
import { pdfName } from '../../project/fileNames.ts';
import { type ComparedSet, comparisonSheets } from '../../project/sheetsOf.ts';
import { unitOf } from '../../units/notation.ts';
import type { CompareOptions } from '../commands/compare.ts';
import { optionReader } from '../options/optionReader.ts';
import { readPaperOptions } from '../options/paperOptions.ts';

/** Writes the comparison sheet into a folder. @returns what to say of it */
export const drawComparison = async (
  comparison: ComparedSet,
  options: CompareOptions,
  folder: string,
): Promise<string[]> => {
  const { name, units } = comparison;
  const read = optionReader(options, unitOf(units));
  const printed = readPaperOptions(read);
  if (printed === undefined) return refuseOptions(read.complaints, units);
  const sheets = comparisonSheets(comparison, printed);
  if (!sheets.ok) return refuseOptions(sheets.complaints, units);
  const path = join(folder, pdfName(name, 'comparison'));
  await guardOverwrite([path], options.force === true);
  await writePdf(path, `${name}: comparison`, sheets.value.pages());
  return ['', `${path}: the set as it will be seen`];
};
