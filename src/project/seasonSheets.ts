import { madeOf } from '../drawer/drawer.ts';
import { layPages, type Sheets } from '../paper/sheets.ts';
import { gapSheets } from '../sheets/gapSheets.ts';
import type { Result } from '../units/complaint.ts';
import type { Project } from './project.ts';
import { asLeading, layoutOf } from './sheetLayout.ts';
import type { SheetOptions } from './sheetsOf.ts';

/** The sheets of gaps through the year alone. */
export const seasonSheets = (project: Project, options: SheetOptions): Result<Sheets> => {
  const { name: title, units, set } = project;
  return layPages(
    layoutOf(
      project,
      options,
      asLeading((area) => gapSheets(madeOf(set), { title, units, area })),
    ),
  );
};
