import type { Complaint } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atMost, mm, say } from '../../units/phrase.ts';
import { LEAST_LAP, LEAST_SOCKET } from '../jointLimits.ts';
import type { Given, JointShape, OwnLength, Thicknesses } from './kind.ts';
import { defaultLap } from './lap.ts';

/** Pins shorter than this, in mm, hold little (common practice, from memory). */
const SHORT_PIN = 6;

/** Boards that both keep a lap, and behind it the least depth of a socket, in mm. */
export const BOTH_LAPPED = { tail: LEAST_LAP + LEAST_SOCKET, pin: LEAST_LAP + LEAST_SOCKET } as const;

/** The lap of the tail board, outside the pins' ends. */
export const tailLap: OwnLength<'tailLap'> = {
  key: 'tailLap',
  word: 'tail lap',
  about: 'wood left outside the pins, on the tail board, where both boards have a lap',
  on: 'tail',
  places: ['own'],
  usual: ({ tailBoard, notation }) => defaultLap(tailBoard, notation),
  range: ({ tailBoard }) => ({ least: LEAST_LAP, most: tailBoard - LEAST_SOCKET }),
  of: ({ tailBoard }) => tailBoard.lap,
};

/** The pins end behind the tail board's lap, so that nothing of them can be planed flush. */
export const checkProud = (kind: string, { proud = 0 }: Given<never>): Complaint[] =>
  proud > EPSILON
    ? [
        {
          at: ['proud'],
          says: say`the pins of a ${kind} joint end behind the tail board's lap, so it cannot be proud of them`,
          remedy: say`remove it`,
        },
      ]
    : [];

/** Advice on pins that the tail board's lap leaves short. */
export const adviseShortPins = (
  { tailBoard }: Thicknesses,
  { tailBoard: { lap } }: Pick<JointShape, 'tailBoard'>,
): Complaint[] => {
  const length = tailBoard - lap;
  const most = tailBoard - SHORT_PIN;
  return length > SHORT_PIN - EPSILON
    ? []
    : [
        {
          at: ['tailLap'],
          says: say`the tail lap of ${mm(lap)} leaves pins ${mm(length)} long: under ${mm(SHORT_PIN)} they hold little`,
          ...(most >= LEAST_LAP && { hint: say`${atMost(most)}` }),
          remedy: say`use a thicker tail board`,
        },
      ];
};
