import { type Complaint, under } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, mm, say, soldAtLeast } from '../../units/phrase.ts';
import { lengthOrNaN } from '../../units/range.ts';
import { type Cutter, checkCutter } from './cutter.ts';
import { BUSHES } from './soldSizes.ts';

/** What a maker cuts with. Lengths in mm. */
export interface Cutting {
  readonly cutter: Cutter;
  /** Diameter of the straight cutter for through pins; as thick as passes their sockets unless given. */
  readonly straight?: number;
  /** Outside diameter of the guide bush; without one there are no guides to be made. */
  readonly bush?: number;
  /** That of the bush for the straight cutter, where it is another. */
  readonly pinBush?: number;
}

/** What a bush that a cutter passes through is wider than it, in mm: its wall, and room for the chips (common practice). */
export const BUSH_ROOM = 3;

/**
 * Everything that can be judged of the tools before any joint; places lie under `cutter`: `diameter`, `angle`,
 * `length`, `neck`, `straight`, `bush` and `pinBush`.
 */
export const checkCutting = ({ cutter, straight, bush, pinBush }: Cutting): Complaint[] => {
  const checked = checkCutter(cutter);
  if (!checked.ok) return under(['cutter'], checked.complaints);
  return under(
    ['cutter'],
    [
      ...(straight === undefined || (straight > 0 && Number.isFinite(straight))
        ? []
        : [
            {
              at: ['straight'],
              says: say`the straight cutter is ${lengthOrNaN(straight)}; it must be more than ${mm(0)}`,
            },
          ]),
      ...(bush === undefined ? [] : checkBush('bush', bush, 'dovetail', cutter.diameter)),
      ...(pinBush === undefined ? [] : checkBush('pinBush', pinBush, 'straight', straight ?? 0)),
    ],
  );
};

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
