import { parsePaper } from '../../paper/paperSizes.ts';
import { chooseOnly } from '../../project/only.ts';
import { chosenCorners } from '../../project/piecesOf.ts';
import type { Project } from '../../project/project.ts';
import type { SheetOptions } from '../../project/sheetsOf.ts';
import type { PieceChoice } from '../../sheets/template/cornerPieces.ts';
import { accept, type Result, refuse, under } from '../../units/complaint.ts';
import { unitOf } from '../../units/notation.ts';
import { say } from '../../units/phrase.ts';
import { readPrinting } from './readPrinting.ts';
import type { SheetChoice } from './sheetJob.ts';

/** A project with what of it is drawn, and how. */
export interface ReadChoice {
  readonly project: Project;
  readonly options: SheetOptions & { readonly choice: PieceChoice };
}

/** What was chosen and typed of paper, templates and printer; all that is wrong with it where it cannot be had. */
export const readChoice = (whole: Project, chosen: SheetChoice): Result<ReadChoice> => {
  const { only = '', benchPaper = '', copies, correction } = chosen;
  const printing = readPrinting(chosen, unitOf(whole.units));
  const project = only === '' ? accept(whole) : chooseOnly(whole, only);
  const bench = benchPaper === '' ? accept(undefined) : parsePaper(benchPaper);
  const choice = pieceChoice(chosen);
  const isEmpty = project.ok && project.value.only && chosenCorners(project.value, choice).length === 0;
  if (printing.ok && project.ok && bench.ok && !isEmpty)
    return accept({
      project: project.value,
      options: {
        ...printing.value,
        choice,
        ...(bench.value && { benchPaper: bench.value }),
        ...(copies && { copies }),
        ...(correction && { correction }),
      },
    });
  return refuse(
    ...(printing.ok ? [] : printing.complaints),
    ...(project.ok ? [] : under(['only'], project.complaints)),
    ...(bench.ok ? [] : under(['benchPaper'], bench.complaints)),
    ...(isEmpty
      ? [
          {
            at: ['boards'],
            says: say`the parts chosen are not ${choice.boards.join()} boards, so no template is left`,
            remedy: say`choose both boards`,
          },
        ]
      : []),
  );
};

const pieceChoice = ({ flat, rods, boards }: SheetChoice): PieceChoice => ({
  flat,
  rods,
  boards: boards === 'both' ? ['tail', 'pin'] : [boards],
});
