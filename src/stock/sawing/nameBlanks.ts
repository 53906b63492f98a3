import type { Wanted } from '../wanted.ts';
import type { BlankType } from '../wood/blankType.ts';
import type { Freed } from './sawing.ts';

/**
 * Says which wanted piece each blank of a board is. Pieces that change places freely go where their partner lies or still may
 * lie: the sides of a drawer come out of one board.
 * @param supply what is still to be named of each type; names are taken from it
 */
export const nameBlanks = (
  freed: readonly Freed[],
  types: readonly BlankType[],
  supply: readonly number[][],
  wanted: readonly Wanted[],
): (number | undefined)[] => {
  const room = types.map((_, type) => freed.filter(({ placed }) => placed.type === type).length);
  const partnerOf = (piece: number): number | undefined => {
    const word = wanted[piece]?.beside;
    return word === undefined
      ? undefined
      : wanted.findIndex((other, i) => i !== piece && other.beside === word && !other.spare);
  };
  const typeOf = (piece: number) => supply.findIndex((pieces) => pieces.includes(piece));
  const named: (number | undefined)[] = [];
  let awaited: number[] = [];
  for (const { placed } of freed) {
    const own = supply[placed.type];
    if (own === undefined) {
      named.push(undefined);
      continue;
    }
    const isAwaited = own.find((piece) => awaited.includes(piece));
    const hasRoom = own.find((piece) => {
      const partner = partnerOf(piece);
      if (partner === undefined) return false;
      const type = typeOf(partner);
      return type >= 0 && (room[type] ?? 0) > (type === placed.type ? 1 : 0);
    });
    const piece = placed.piece ?? isAwaited ?? hasRoom ?? own[0];
    room[placed.type] = (room[placed.type] ?? 0) - 1;
    if (piece !== undefined) {
      const at = own.indexOf(piece);
      if (at >= 0) own.splice(at, 1);
      const partner = partnerOf(piece);
      awaited = awaited.filter((other) => other !== piece);
      if (partner !== undefined) awaited.push(partner);
    }
    named.push(piece);
  }
  return named;
};
