import type { Correction } from '../paper/correction.ts';
import type { Piece } from '../paper/piece.ts';
import type { Layout, LeadingPages } from '../paper/sheets.ts';
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
  readonly correction?: Correction;
}

/** Sheets that are printed together. */
export interface SetLayout {
  readonly name: 'templates' | 'guides' | 'bench' | 'comparison';
  readonly layout: Layout;
}

/** Every template of a set, equal ones once. */
export const setPieces = (work: TemplateWork, choice: PieceChoice): TemplatePiece[] =>
  cornersOf(work).flatMap((corner) => cornerPieces(corner, choice));

/** Everything to print for a set, each kind of sheet by itself. */
export const setLayouts = (
  work: TemplateWork,
  pieces: readonly TemplatePiece[],
  guides: readonly Piece[],
  { title, paper, margin, correction }: SheetWish,
): SetLayout[] => {
  const layout = (leading: LeadingPages, laid: readonly Piece[]): Layout => ({
    planName: title,
    unit: work.units,
    paper,
    margin,
    leading,
    pieces: laid,
    ...(correction && { correction }),
  });
  return [
    { name: 'templates', layout: layout(() => [], pieces) },
    ...(guides.length > 0 ? [{ name: 'guides' as const, layout: layout(() => [], guides) }] : []),
  ];
};
