import { join } from 'node:path';
import { plankName } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import { refuseOptions } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { writePdf, writeSvg } from '../../files/writeDrawn.ts';
import type { Project } from '../../project/project.ts';
import { boardSheets } from '../../project/sheetsOf.ts';
import { PICTURE_MARK } from '../../render/mark.ts';
import { boardSheetDrawing } from '../../sheets/boards/boardSheet.ts';
import { boardViews } from '../../sheets/boards/boardView.ts';
import { fileStem, stems } from '../../sheets/fileStem.ts';
import { unitOf } from '../../units/notation.ts';
import { optionReader } from '../options/optionReader.ts';
import { type PaperOptions, readPaperOptions } from '../options/paperOptions.ts';

/** Where board sheets are written, as typed. */
export interface BoardSheetFiles extends PaperOptions {
  readonly force?: boolean;
}

/** Width of a board's sheet as SVG, mm. */
const WIDTH = 190;

/** Writes the board sheets into a folder: all of them as one PDF, each board as SVG. @returns what to say of them */
export const drawBoardSheets = async (
  project: Project,
  broken: BrokenOut,
  options: BoardSheetFiles,
  folder: string,
): Promise<string[]> => {
  const { name: title, units, sawing } = project;
  const { planks } = broken;
  const read = optionReader(options, unitOf(units));
  const printed = readPaperOptions(read);
  if (printed === undefined) return refuseOptions(read.complaints, units);
  const sheets = boardSheets(project, broken, printed);
  if (!sheets.ok) return refuseOptions(sheets.complaints, units);
  const pdf = join(folder, `${fileStem(title)}-board-sheets.pdf`);
  const stem = stems();
  const pictures = boardViews(broken, sawing).map((view) => {
    const name = plankName(view.plank, planks);
    return { view, name, path: join(folder, `${stem(name)}-board.svg`) };
  });
  await guardOverwrite([pdf, ...pictures.map(({ path }) => path)], options.force === true);
  await writePdf(pdf, `${title}: board sheets`, sheets.value.pages());
  for (const { view, name, path } of pictures)
    await writeSvg(
      path,
      boardSheetDrawing(view, { title, planks, units, area: { width: WIDTH, height: WIDTH } }),
      {
        title: `${name}, board sheet`,
        description: PICTURE_MARK,
      },
    );
  return ['', `${pdf}: the board sheets`, `${folder}: ${pictures.length} of them as SVG, one a file`];
};
