import { cabinetOf } from '../drawer/arrangement/cabinetOf.ts';
import type { BrokenOut } from '../drawer/blanks/brokenOut.ts';
import { layPages, type Sheets } from '../paper/sheets.ts';
import { boardSheet } from '../sheets/boards/boardSheet.ts';
import { boardViews } from '../sheets/boards/boardView.ts';
import { frontsSheet } from '../sheets/boards/frontsSheet.ts';
import type { Result } from '../units/complaint.ts';
import type { Project } from './project.ts';
import { asLeading, layoutOf } from './sheetLayout.ts';
import type { SheetOptions } from './sheetsOf.ts';

/**
 * The board sheets of a project alone: the fronts with the board that each comes from, then a sheet of each board cut into.
 * @returns complaints at `margin` and `paper`
 * @example
 * ```ts
 * const broken = breakOutProject(project, { effort: 0.1 });
 * const sheets = broken && boardSheets(project, broken, { paper });
 * if (sheets?.ok) await renderPdf(sheets.value.pages(), { title: 'Board sheets', fonts }, sink);
 * ```
 */
export const boardSheets = (project: Project, broken: BrokenOut, options: SheetOptions): Result<Sheets> => {
  const { name: title, units, set, sawing } = project;
  return layPages(
    layoutOf(
      project,
      options,
      asLeading((area) => [
        ...frontsSheet(broken, {
          title,
          units,
          area,
          drawers: set.drawers.map(({ spec: { name } }) => name),
          cabinet: cabinetOf(set.drawers),
        }),
        ...boardViews(broken, sawing).flatMap((view) =>
          boardSheet(view, { title, units, area, planks: broken.planks }),
        ),
      ]),
    ),
  );
};
