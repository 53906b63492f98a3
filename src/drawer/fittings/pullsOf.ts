import type { Interval } from '../../joint/joint.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { lengthOf, type PullSpec } from './fittingSpec.ts';
import type { Lock, Pull } from './fittings.ts';
import { freeSpans, isWithin, nearestIn } from './freeSpans.ts';
import { CLEAR_OF_HOLES, type FrontZones } from './frontZones.ts';

/** The middles of pulls that follow from the front alone, from left to right, in mm from its left end. */
const ownMiddles = ({ across: { number = 1, fromEnds } }: PullSpec, length: number): readonly number[] => {
  if (number === 1) return [length / 2];
  const from = lengthOf(fromEnds, length);
  return [from, length - from];
};

/**
 * The pulls of a front with their holes.
 * @param lock what is let in there too
 * @param lined the middles of those that line up with others, in mm from the front's left end
 * @returns complaints where a hole would run into a joint, the groove, the lip, the lock or off the front, with the nearest
 * place that does not; places start in the drawer's entry
 */
export const pullsOf = (
  spec: PullSpec,
  zones: FrontZones,
  lock?: Lock,
  lined?: readonly number[],
): Result<readonly Pull[]> => {
  const { holes, size, above } = spec;
  const middles = lined ?? ownMiddles(spec, zones.length);
  const y = zones.width / 2 + lengthOf(above, zones.width);
  const wrong = [
    ...checkAcross(spec, middles, zones, lined !== undefined),
    ...checkUp(spec, middles, y, zones, lock),
  ];
  if (wrong.length > 0) return refuse(...wrong);
  const offsets = holes.spacing > 0 ? [-holes.spacing / 2, holes.spacing / 2] : [0];
  return accept(
    middles.map((x) => ({
      at: [x, y],
      holes: offsets.map((offset) => ({ at: [x + offset, y], diameter: holes.diameter })),
      outline: {
        x0: x - size.width / 2,
        y0: y - size.height / 2,
        x1: x + size.width / 2,
        y1: y + size.height / 2,
      },
    })),
  );
};

/** How far a hole's middle is kept from what it must not meet. */
const clearOf = ({ holes: { diameter } }: PullSpec): number => diameter / 2 + CLEAR_OF_HOLES;

const checkAcross = (
  spec: PullSpec,
  middles: readonly number[],
  zones: FrontZones,
  isLined: boolean,
): Complaint[] => {
  const { across, holes, size } = spec;
  const { length, between } = zones;
  const clear = clearOf(spec);
  const most = between[1] - between[0] - 2 * clear;
  if (holes.spacing > most + EPSILON)
    return [
      {
        at: ['pulls', 'holes', holes.spacing > 0 ? 'spacing' : 'diameter'],
        says: say`${holes.spacing > 0 ? say`holes ${mm(holes.spacing)} apart` : say`a hole of ${mm(holes.diameter)}`} would run into the corner joints, or come within ${mm(CLEAR_OF_HOLES)} of them: between the sides there is ${mm(between[1] - between[0])}`,
        ...(most > 0 && holes.spacing > 0 && { hint: say`${atMost(most)}` }),
      },
    ];
  const reach = holes.spacing / 2;
  const free: Interval = [between[0] + clear + reach, between[1] - clear - reach];
  const apart = Math.max(size.width, holes.spacing + holes.diameter);
  if (isLined) {
    const off = middles.find((x) => !isWithin(x, [free]));
    if (off === undefined) return [];
    return [
      {
        at: ['pulls', 'lineUpWith'],
        says: say`in line with ${across.with ?? ''} a hole would lie ${mm(off - reach)} from the front's left end, and ${whatIsAcross(off < free[0] ? off - reach : length - off - reach, zones, holes.diameter / 2)}`,
        remedy: say`give fromEnds in its place`,
      },
    ];
  }
  const [first, second] = middles;
  if (first === undefined || second === undefined) return [];
  const ofFirst: Interval = [free[0], Math.min(free[1], (length - apart) / 2)];
  if (isWithin(first, [ofFirst])) return [];
  const isPair = ofFirst[0] <= ofFirst[1];
  const nearest = Math.min(Math.max(first, ofFirst[0]), ofFirst[1]);
  return [
    {
      at: ['pulls', 'fromEnds'],
      says:
        !isPair || first > ofFirst[0]
          ? say`two pulls, ${mm(first)} from the front's ends, would meet in the middle: the front is ${mm(length)} long`
          : say`${mm(first - reach)} from the front's end a hole ${whatIsAcross(first - reach, zones, holes.diameter / 2)}`,
      ...(isPair
        ? { hint: say`${nearest > first ? atLeast(nearest) : atMost(nearest)}` }
        : { remedy: say`give it one pull (number: 1)` }),
    },
  ];
};

