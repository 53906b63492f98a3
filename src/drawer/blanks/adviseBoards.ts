import type { Complaint } from '../../units/complaint.ts';
import { say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { stockOf } from '../cuttingList.ts';
import type { Part } from '../partsList.ts';
import type { BoardsSpec } from './boardSpec.ts';

/** Boards that are listed for parts of different woods: which is meant, their names alone tell. */
export const adviseBoards = ({ boards }: BoardsSpec, parts: readonly Part[]): Complaint[] =>
  boards.flatMap(({ plank: { name, stocks } }, i): Complaint[] => {
    const woods = parts.flatMap(({ part, species }) =>
      stocks.includes(stockOf(part)) && species !== undefined ? [species] : [],
    );
    const [one, ...others] = [...new Set(woods)];
    return others.length === 0
      ? []
      : [
          {
            at: ['boards', i, 'stock'],
            says: say`${quote(name)} is listed for parts of ${[one, ...others].join(' and of ')}; woods are not compared, so any of them may come out of it`,
          },
        ];
  });
