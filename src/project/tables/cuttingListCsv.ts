import { type CuttingGroup, listedText } from '../../drawer/cuttingList.ts';
import { csv } from '../../render/csv.ts';
import { decimalLength } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';

const LENGTHS = ['rough length', 'rough width', 'rough thickness', 'thickness'];

/** A cutting list for a spreadsheet, one size a line. */
export const cuttingListCsv = (groups: readonly CuttingGroup[], units: Notation): string =>
  csv([
    ['stock', 'species', 'count', ...LENGTHS.map((title) => `${title} ${unitOf(units)}`), 'parts'],
    ...groups.flatMap(({ rows }) =>
      rows.map((row) => [
        row.stock,
        row.species ?? '',
        String(row.count),
        ...[row.roughLength, row.roughWidth, row.roughThickness, row.thickness].map((value) =>
          decimalLength(value, units),
        ),
        listedText(row.parts),
      ]),
    ),
  ]);
