import { type CuttingGroup, type CuttingRow, listedText, partNames } from '../drawer/cuttingList.ts';
import type { Drawing } from '../drawing/drawing.ts';
import type { Size } from '../paper/printable.ts';
import type { Sawing } from '../stock/usualSawing.ts';
import { formatLength, formatNumber, formatVolume } from '../units/formatLength.ts';
import { type Notation, unitWords } from '../units/notation.ts';
import { type Block, paragraph, rule, stack, type TextRun } from './typeset/block.ts';
import { flow } from './typeset/flow.ts';
import { type Column, columnsOf, tableRow } from './typeset/tableRow.ts';
import { figure, typeSizes } from './typeset/typeSizes.ts';

const TYPE = typeSizes(1);

/** Shares of the width: quantity, rough length, rough width, and the parts. */
const SHARES = [11, 17, 17, 55];
const HEADINGS = ['quantity', 'rough length', 'rough width', 'parts'];

export interface CuttingListOptions {
  readonly title: string;
  readonly saw: Pick<Sawing, 'edge' | 'face'>;
  readonly units: Notation;
  readonly area: Size;
}

/** The cutting list of a set: what is sawn from boards of each stock, and how much wood that is. */
export const cuttingListSheets = (
  groups: readonly CuttingGroup[],
  { title, saw, units, area }: CuttingListOptions,
): readonly Drawing[] => {
  const { width } = area;
  const head = paragraph(
    [{ text: `${title}: cutting list`, size: TYPE.title * 0.75, weight: 'bold' }],
    width,
  );
  return flow(
    {
      head: [stack([head, paragraph([regular(saidOfSizes(saw, units))], width)], 1.5), head],
      wide: groups.map((group) => groupRows(group, units, width)),
      narrow: [],
      columns: 1,
      gap: 4,
    },
    area,
  ).draw();
};

const regular = (text: string, size = TYPE.note): TextRun => ({ text, size, weight: 'regular' });

/** What is in the rough sizes beyond the finished ones. */
const saidOfSizes = ({ edge, face }: Pick<Sawing, 'edge' | 'face'>, units: Notation): string => {
  const length = (value: number) => formatLength(value, units).replaceAll(' ', '\u00A0');
  return `In ${unitWords(units)}, to saw to before planing: the rough length has the spare for a trial joint; the rough width has ${length(edge)} on each long edge, and a board ${length(face)} on each face, to plane off. Grain along the length.`;
};

const groupRows = (group: CuttingGroup, units: Notation, width: number): Block[] => {
  const columns = lastLeft(columnsOf(SHARES, width));
  const heading = stack([
    paragraph([{ text: titleOf(group), size: TYPE.heading, weight: 'bold' }], width),
    paragraph([regular(amountOf(group, units), TYPE.text)], width),
    tableRow(
      columns,
      HEADINGS.map((text) => [regular(text)]),
      TYPE.note,
    ),
  ]);
  return group.rows.map((row, i) =>
    stack([...(i === 0 ? [heading] : []), rule(width, 0.8), sizeRow(row, units, columns)]),
  );
};

/** Words in the last column are read from the left. */
const lastLeft = (columns: readonly Column[]): Column[] =>
  columns.map((column, i) => (i === columns.length - 1 ? { ...column, anchor: 'start' } : column));

/** `Fronts: Cherry, black`. */
const titleOf = (group: CuttingGroup): string => {
  const names = partNames(group);
  const title = `${names[0]?.toUpperCase()}${names.slice(1)}`;
  return group.species === undefined ? title : `${title}: ${group.species}`;
};

const amountOf = ({ thickness, roughThickness, count, volume }: CuttingGroup, units: Notation): string =>
  `${formatLength(thickness, units)} when finished, of boards at least ${formatLength(roughThickness, units)} thick; ${count} in all, ${formatVolume(volume, units)}`;

const sizeRow = (
  { count, roughLength, roughWidth, parts }: CuttingRow,
  units: Notation,
  columns: readonly Column[],
): Block =>
  tableRow(
    columns,
    [
      figure(String(count), TYPE),
      figure(formatNumber(roughLength, units), TYPE),
      figure(formatNumber(roughWidth, units), TYPE),
      [regular(listedText(parts), TYPE.text)],
    ],
    TYPE.figure,
  );
