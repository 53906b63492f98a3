import { letteredBoards, type Part, partWords, workedOn } from '../../drawer/partsList.ts';
import { formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';
import { type Block, paragraph, rule, stack, type TextRun } from '../typeset/block.ts';
import { type Column, columnsOf, tableRow } from '../typeset/tableRow.ts';
import type { TypeSizes } from '../typeset/typeSizes.ts';
import { figure } from '../typeset/typeSizes.ts';

/** Shares of the width: quantity and name of a part, then its measures. */
const SHARES = [19, 21, 21, 21, 18];
const HEADINGS = ['rough length', 'length', 'width', 'thickness'];

/** A drawer's parts: a row of large numbers for each, and below it the wood and the work on it. */
export const benchParts = (
  parts: readonly Part[],
  unit: Notation,
  type: TypeSizes,
  width: number,
): Block[] => {
  const columns = columnsOf(SHARES, width);
  const title: TextRun = { text: `Parts, ${unitOf(unit)}`, size: type.heading, weight: 'bold' };
  const heading = tableRow(
    columns,
    [[title], ...HEADINGS.map((text): TextRun[] => [{ text, size: type.note, weight: 'regular' }])],
    type.heading,
  );
  return parts.map((part, i) =>
    stack([
      ...(i === 0 ? [heading] : []),
      rule(width, 0.8),
      measuresRow(part, unit, type, columns),
      paragraph([{ text: notesOf(part, unit).join('; '), size: type.note, weight: 'regular' }], width),
    ]),
  );
};

const measuresRow = (
  { count, roughLength, length, width, thickness, ...part }: Part,
  unit: Notation,
  type: TypeSizes,
  columns: readonly Column[],
): Block => {
  const measures = [roughLength, length, width, thickness].map((value, i) =>
    figure(formatNumber(value, unit), type, i === 0 ? 'regular' : 'bold'),
  );
  const name: TextRun[] = [
    { text: String(count), size: type.figure, weight: 'bold' },
    { text: count === 1 ? partWords(part) : `${partWords(part)}s`, size: type.heading, weight: 'regular' },
  ];
  return tableRow(columns, [name, ...measures], type.figure);
};

const notesOf = ({ species, grain, ...part }: Part, unit: Notation): string[] => [
  ...(species === undefined ? [] : [species]),
  ...(letteredBoards(part).length === 0 ? [] : [`from ${letteredBoards(part).join(', ')}`]),
  `grain ${grain}`,
  ...workedOn(part).map((phrase) => speak(phrase, unit)),
];
