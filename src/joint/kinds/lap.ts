import { EPSILON } from '../../units/epsilon.ts';
import { nearestMark } from '../../units/formatLength.ts';
import type { Notation } from '../../units/notation.ts';
import { MM_PER_INCH } from '../../units/unit.ts';
import { LEAST_LAP, LEAST_SOCKET } from '../jointLimits.ts';
import type { OwnLength } from './kind.ts';

/** A quarter of the pin board's thickness, to the half millimetre, at least 3; in inches to 1/32, at least 1/8 (common practice). */
export const defaultLap = (pinBoard: number, notation: Notation = 'mm'): number =>
  notation === 'mm'
    ? Math.max(3, Math.round(pinBoard / 2 + EPSILON) / 2)
    : Math.max(MM_PER_INCH / 8, nearestMark(pinBoard / 4, 'in/32'));

/** The pin board's lap. */
export const lap: OwnLength<'lap'> = {
  key: 'lap',
  word: 'lap',
  about: 'wood left in front of a lapped joint',
  on: 'pin',
  places: ['baseline', 'own'],
  usual: ({ pinBoard, notation }) => defaultLap(pinBoard, notation),
  range: ({ pinBoard }) => ({ least: LEAST_LAP, most: pinBoard - LEAST_SOCKET }),
  of: ({ pinBoard }) => pinBoard.lap,
};
