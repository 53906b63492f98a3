import { type CuttingGroup, type CuttingRow, listedText, partNames } from '../../drawer/cuttingList.ts';
import { table } from '../../render/table.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import { formatLength, formatNumber, formatVolume } from '../../units/formatLength.ts';
import { type Notation, unitWords } from '../../units/notation.ts';
import { wrapText } from '../../units/wrapText.ts';
import { COLUMNS } from './fitTable.ts';
import { terminalLines } from './jointText.ts';

/** The cutting list, a table for each stock. */
export const cuttingListText = (
  groups: readonly CuttingGroup[],
  { edge, face }: Pick<Sawing, 'edge' | 'face'>,
  units: Notation,
): string[] => [
  ...terminalLines(
    `Lengths in ${unitWords(units)}, to saw to before planing: the rough length has the spare for a trial joint; the rough width has ${formatLength(edge, units)} on each long edge, and a board ${formatLength(face, units)} on each face, to plane off.`,
  ),
  ...groups.flatMap((group) => ['', ...groupText(group, units)]),
];

const groupText = (group: CuttingGroup, units: Notation): string[] => {
  const { species, thickness, roughThickness, count, volume, rows } = group;
  const wood = species === undefined ? '' : ` of ${species}`;
  return [
    ...terminalLines(
      `${partNames(group)}${wood}, ${formatLength(thickness, units)} when finished, of boards at least ${formatLength(roughThickness, units)} thick: ${count} in all, ${formatVolume(volume, units)}`,
    ),
    ...table(
      ['quantity', 'rough length', 'rough width', 'parts'],
      rows.flatMap((row) => {
        const sizes = [
          String(row.count),
          ...[row.roughLength, row.roughWidth].map((size) => formatNumber(size, units)),
        ];
        return wrapText(listedText(row.parts), (line) => line.length <= PARTS_WIDTH).map((line, i) => [
          ...(i === 0 ? sizes : ['', '', '']),
          line,
        ]);
      }),
      [true, true, true, false],
    ),
  ];
};

/** Columns of a terminal beside those of the sizes. */
const PARTS_WIDTH = COLUMNS - 'quantity  rough length  rough width  '.length;

/** A row of the cutting list for another program. */
export const cuttingRecord = ({ species, parts, ...row }: CuttingRow) => ({
  ...row,
  species: species ?? null,
  parts: parts.map(({ drawer, box, ...part }) => ({ ...(box ? { box: drawer } : { drawer }), ...part })),
});
