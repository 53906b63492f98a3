import { type Block, beside, paragraph, type TextRun } from './block.ts';

/** A column of a table, mm; `left` from the table's left. */
export interface Column {
  readonly left: number;
  readonly width: number;
  readonly anchor: 'start' | 'end';
}

/** Gap between two columns, mm. */
const GAP = 2.5;

/** Columns that share a width; the first is aligned left, the others right. */
export const columnsOf = (shares: readonly number[], width: number): Column[] => {
  const total = shares.reduce((sum, share) => sum + share, 0);
  const room = width - (shares.length - 1) * GAP;
  let left = 0;
  return shares.map((share, i) => {
    const column: Column = { left, width: (share / total) * room, anchor: i === 0 ? 'start' : 'end' };
    left += column.width + GAP;
    return column;
  });
};

/** One row of a table, the cells' first lines level with each other if none is larger than `strut`, mm. */
export const tableRow = (
  columns: readonly Column[],
  cells: readonly (readonly TextRun[])[],
  strut: number,
): Block =>
  beside(
    columns.map(({ left, width, anchor }, i) => [left, paragraph(cells[i] ?? [], width, { anchor, strut })]),
  );