/** What a hole runs into near an end of the front. */
const whatIsAcross = (fromEnd: number, { box, between }: FrontZones, radius: number): Phrase =>
  fromEnd < radius
    ? say`would run off the front`
    : fromEnd - radius < box.x0
      ? say`would run into the lip`
      : fromEnd - radius < between[0]
        ? say`would run into the corner joint`
        : say`would come within ${mm(CLEAR_OF_HOLES)} of the corner joint`;

/** Heights that a hole must not have, and what is there. */
interface Taken {
  readonly span: Interval;
  readonly what: string;
}

const checkUp = (
  spec: PullSpec,
  middles: readonly number[],
  y: number,
  zones: FrontZones,
  lock: Lock | undefined,
): Complaint[] => {
  const clear = clearOf(spec);
  const { width, box } = zones;
  const whole: Interval = [box.y0 + clear, box.y1 - clear];
  const taken: Taken[] = [
    { span: [zones.groove[0] - clear, zones.groove[1] + clear], what: 'the groove' },
    ...(lock === undefined ? [] : takenByLock(spec, middles, lock)),
  ];
  const spans = freeSpans(
    whole,
    taken.map(({ span }) => span),
  );
  if (isWithin(y, spans)) return [];
  const nearest = nearestIn(y, spans);
  const met = taken.find(({ span }) => y > span[0] && y < span[1]);
  const edge = y < whole[0] ? 'lower' : 'upper';
  const lip = edge === 'lower' ? box.y0 > 0 : box.y1 < width - EPSILON;
  const what = met?.what ?? (lip ? 'the lip' : `the front's ${edge} edge`);
  return [
    {
      at: ['pulls', 'above'],
      says: say`a hole of ${mm(spec.holes.diameter)} for a pull, ${mm(y)} above the front's lower edge, would run into ${what}, or come within ${mm(CLEAR_OF_HOLES)} of it`,
      ...(nearest === undefined
        ? { remedy: say`make the hole smaller, or give this drawer no pulls (number: 0)` }
        : { hint: say`${nearest > y ? atLeast(nearest - width / 2) : atMost(nearest - width / 2)}` }),
    },
  ];
};

/** What the lock takes of the heights of pulls that lie over it. */
const takenByLock = (spec: PullSpec, middles: readonly number[], { body, keyhole }: Lock): Taken[] => {
  const { holes, size } = spec;
  const clear = clearOf(spec);
  const isOver = (reach: number, from: number, to: number): boolean =>
    middles.some((x) => x + reach > from && x - reach < to);
  const radius = keyhole.diameter / 2;
  const [x, y] = keyhole.at;
  return [
    ...(isOver(holes.spacing / 2 + clear, body.x0, body.x1)
      ? [{ span: [body.y0 - clear, body.y1 + clear] as const, what: 'the lock' }]
      : []),
    ...(isOver(size.width / 2, x - radius, x + radius)
      ? [
          {
            span: [y - radius - size.height / 2, y + radius + size.height / 2] as const,
            what: 'the keyhole',
          },
        ]
      : []),
  ];
};
