import { join } from 'node:path';
import { plankName } from '../../drawer/blanks/blankWords.ts';
import type { BrokenOut } from '../../drawer/blanks/brokenOut.ts';
import { Failure, PARTS_MISSING, refuseOptions, WRONG_INPUT } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import type { Project } from '../../project/project.ts';
import { printJson } from '../../render/json.ts';
import { PICTURE_MARK } from '../../render/mark.ts';
import { fileStem, stems } from '../../sheets/fileStem.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { BreakoutOptions } from '../commands/breakoutOfPlan.ts';
import { loadProject } from '../loadProject.ts';
import { optionReader } from '../options/optionReader.ts';
import { readPaperOptions } from '../options/paperOptions.ts';

/** Prints which part comes out of which board, and draws the boards with --out. Throws a Failure where some parts are left out. */
export const breakOutBoards = async (plan: string, options: BreakoutOptions): Promise<void> => {
  const project = await loadProject(plan, options);
  const { units, work, sawing } = project;
  const read = optionReader(options, 'mm');
  const effort = read.value('effort', parseEffort, '1');
  if (effort === undefined) return refuseOptions(read.complaints, units);
  if (work === undefined)
    throw new Failure(
      [
        `${plan}: this plan lists no boards for drawers, so there is nothing to saw them from; list them under boards:`,
      ],
      WRONG_INPUT,
    );
  const [{ brokenOut }, { missingSentences }, { breakoutText }] = await Promise.all([
    import('../../drawer/blanks/brokenOut.ts'),
    import('../../drawer/blanks/breakoutWords.ts'),
    import('../report/breakoutText.ts'),
  ]);
  const broken = brokenOut(work, sawing, { effort, ...progress() });
  // Drawing is loaded only with --out.
  const drawn = options.out === undefined ? [] : await drawBoardSheets(project, broken, options, options.out);
  if (options.json) {
    const { breakoutRecord } = await import('../../project/tables/breakoutRecord.ts');
    process.stdout.write(printJson(breakoutRecord(broken), PLACE_DECIMALS));
  } else if (options.csv) {
    const { breakoutCsv } = await import('../../project/tables/breakoutCsv.ts');
    process.stdout.write(breakoutCsv(broken, units));
  } else process.stdout.write(`${[...breakoutText(broken, sawing, units), ...drawn].join('\n')}\n`);
  if (broken.breakout.missing.length > 0) throw new Failure(missingSentences(broken, units), PARTS_MISSING);
};

/** Places are told as finely as they are sought, so that cuts copied into a plan leave what they left here. */
const PLACE_DECIMALS = 6;

/** Width of a board's sheet as SVG, mm. */
const WIDTH = 190;

/** Writes the board sheets into a folder: all of them as one PDF, each board as SVG. @returns what to say of them */
const drawBoardSheets = async (
  project: Project,
  broken: BrokenOut,
  options: BreakoutOptions,
  folder: string,
): Promise<string[]> => {
  const [{ boardSheets }, { boardSheetDrawing }, { boardViews }, { writePdf, writeSvg }] = await Promise.all([
    import('../../project/boardSheets.ts'),
    import('../../sheets/boards/boardSheet.ts'),
    import('../../sheets/boards/boardView.ts'),
    import('../../files/writeDrawn.ts'),
  ]);
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

/** How far the search is, on one line of a terminal; nothing where nobody looks. */
const progress = () => {
  const { stderr } = process;
  return stderr.isTTY
    ? {
        onProgress: (share: number) => {
          stderr.write(share >= 1 ? '\r\u001B[K' : `\r${Math.round(100 * share)} % searched`);
        },
      }
    : {};
};

const LEAST_EFFORT = 0.1;
const MOST_EFFORT = 100;

const parseEffort = (typed: string): Result<number> => {
  const effort = Number(typed);
  return typed.trim() !== '' && effort >= LEAST_EFFORT && effort <= MOST_EFFORT
    ? accept(effort)
    : refuse({
        at: [],
        says: say`${quote(typed)} is no effort; it must be ${LEAST_EFFORT} to ${MOST_EFFORT} times the usual one`,
        hint: say`2`,
      });
};
