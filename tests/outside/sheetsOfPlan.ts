import { loadProject } from '../../src/cli/loadProject.ts';
import type { PrintPage } from '../../src/drawing/printPage.ts';
import { parsePaper } from '../../src/paper/paperSizes.ts';
import type { PrinterError } from '../../src/paper/printerCorrection.ts';
import { sheetsOf } from '../../src/project/sheetsOf.ts';
import { value } from '../value.ts';

/** How a plan is to be printed. */
export interface Wish {
  readonly paper: string;
  readonly margin: number;
  readonly units: 'mm' | 'in';
  readonly flat: boolean;
  readonly rods: boolean;
  readonly error?: PrinterError;
}

/** Every page that the program makes of a plan, kind after kind. Throws where the plan, or the paper, is refused. */
export const sheetsOfPlan = async (
  file: string,
  { paper: name, margin, units, flat, rods, error }: Wish,
): Promise<PrintPage[]> => {
  const project = await loadProject(file, { units });
  const sheets = sheetsOf(project, {
    paper: value(parsePaper(name)),
    margin,
    choice: { boards: ['tail', 'pin'], flat, rods },
    ...(error && { correction: { printer: 'office', error } }),
  });
  // A page draws what is placed on it anew each time that it is asked.
  return value(sheets)
    .flatMap((set) => [...set.pages()])
    .map((page) => ({ ...page, placed: page.placed.map(({ drawing, at }) => ({ drawing, at })) }));
};
