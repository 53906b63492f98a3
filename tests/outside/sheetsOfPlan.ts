import { loadWork } from '../../src/cli/work.ts';
import type { Page } from '../../src/drawing/page.ts';
import type { PrinterError } from '../../src/paper/correction.ts';
import { layPages } from '../../src/paper/sheets.ts';
import { parsePaper } from '../../src/paper/sizes.ts';
import { guidePiece } from '../../src/template/drawGuide.ts';
import { setGuides } from '../../src/template/setGuides.ts';
import { setLayouts, setPieces } from '../../src/template/setLayouts.ts';
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
): Promise<Page[]> => {
  const loaded = await loadWork(file, { units });
  const { title, set, joints } = loaded;
  const corners = { drawers: set.drawers, joints, units };
  const guides = setGuides(corners, loaded.cuts).map(({ guide, titles }) => guidePiece(guide, titles));
  const work = { ...corners, guides, cuts: loaded.cuts, ...(set.family && { family: set.family }) };
  const pieces = setPieces(work, { boards: ['tail', 'pin'], flat, rods });
  const paper = value(parsePaper(name));
  const layouts = setLayouts(work, pieces, {
    title,
    paper: paper,
    margin,
    ...(error && { correction: { printer: 'office', error } }),
  });
  return layouts.flatMap(({ layout }) => {
    const sheets = value(layPages(layout));
    return [...sheets.pages()];
  });
};
