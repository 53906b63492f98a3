import { extentsOf } from '../../stock/polygon.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { roughThickness, stockOf } from '../cuttingList.ts';
import type { Part } from '../partsList.ts';
import type { BoardSpec, BoardsSpec } from './boardSpec.ts';

/** Boards too thin for every part that they are listed for, and parts wider than all their boards together. */
export const boardComplaints = (
  { boards }: BoardsSpec,
  parts: readonly Part[],
  saw: Pick<Sawing, 'face'>,
): Complaint[] => [
  ...boards.flatMap(({ plank: { name, stocks, thickness } }, i): Complaint[] => {
    const needed = parts
      .filter(({ part }) => stocks.includes(stockOf(part)))
      .map((part) => roughThickness(part, saw));
    const least = Math.min(...needed);
    return thickness >= least - EPSILON
      ? []
      : [
          {
            at: ['boards', i, 'thickness'],
            says: say`${quote(name)} is ${mm(thickness)} thick, too thin for every part that it is for: the thinnest needs ${atLeast(least)} before ${mm(saw.face)} is planed off each face`,
            remedy: say`list it for thinner parts, or remove it`,
          },
        ];
  }),
  ...parts.flatMap((part): Complaint[] => {
    const serving = boards.filter((board) => serves(board, part, saw));
    const [first] = serving;
    const together = serving.reduce((sum, { plank, count }) => {
      const { y0, y1 } = extentsOf(plank.outline);
      return sum + count * (y1 - y0);
    }, 0);
    // A panel may lie with its length across the boards.
    const across = part.grain === 'either way' ? Math.min(part.width, part.length) : part.width;
    return first === undefined || across <= together + EPSILON
      ? []
      : [
          {
            at: ['boards', boards.indexOf(first)],
            says: say`the ${part.part} of ${quote(part.drawer)} is ${mm(across)} wide, and all boards that it could come out of are ${mm(together)} wide together`,
            remedy: say`list more boards for it`,
          },
        ];
  }),
];

const serves = (
  { plank: { stocks, thickness } }: BoardSpec,
  part: Part,
  saw: Pick<Sawing, 'face'>,
): boolean => stocks.includes(stockOf(part.part)) && thickness >= roughThickness(part, saw) - EPSILON;
