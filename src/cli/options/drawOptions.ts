import { refuseOptions } from '../../files/failure.ts';
import type { JointBoard } from '../../joint/joint.ts';
import { type Paper, parsePaper } from '../../paper/paperSizes.ts';
import type { Copies } from '../../paper/sheets.ts';
import { guidesOf } from '../../project/guidesOf.ts';
import { chooseOnly, type Only } from '../../project/only.ts';
import { chosenCorners } from '../../project/piecesOf.ts';
import type { Project } from '../../project/project.ts';
import {
  kindsOf,
  SHEET_KINDS,
  type SheetKind,
  type SheetOptions,
  USUAL_SHEETS,
} from '../../project/sheetsOf.ts';
import type { PieceChoice } from '../../sheets/template/cornerPieces.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { commaWords, HAND_SHEETS } from './meaning.ts';
import { optionReader } from './optionReader.ts';
import { type PaperOptions, readPaperOptions } from './paperOptions.ts';

/** The options of `draw` beside those of a corner, as typed. */
export interface DrawOptions extends PaperOptions {
  readonly out: string;
  readonly as: string;
  readonly flat?: boolean;
  readonly boards?: string;
  readonly rods?: boolean;
  readonly only?: string;
  readonly sheets?: string;
  readonly benchPaper?: string;
  readonly copies?: string;
  readonly font?: string;
  readonly printer?: string;
  readonly send?: string;
  readonly force?: boolean;
  readonly tidy?: boolean;
}

const FILE_KINDS = ['pdf', 'svg', 'dxf'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

export interface DrawWish extends Required<Omit<SheetOptions, 'correction' | 'kinds' | 'benchPaper'>> {
  readonly benchPaper?: Paper;
  readonly sheetKinds: readonly SheetKind[];
  readonly kinds: ReadonlySet<FileKind>;
  /** What of the project is drawn; all unless given. */
  readonly only?: Only;
}

/**
 * The options of `draw`, bare numbers in `units`. Throws a Failure with every complaint.
 * @param whole all that can be drawn; what depends on it is not checked where it is not known
 */
export const readDrawOptions = (
  options: DrawOptions,
  units: Notation,
  whole: Project | undefined,
): DrawWish => {
  const read = optionReader(options, unitOf(units));
  const project =
    read.value('only', (typed) => (whole === undefined ? accept(undefined) : chooseOnly(whole, typed))) ??
    whole;
  const kinds = new Set<FileKind>();
  for (const typed of commaWords(options.as)) {
    const kind = FILE_KINDS.find((each) => each === typed);
    if (kind !== undefined) kinds.add(kind);
    else
      read.complain({
        at: ['as'],
        says: say`${quote(typed)} is no kind of file; it must be pdf, svg or dxf, or several of them`,
        hint: say`pdf,svg`,
      });
  }
  if (kinds.has('dxf') && project !== undefined && guidesOf(project).length === 0)
    read.complain({
      at: ['as'],
      says: say`dxf is for guides to be cut by machine, and there are none without a cutter and a bush`,
      hint: say`--cutter-diameter 12.7 --cutter-angle 8 --cutter-length 20 --bush 16`,
    });
  const printed = readPaperOptions(read);
  const board = read.value('boards', parseBoard);
  const sheetKinds = read.value('sheets', parseSheetKinds) ?? USUAL_SHEETS;
  const benchPaper = read.value('benchPaper', parsePaper);
  if (benchPaper !== undefined && !(kinds.has('pdf') && hasBench(sheetKinds, project)))
    read.complain({
      at: ['benchPaper'],
      says: say`there are no cutting list, bench sheets, comparison, proportion or corners here to print; leave out the option`,
    });
  const copies = read.value('copies', parseCopies, 'one');
  const choice: PieceChoice = {
    boards: board === undefined ? ['tail', 'pin'] : [board],
    flat: options.flat === true,
    rods: options.rods === true,
  };
  if (project?.only !== undefined && chosenCorners(project, choice).length === 0)
    read.complain({
      at: ['boards'],
      says: say`the parts chosen by --only are not ${choice.boards.join()} boards, so no template is left; leave out the option`,
    });
  if (read.complaints.length > 0 || printed === undefined || copies === undefined)
    return refuseOptions(read.complaints, units);
  return {
    kinds,
    sheetKinds,
    ...printed,
    copies,
    choice,
    ...(benchPaper && { benchPaper }),
    ...(project?.only && { only: project.only }),
  };
};

/** Whether sheets for the hand are chosen, and the project has some of them. */
const hasBench = (kinds: readonly SheetKind[], project: Project | undefined): boolean => {
  const there: readonly SheetKind[] = project === undefined ? SHEET_KINDS : kindsOf(project);
  return kinds.some((kind) => HAND_SHEETS.includes(kind) && there.includes(kind));
};

const parseBoard = (typed: string): Result<JointBoard> =>
  typed === 'tail' || typed === 'pin'
    ? accept(typed)
    : refuse({ at: [], says: say`${quote(typed)} is neither of a corner's boards; it must be tail or pin` });

const parseCopies = (typed: string): Result<Copies> => {
  const plain = typed.trim().toLowerCase();
  return plain === 'one' || plain === 'made'
    ? accept(plain)
    : refuse({
        at: [],
        says: say`${quote(typed)} is no number of copies here; it must be one, or made for each template as often as it is made`,
        hint: say`made`,
      });
};

const parseSheetKinds = (typed: string): Result<SheetKind[]> => {
  const names = commaWords(typed);
  const wrong = names.find((name) => !SHEET_KINDS.some((kind) => kind === name));
  if (wrong !== undefined)
    return refuse({
      at: [],
      says: say`${quote(wrong)} is no kind of sheet; the kinds are ${SHEET_KINDS.join(', ')}`,
      hint: say`templates,bench`,
    });
  return names.includes('contents') && !names.includes('templates') && !names.includes('drilling')
    ? refuse({
        at: [],
        says: say`the contents list the templates, which are not among the sheets chosen`,
        hint: say`templates,contents`,
      })
    : accept(SHEET_KINDS.filter((kind) => names.includes(kind)));
};
