import type { Part } from '../../drawer/partsList.ts';
import { csv } from '../../render/csv.ts';
import { decimalLength } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { speak } from '../../units/phrase.ts';

/** Each column's title, and whether it is a length; before them whose the part is. */
const HEADING = [
  ['part', false],
  ['count', false],
  ['length', true],
  ['width', true],
  ['thickness', true],
  ['rough length', true],
  ['species', false],
  ['grain', false],
  ['worked', false],
] as const;

/**
 * A parts list for a spreadsheet, one part a line.
 * @example
 * ```ts
 * writeFileSync('parts.csv', partsCsv(parts(project.set, 'in'), 'in'));
 * ```
 */
export const partsCsv = (rows: readonly Part[], units: Notation): string =>
  csv([
    [
      rows.some(({ box }) => box) ? 'drawer or box' : 'drawer',
      ...HEADING.map(([title, isLength]) => `${title}${isLength ? ` ${unitOf(units)}` : ''}`),
      ...(rows.some(({ boards }) => boards) ? ['boards', 'letters'] : []),
    ],
    ...rows.map((row) => cells(row, units)),
  ]);

const cells = (part: Part, units: Notation): string[] => [
  part.drawer,
  part.part,
  String(part.count),
  ...[part.length, part.width, part.thickness, part.roughLength].map((value) => decimalLength(value, units)),
  part.species ?? '',
  part.grain,
  part.worked.map((phrase) => speak(phrase, units)).join('; '),
  ...(part.boards ? [part.boards, part.letters?.flat() ?? []].map((names) => names.join(', ')) : []),
];
