import { accept, type Result } from '../complaint.ts';
import type { Correction } from '../paper/correction.ts';
import { type Layout, layPages, type Sheets } from '../paper/sheets.ts';
import type { Paper } from '../paper/sizes.ts';
import { cornerPieces, type PieceChoice } from './corner.ts';
import { cornersOf, type TemplateWork } from './corners.ts';
import type { TemplatePiece } from './wrap.ts';

/** How a set's sheets are to be printed. */
export interface SheetWish {
  readonly title: string;
  readonly paper: Paper;
  /** What the printer leaves blank at each edge. */
  readonly margin: number;
  readonly choice: PieceChoice;
  readonly correction?: Correction;
}

/** Sheets that are printed together. */
export interface SheetSet {
  readonly name: 'templates' | 'bench' | 'comparison';
  readonly sheets: Sheets;
}

/** Every template of a set, equal ones once. */
export const setPieces = (work: TemplateWork, choice: PieceChoice): TemplatePiece[] =>
  cornersOf(work).flatMap((corner) => cornerPieces(corner, choice));

/**
 * Everything to print for a set.
 * @returns complaints about the paper or the margin
 */
export const documents = (
  work: TemplateWork,
  pieces: readonly TemplatePiece[],
  wish: SheetWish,
): Result<SheetSet[]> => {
  const layout = ({ leading, pieces: laid }: Pick<Layout, 'leading' | 'pieces'>): Layout => ({
    planName: wish.title,
    unit: work.units,
    paper: wish.paper,
    margin: wish.margin,
    leading,
    pieces: laid,
    ...(wish.correction && { correction: wish.correction }),
  });
  const templates = layPages(layout({ leading: () => [], pieces }));
  if (!templates.ok) return templates;
  return accept([{ name: 'templates', sheets: templates.value }]);
};
