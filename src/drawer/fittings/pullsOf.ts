import type { Interval } from '../../joint/joint.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { EPSILON } from '../../units/epsilon.ts';
import { atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { lengthOf, type PullSpec } from './fittingSpec.ts';
import type { Lock, Pull } from './fittings.ts';
import { freeSpans, isWithin, nearestMarkIn } from './freeSpans.ts';
import { CLEAR_OF_HOLES, type FrontZones, type PullGround } from './frontZones.ts';
import { pullSizeOf } from './pullSizeOf.ts';

/** The middles of pulls that follow from the front alone, from left to right, in mm from its left end. */
const ownMiddles = ({ across: { number = 1, fromEnds } }: PullSpec, length: number): readonly number[] => {
  if (number === 1) return [length / 2];
  const from = lengthOf(fromEnds, length);
  return [from, length - from];
};

/**
 * The pulls of a front with their holes.
 * @returns complaints where a hole would run into a joint, the groove, the lip, the lock or off the front, and where a pull is not
 * whole on the front's face, meets the other, shows its holes or covers the keyhole, with the nearest that is right in all; where
 * its holes or its size are wrong, its place is judged as it is with what is suggested for them. Places start in the drawer's entry
 */
export const pullsOf = (spec: PullSpec, ground: PullGround): Result<readonly Pull[]> => {
  const tooFar = checkSpacing(spec, ground.zones);
  if (tooFar.length > 0) return refuse(...tooFar);
  const size = pullSizeOf(spec, ground);
  if (size.fits === undefined) return refuse(...size.complaints);
  const fitted: PullSpec = { ...spec, size: size.fits };
  const across = checkAcross(fitted, ground);
  const up = checkUp(fitted, across.middles, ground);
  const placed = [...across.complaints, ...up.complaints];
  // A size with which there is no place is none to try.
  const isPlaceless = placed.some(({ hint }) => hint === undefined);
  const wrong = [
    ...size.complaints.map(({ hint, ...rest }) =>
      isPlaceless || hint === undefined ? rest : { ...rest, hint },
    ),
    ...placed,
  ];
  if (wrong.length > 0) return refuse(...wrong);
  const {
    holes,
    size: { width, height },
  } = fitted;
  const offsets = holes.spacing > 0 ? [-holes.spacing / 2, holes.spacing / 2] : [0];
  return accept(
    across.middles.map((x) => ({
      at: [x, up.y],
      holes: offsets.map((offset) => ({ at: [x + offset, up.y], diameter: holes.diameter })),
      outline: {
        x0: x - width / 2,
        y0: up.y - height / 2,
        x1: x + width / 2,
        y1: up.y + height / 2,
      },
    })),
  );
};

/** How far a hole's middle is kept from what it must not meet. */
const clearOf = ({ holes: { diameter } }: PullSpec): number => diameter / 2 + CLEAR_OF_HOLES;

const checkSpacing = (spec: PullSpec, { between }: FrontZones): Complaint[] => {
  const { holes } = spec;
  const most = between[1] - between[0] - 2 * clearOf(spec);
  if (holes.spacing <= most + EPSILON) return [];
  return [
    {
      at: ['pulls', 'holes', holes.spacing > 0 ? 'spacing' : 'diameter'],
      says: say`${holes.spacing > 0 ? say`holes ${mm(holes.spacing)} apart` : say`a hole of ${mm(holes.diameter)}`} would run into the corner joints, or come within ${mm(CLEAR_OF_HOLES)} of them: between the sides there is ${mm(between[1] - between[0])}`,
      ...(most > 0 && holes.spacing > 0 && { hint: say`${atMost(most)}` }),
    },
  ];
};

/** What is wrong across the front, and the middles of the pulls with what is suggested. */
interface Across {
  readonly complaints: readonly Complaint[];
  readonly middles: readonly number[];
}

const checkAcross = (spec: PullSpec, { zones, notation, lined }: PullGround): Across => {
  const { across, holes, size } = spec;
  const { length, between } = zones;
  const reach = holes.spacing / 2;
  const clear = clearOf(spec);
  const ofHoles: Interval = [between[0] + clear + reach, between[1] - clear - reach];
  const free: Interval = [
    Math.max(ofHoles[0], size.width / 2),
    Math.min(ofHoles[1], length - size.width / 2),
  ];
  const middles = lined ?? ownMiddles(spec, length);
  const beyond = (fromEnd: number): Phrase =>
    fromEnd < Math.max(ofHoles[0], length - ofHoles[1]) - EPSILON
      ? say`${mm(fromEnd - reach)} from the front's end a hole ${whatIsAcross(fromEnd - reach, zones, holes.diameter / 2)}`
      : say`a pull ${mm(size.width)} wide, its middle ${mm(fromEnd)} from the front's end, would extend ${mm(size.width / 2 - fromEnd)} beyond it`;
  if (lined !== undefined) {
    const name = across.with ?? '';
    const off = lined.find((x) => !isWithin(x, [free]));
    const [first, second] = lined;
    const doMeet = first !== undefined && second !== undefined && second - first < size.width - EPSILON;
    const told =
      off !== undefined
        ? say`in line with ${name}, ${beyond(Math.min(off, length - off))}`
        : doMeet
          ? say`in line with ${name} two pulls ${mm(size.width)} wide would meet: their middles are ${mm(second - first)} apart`
          : undefined;
    const complaint = { at: ['pulls', 'lineUpWith'], remedy: say`give fromEnds in its place` };
    return { complaints: told === undefined ? [] : [{ ...complaint, says: told }], middles };
  }
  const [first, second] = middles;
  const ofFirst: Interval = [Math.max(free[0], length - free[1]), (length - size.width) / 2];
  if (first === undefined || second === undefined || isWithin(first, [ofFirst]))
    return { complaints: [], middles };
  const nearest = nearestMarkIn(first, [ofFirst], notation);
  const complaint: Complaint = {
    at: ['pulls', 'fromEnds'],
    says:
      first > ofFirst[0]
        ? say`two pulls, ${mm(first)} from the front's ends, would meet in the middle: the front is ${mm(length)} long`
        : beyond(first),
    ...(nearest === undefined
      ? { remedy: say`give it one pull (number: 1)` }
      : { hint: say`${nearest.word}` }),
  };
  const from = nearest?.typed ?? first;
  return { complaints: [complaint], middles: [from, length - from] };
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

/** Heights that the middle of a pull must not have, and what it would do there. */
interface Taken {
  readonly span: Interval;
  readonly does: Phrase;
}

const checkUp = (
  spec: PullSpec,
  middles: readonly number[],
  { zones, notation, lock }: PullGround,
): { readonly complaints: readonly Complaint[]; readonly y: number } => {
  const { size } = spec;
  const { width, box, groove } = zones;
  const clear = clearOf(spec);
  const y = width / 2 + lengthOf(spec.above, width);
  const hole = (what: string): Phrase =>
    say`a hole of ${mm(spec.holes.diameter)} for a pull, ${mm(y)} above the front's lower edge, would run into ${what}, or come within ${mm(CLEAR_OF_HOLES)} of it`;
  const pull = (does: Phrase): Phrase =>
    say`a pull ${mm(size.height)} high, its middle ${mm(y)} above the front's lower edge, would ${does}`;
  const half = size.height / 2;
  const taken: readonly Taken[] = [
    { span: [groove[0] - clear, groove[1] + clear], does: hole('the groove') },
    ...(lock !== undefined && isOver(middles, spec.holes.spacing / 2 + clear, lock.body)
      ? [{ span: [lock.body.y0 - clear, lock.body.y1 + clear] as const, does: hole('the lock') }]
      : []),
    {
      span: [Number.NEGATIVE_INFINITY, box.y0 + clear],
      does: hole(box.y0 > 0 ? 'the lip' : "the front's lower edge"),
    },
    {
      span: [box.y1 - clear, Number.POSITIVE_INFINITY],
      does: hole(box.y1 < width - EPSILON ? 'the lip' : "the front's upper edge"),
    },
    ...keyholeUnder(size, middles, lock).map((span) => ({ span, does: pull(say`cover the keyhole`) })),
    {
      span: [Number.NEGATIVE_INFINITY, half],
      does: pull(say`extend ${mm(half - y)} below it`),
    },
    {
      span: [width - half, Number.POSITIVE_INFINITY],
      does: pull(say`extend ${mm(y + half - width)} above the upper edge`),
    },
  ];
  const spans = freeSpans(
    [0, width],
    taken.map(({ span }) => span),
  );
  const met = isWithin(y, spans) ? undefined : taken.find(({ span }) => y > span[0] && y < span[1]);
  if (met === undefined) return { complaints: [], y };
  const nearest = nearestMarkIn(
    y - width / 2,
    spans.map(([from, to]) => [from - width / 2, to - width / 2]),
    notation,
  );
  return {
    complaints: [
      {
        at: ['pulls', 'above'],
        says: met.does,
        ...(nearest === undefined
          ? { remedy: say`make the pull or its holes smaller, or give this drawer no pulls (number: 0)` }
          : { hint: say`${nearest.word}` }),
      },
    ],
    y,
  };
};

/** Whether any of the pulls lies, by as much as it reaches to each side, over what is from `x0` to `x1`. */
const isOver = (
  middles: readonly number[],
  reach: number,
  { x0, x1 }: { readonly x0: number; readonly x1: number },
): boolean => middles.some((x) => x + reach > x0 && x - reach < x1);

/** The heights in which a pull covers the keyhole; none where it is beside it. */
const keyholeUnder = (
  size: PullSpec['size'],
  middles: readonly number[],
  lock?: Lock,
): readonly Interval[] => {
  if (lock === undefined) return [];
  const { at, diameter } = lock.keyhole;
  const [x, y] = at;
  const radius = diameter / 2;
  const half = size.height / 2;
  return isOver(middles, size.width / 2, { x0: x - radius, x1: x + radius })
    ? [[y - radius - half, y + radius + half]]
    : [];
};
