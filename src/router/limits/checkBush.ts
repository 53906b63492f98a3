import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say, soldAtLeast } from '../../units/phrase.ts';
import { lengthOrNaN } from '../../units/range.ts';
import { BUSHES } from './soldSizes.ts';

/** What a bush that a cutter passes through is wider than it, in mm: its wall, and room for the chips (common practice). */
export const BUSH_ROOM = 3;

/** Whether a cutter passes through its bush; of a cutter whose diameter is not known, 0, every bush is wide enough. */
export const checkBush = (
  at: 'bush' | 'pinBush',
  bush: number,
  cutter: 'dovetail' | 'straight',
  diameter: number,
): Complaint[] =>
  bush > 0 && bush >= diameter - EPSILON && Number.isFinite(bush)
    ? []
    : [
        {
          at: [at],
          says: say`the guide bush is ${lengthOrNaN(bush)} outside; ${
            diameter > 0
              ? say`the ${cutter} cutter of ${mm(diameter)} must pass through it, so it must be ${atLeast(diameter)} or more`
              : say`it must be more than ${mm(0)}`
          }`,
          hint: say`${soldAtLeast(diameter + BUSH_ROOM, BUSHES)}`,
        },
      ];
