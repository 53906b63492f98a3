import { type Complaint, type Result, under } from '../complaint.ts';
import { refuseOptions } from '../files/failure.ts';
import { DEFAULT_MARGIN } from '../paper/printable.ts';
import { type Paper, parsePaper } from '../paper/sizes.ts';
import type { PieceChoice } from '../template/corner.ts';
import { parseLength, quote, type Unit } from '../units/length.ts';
import { say } from '../units/phrase.ts';

/** The options of `draw` beside those of a corner, as typed. */
export interface DrawOptions {
  readonly out: string;
  readonly as: string;
  readonly paper?: string;
  readonly margin?: string;
  readonly flat?: boolean;
  readonly boards?: string;
  readonly rods?: boolean;
}

export type FileKind = 'pdf' | 'svg';

export interface DrawWish {
  readonly kinds: ReadonlySet<FileKind>;
  readonly paper: Paper;
  readonly margin: number;
  readonly choice: PieceChoice;
}

/** Reads what is typed, in the unit that the maker reads in. Throws a Failure with all that is wrong. */
export const readDrawOptions = (options: DrawOptions, units: Unit): DrawWish => {
  const complaints: Complaint[] = [];
  const value = <T>(key: string, parsed: Result<T>): T | undefined => {
    if (parsed.ok) return parsed.value;
    complaints.push(...under([key], parsed.complaints));
    return undefined;
  };
  const kinds = new Set<FileKind>();
  for (const kind of options.as.split(',').map((part) => part.trim().toLowerCase()))
    if (kind === 'pdf' || kind === 'svg') kinds.add(kind);
    else
      complaints.push({
        at: ['as'],
        says: say`${quote(kind)} is no kind of file; it must be pdf or svg, or both`,
        hint: say`pdf,svg`,
      });
  const paper = value('paper', parsePaper(options.paper ?? (units === 'in' ? 'Letter' : 'A4')));
  const margin =
    options.margin === undefined ? DEFAULT_MARGIN : value('margin', parseLength(options.margin, units));
  const { boards } = options;
  if (boards !== undefined && boards !== 'tail' && boards !== 'pin')
    complaints.push({
      at: ['boards'],
      says: say`${quote(boards)} is neither of a corner's boards; it must be tail or pin`,
    });
  if (complaints.length > 0 || paper === undefined || margin === undefined)
    return refuseOptions(complaints, units);
  return {
    kinds,
    paper,
    margin,
    choice: {
      boards: boards === 'tail' || boards === 'pin' ? [boards] : ['tail', 'pin'],
      flat: options.flat === true,
      rods: options.rods === true,
    },
  };
};
