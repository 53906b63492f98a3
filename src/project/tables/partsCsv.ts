import type { FramePart } from '../../drawer/arrangement/frameParts.ts';
import { ALONG, drawerOf, type Part, partWords, workedOn } from '../../drawer/partsList.ts';
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
 * A parts list for a spreadsheet, one part a line; those of a cabinet's frame last, which belong to no drawer.
 * @example
 * ```ts
 * writeFileSync('parts.csv', partsCsv(parts(project.set, 'in'), 'in'));
 * ```
 */
export const partsCsv = (rows: readonly Part[], units: Notation, frame: readonly FramePart[] = []): string =>
  csv([
    [
      rows.some(({ box }) => box) ? 'drawer or box' : 'drawer',
      ...HEADING.map(([title, isLength]) => `${title}${isLength ? ` ${unitOf(units)}` : ''}`),
      ...(rows.some(({ boards }) => boards) ? ['boards', 'letters'] : []),
    ],
    ...rows.map((row) => cells(row, units)),
    ...frame.map((row) => [
      ...cells({ ...row, drawer: '', grain: ALONG, worked: [] }, units),
      ...(rows.some(({ boards }) => boards) ? ['', ''] : []),
    ]),
  ]);

/** A row of the table; a frame's has no drawer. */
type Row = Omit<Part, 'part'> & { readonly part: Part['part'] | FramePart['part'] };

const cells = (part: Row, units: Notation): string[] => [
  drawerOf(part),
  partWords(part),
  String(part.count),
  ...[part.length, part.width, part.thickness, part.roughLength].map((value) => decimalLength(value, units)),
  part.species ?? '',
  part.grain,
  workedOn(part)
    .map((phrase) => speak(phrase, units))
    .join('; '),
  ...(part.boards ? [part.boards, part.letters?.flat() ?? []].map((names) => names.join(', ')) : []),
];
