import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { LEAST_WALL } from '../drawerLimits.ts';
import type { LockSpec } from './fittingSpec.ts';
import type { Lock } from './fittings.ts';
import { CLEAR_OF_HOLES, type FrontZones } from './frontZones.ts';

/** Wood of the lock's body beside the keyhole, in mm. */
const ROUND_KEYHOLE = 1;

/**
 * A lock in the middle of a front, let into its inside face at the upper edge: behind a lip, at the rebate's.
 * @param thickness the front's
 * @returns complaints where its body meets the groove or a corner joint, or leaves too little of the front; places start in the
 * drawer's entry
 */
export const lockOf = (
  { pin, keyhole, body }: LockSpec,
  { length, box, between, groove }: FrontZones,
  thickness: number,
): Result<Lock> => {
  const wrong: Complaint[] = [];
  const tooMuch = (key: 'width' | 'height' | 'depth', most: number, meets: string): void => {
    if (body[key] <= most + EPSILON) return;
    wrong.push({
      at: ['locks', 'body', key],
      says: say`the lock's body is ${mm(body[key])} ${ACROSS[key]}, and would ${meets}; it may be at most ${atMost(Math.max(0, most))}`,
      ...(most > 0 ? { hint: say`${atMost(most)}` } : { remedy: say`give this drawer no lock (number: 0)` }),
    });
  };
  tooMuch('width', between[1] - between[0] - 2 * CLEAR_OF_HOLES, 'meet the corner joints');
  tooMuch('height', box.y1 - groove[1] - CLEAR_OF_HOLES, 'meet the groove');
  tooMuch('depth', thickness - LEAST_WALL, 'show through the front');
  const spare = keyhole / 2 + ROUND_KEYHOLE;
  if (pin < spare - EPSILON || pin > body.height - spare + EPSILON)
    wrong.push({
      at: ['locks', 'pin'],
      says: say`the keyhole of ${mm(keyhole)}, ${mm(pin)} below the upper edge, would run off the lock's body, ${mm(body.height)} high; it must be ${atLeast(spare)} to ${atMost(body.height - spare)} below`,
      ...(body.height >= 2 * spare && {
        hint: pin < spare ? say`${atLeast(spare)}` : say`${atMost(body.height - spare)}`,
      }),
    });
  return wrong.length > 0
    ? refuse(...wrong)
    : accept({
        keyhole: { at: [length / 2, box.y1 - pin], diameter: keyhole },
        body: {
          x0: (length - body.width) / 2,
          y0: box.y1 - body.height,
          x1: (length + body.width) / 2,
          y1: box.y1,
        },
        depth: body.depth,
        pin,
      });
};

const ACROSS = { width: 'wide', height: 'high', depth: 'deep' } as const;
