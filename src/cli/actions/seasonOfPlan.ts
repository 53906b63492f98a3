import { join } from 'node:path';
import { madeOf } from '../../drawer/drawer.ts';
import { drawerSeason } from '../../drawer/drawerSeason.ts';
import { Failure, refuseOptions, WRONG_INPUT } from '../../files/failure.ts';
import { guardOverwrite } from '../../files/guardOverwrite.ts';
import { writePdf, writeSvg } from '../../files/writeDrawn.ts';
import type { Project } from '../../project/project.ts';
import { seasonSheets } from '../../project/seasonSheets.ts';
import { printJson } from '../../render/json.ts';
import { PICTURE_MARK } from '../../render/mark.ts';
import { fileStem, stems } from '../../sheets/fileStem.ts';
import { gapDrawing } from '../../sheets/gapSheets.ts';
import { unitOf } from '../../units/notation.ts';
import type { SeasonOptions } from '../commands/season.ts';
import { loadProject } from '../loadProject.ts';
import { optionReader } from '../options/optionReader.ts';
import { readPaperOptions } from '../options/paperOptions.ts';
import { seasonRecord } from '../report/seasonRecord.ts';
import { seasonText } from '../report/seasonText.ts';

/** Prints how a plan's drawers move through the year, and draws it with --out. Throws a Failure with every complaint. */
export const seasonOfPlan = async (plan: string, options: SeasonOptions): Promise<void> => {
  const project = await loadProject(plan, { ...options, draws: options.out !== undefined });
  const { climate, set, units } = project;
  if (climate === undefined)
    throw new Failure(
      [
        `${plan}: this plan has no climate to say how its wood moves; try climate: {making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}`,
      ],
      WRONG_INPUT,
    );
  const drawers = madeOf(set).flatMap((drawer) => {
    const season = drawerSeason(drawer);
    return season === undefined ? [] : [{ drawer, season }];
  });
  if (drawers.length === 0)
    throw new Failure([`${plan}: there are no drawers in this plan, so nothing that moves`], WRONG_INPUT);
  const drawn = options.out === undefined ? [] : await drawPictures(project, options, options.out);
  process.stdout.write(
    options.json
      ? printJson(seasonRecord(climate, drawers, set.advice, units))
      : `${[...seasonText(climate, drawers, set.advice, units), ...drawn].join('\n')}\n`,
  );
};

/** Each drawer's picture as SVG, and all of them on pages. */
const drawPictures = async (project: Project, options: SeasonOptions, folder: string): Promise<string[]> => {
  const { name: title, units, set } = project;
  const read = optionReader(options, unitOf(units));
  const printed = readPaperOptions(read);
  if (printed === undefined) return refuseOptions(read.complaints, units);
  const stem = stems();
  const pictures = madeOf(set).flatMap((drawer) => {
    const drawing = gapDrawing(drawer, units);
    const { name } = drawer.spec;
    return drawing === undefined ? [] : [{ name, drawing, path: join(folder, `${stem(name)}-season.svg`) }];
  });
  if (pictures.length === 0)
    return ['', 'No drawer of this plan has an opening, so there is no gap to draw.'];
  const sheets = seasonSheets(project, printed);
  if (!sheets.ok) return refuseOptions(sheets.complaints, units);
  const pdf = join(folder, `${fileStem(title)}-season.pdf`);
  await guardOverwrite([pdf, ...pictures.map(({ path }) => path)], options.force === true);
  await writePdf(pdf, `${title}: season`, sheets.value.pages());
  for (const { name, drawing, path } of pictures)
    await writeSvg(path, drawing, {
      title: `${name}, gap through the year`,
      description: PICTURE_MARK,
    });
  return [
    '',
    `${pdf}: the gaps through the year`,
    `${folder}: ${pictures.length} of them as SVG, one a file`,
  ];
};
