import { type Paper, parsePaper } from '../../paper/paperSizes.ts';
import { accept, type Result, refuse, under } from '../../units/complaint.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { Unit } from '../../units/unit.ts';
import type { SheetChoice } from './sheetJob.ts';

/** What is printed on. */
export interface Printing {
  readonly paper: Paper;
  /** In mm. */
  readonly margin: number;
}

/** The paper and margin that were typed. */
export const readPrinting = (
  { paper, margin }: Pick<SheetChoice, 'paper' | 'margin'>,
  unit: Unit,
): Result<Printing> => {
  const sheet = parsePaper(paper);
  const edge = parseLength(margin, unit);
  if (sheet.ok && edge.ok) return accept({ paper: sheet.value, margin: edge.value });
  return refuse(
    ...(sheet.ok ? [] : under(['paper'], sheet.complaints)),
    ...(edge.ok ? [] : under(['margin'], edge.complaints)),
  );
};
