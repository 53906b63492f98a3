import { refuseOptions } from '../../files/failure.ts';
import type { JointBoard } from '../../joint/joint.ts';
import { SHEET_KINDS, type SheetKind, type SheetOptions } from '../../project/sheetsOf.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { optionReader } from './optionReader.ts';
import { type PaperOptions, readPaperOptions } from './paperOptions.ts';

/** The options of `draw` beside those of a corner, as typed. */
export interface DrawOptions extends PaperOptions {
  readonly out: string;
  readonly as: string;
  readonly flat?: boolean;
  readonly boards?: string;
  readonly rods?: boolean;
  readonly sheets?: string;
  readonly printer?: string;
  readonly send?: string;
  readonly force?: boolean;
  readonly tidy?: boolean;
}

const FILE_KINDS = ['pdf', 'svg', 'dxf'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

export interface DrawWish extends Required<Omit<SheetOptions, 'correction' | 'kinds'>> {
  readonly sheetKinds: readonly SheetKind[];
  readonly kinds: ReadonlySet<FileKind>;
}

/**
 * The options of `draw`, bare numbers in `units`. Throws a Failure with every complaint.
 * @param guides whether there are guides to draw
 */
export const readDrawOptions = (options: DrawOptions, units: Notation, guides: boolean): DrawWish => {
  const read = optionReader(options, unitOf(units));
  const kinds = new Set<FileKind>();
  for (const typed of options.as.split(',').map((part) => part.trim().toLowerCase())) {
    const kind = FILE_KINDS.find((each) => each === typed);
    if (kind !== undefined) kinds.add(kind);
    else
      read.complain({
        at: ['as'],
        says: say`${quote(typed)} is no kind of file; it must be pdf, svg or dxf, or several of them`,
        hint: say`pdf,svg`,
      });
  }
  if (options.send !== undefined && kinds.size > 0 && !kinds.has('pdf'))
    read.complain({
      at: ['send'],
      says: say`only a PDF goes to a queue; it must be among --as`,
      hint: say`--as pdf,svg`,
    });
  if (options.sheets !== undefined && kinds.size > 0 && !kinds.has('pdf'))
    read.complain({
      at: ['sheets'],
      says: say`sheets are printed from a PDF; it must be among --as`,
      hint: say`--as pdf,svg`,
    });
  if (kinds.has('dxf') && !guides)
    read.complain({
      at: ['as'],
      says: say`dxf is for guides to be cut by machine, and there are none without a cutter and a bush`,
      hint: say`--cutter-diameter 12.7 --cutter-angle 8 --cutter-length 20 --bush 16`,
    });
  const printed = readPaperOptions(read);
  const board = read.value('boards', parseBoard);
  const sheetKinds = read.value('sheets', parseSheetKinds) ?? SHEET_KINDS;
  if (read.complaints.length > 0 || printed === undefined) return refuseOptions(read.complaints, units);
  return {
    kinds,
    sheetKinds,
    ...printed,
    choice: {
      boards: board === undefined ? ['tail', 'pin'] : [board],
      flat: options.flat === true,
      rods: options.rods === true,
    },
  };
};

const parseBoard = (typed: string): Result<JointBoard> =>
  typed === 'tail' || typed === 'pin'
    ? accept(typed)
    : refuse({ at: [], says: say`${quote(typed)} is neither of a corner's boards; it must be tail or pin` });

const parseSheetKinds = (typed: string): Result<SheetKind[]> => {
  const names = typed.split(',').map((name) => name.trim().toLowerCase());
  const wrong = names.find((name) => !SHEET_KINDS.some((kind) => kind === name));
  if (wrong !== undefined)
    return refuse({
      at: [],
      says: say`${quote(wrong)} is no kind of sheet; the kinds are ${SHEET_KINDS.join(', ')}`,
      hint: say`templates,bench`,
    });
  return names.includes('contents') && !names.includes('templates')
    ? refuse({
        at: [],
        says: say`the contents list the templates, which are not among the sheets chosen`,
        hint: say`templates,contents`,
      })
    : accept(SHEET_KINDS.filter((kind) => names.includes(kind)));
};
