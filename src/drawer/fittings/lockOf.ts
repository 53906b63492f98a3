import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { LEAST_WALL } from '../drawerLimits.ts';
import type { LockSpec } from './fittingSpec.ts';
import type { Lock } from './fittings.ts';
import { CLEAR_OF_HOLES, type FrontZones } from './frontZones.ts';

/** Wood of the lock's body beside the keyhole, in mm. */
const ROUND_KEYHOLE = 1;
/** The least that a key goes through, in mm. */
const LEAST_KEYHOLE = 2;

/** A lock with what is wrong with it: where anything is, as it is with what is suggested. */
export interface PlacedLock {
  readonly complaints: readonly Complaint[];
  readonly lock: Lock;
}

/**
 * A lock in the middle of a front, let into its inside face at the upper edge: behind a lip, at the rebate's.
 * @param thickness the front's
 * @returns complaints where its keyhole has no place on its body, or its body meets the groove or a corner joint, or leaves too little of the front; places start in the
 * drawer's entry
 */
export const lockOf = (
  { pin, keyhole, body }: LockSpec,
  { length, box, between, groove }: FrontZones,
  thickness: number,
): PlacedLock => {
  const wrong: Complaint[] = [];
  const tooMuch = (key: 'width' | 'height' | 'depth', most: number, meets: string): void => {
    if (body[key] <= most + EPSILON) return;
    wrong.push({
      at: ['locks', 'body', key],
      says: say`the lock's body is ${mm(body[key])} ${ACROSS[key]}, and would ${meets}; it may be at most ${atMost(Math.max(0, most))}`,
      ...(most > 0 ? { hint: say`${atMost(most)}` } : { remedy: say`give this drawer no lock (number: 0)` }),
    });
  };
  const mostWide = between[1] - between[0] - 2 * CLEAR_OF_HOLES;
  const mostHigh = box.y1 - groove[1] - CLEAR_OF_HOLES;
  tooMuch('width', mostWide, 'meet the corner joints');
  tooMuch('height', mostHigh, 'meet the groove');
  tooMuch('depth', thickness - LEAST_WALL, 'show through the front');
  const spare = keyhole / 2 + ROUND_KEYHOLE;
  // As it is with what is suggested for it.
  const height = Math.min(body.height, Math.max(0, mostHigh));
  const width = Math.min(body.width, Math.max(0, mostWide));
  const room = Math.min(width, height);
  const widest = 2 * (Math.min(room / 2, pin, height - pin) - ROUND_KEYHOLE);
  const hasPlace = 2 * spare <= room + EPSILON;
  if (!hasPlace)
    wrong.push({
      at: ['locks', 'keyhole'],
      says: say`a keyhole of ${mm(keyhole)} has no place on the lock's body, ${mm(body.width)} wide and ${mm(body.height)} high, as ${mm(ROUND_KEYHOLE)} of it must be left all round`,
      ...(widest >= LEAST_KEYHOLE && { hint: say`${atMost(widest)}` }),
      remedy: say`make the body larger (locks: body)`,
    });
  else if (pin < spare - EPSILON || pin > height - spare + EPSILON)
    wrong.push({
      at: ['locks', 'pin'],
      says: say`the keyhole of ${mm(keyhole)}, ${mm(pin)} below the upper edge, would run off the lock's body, ${mm(height)} high; it must be ${atLeast(spare)} to ${atMost(height - spare)} below`,
      hint: pin < spare ? say`${atLeast(spare)}` : say`${atMost(height - spare)}`,
    });
  const fits = hasPlace
    ? { keyhole, pin: Math.min(Math.max(pin, spare), height - spare) }
    : { keyhole: widest >= LEAST_KEYHOLE ? widest : keyhole, pin };
  return {
    complaints: wrong,
    lock: {
      keyhole: { at: [length / 2, box.y1 - fits.pin], diameter: fits.keyhole },
      body: {
        x0: (length - width) / 2,
        y0: box.y1 - height,
        x1: (length + width) / 2,
        y1: box.y1,
      },
      depth: body.depth,
      pin: fits.pin,
    },
  };
};

const ACROSS = { width: 'wide', height: 'high', depth: 'deep' } as const;
