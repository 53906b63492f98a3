import { type Block, beside, paragraph, type TextRun } from './block.ts';

/** A column of a table, in mm from the table's left. */
export interface Column {
  readonly left: number;
  readonly width: number;
  readonly anchor: 'start' | 'end';
}

/** Between two columns. */
const GAP = 2.5;

/** Columns that share a width; the first is set against its left side, the others against their right. */
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

/** One row of a table: every cell in its column, its first line level with the others' if none is larger than `strut`. */
export const tableRow = (
  columns: readonly Column[],
  cells: readonly (readonly TextRun[])[],
  strut: number,
): Block =>
  beside(
    columns.map(({ left, width, anchor }, i) => [left, paragraph(cells[i] ?? [], width, { anchor, strut })]),
  );
