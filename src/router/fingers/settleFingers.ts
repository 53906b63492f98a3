import { accept, type Result, refuse } from '../../units/complaint.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Fingers } from './fingers.ts';

/** Fingers as they are given: their bush may be that of the guides. */
export type FingersWish = Omit<Fingers, 'bush'> & { readonly bush?: number };

/**
 * Fingers with their bush: the one that they have, or that of the guide boards.
 * @returns complaints at `fingers.bush`
 */
export const settleFingers = (wish: FingersWish, guideBush: number | undefined): Result<Fingers> => {
  const bush = wish.bush ?? guideBush;
  return bush === undefined
    ? refuse({
        at: ['fingers', 'bush'],
        says: say`the guide bush that runs between the fingers is missing`,
        hint: say`${mm(16)}`,
      })
    : accept({ ...wish, bush });
};
