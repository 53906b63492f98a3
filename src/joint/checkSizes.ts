import type { Complaint } from '../units/complaint.ts';
import { EPSILON } from '../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';
import { checkRange, isInRange, type Range } from '../units/range.ts';
import { formatSlope, RUN_RANGE } from '../units/slope.ts';
import { MM_PER_INCH } from '../units/unit.ts';
import { withDefaults } from './defaults.ts';
import type { JointBoard } from './joint.ts';
import * as limits from './jointLimits.ts';
import type { JointSpec } from './jointSpec.ts';
import type { OwnLength } from './kinds/kind.ts';
import { KIND_NAMES, KINDS, kindOf, type OwnLengthKey } from './kinds/kinds.ts';

/** The limit that a size sets to others: itself, or the most it may be where it is out of range. */
const bound = (value: number, range: Range): number => (isInRange(value, range) ? value : range.most);

/** Everything that is wrong with the sizes of a wish, before any tail is placed; defaults are not blamed on the user. */
export const checkSizes = (wish: JointSpec): Complaint[] => {
  const { width, tailBoard, pinBoard, slope, pin, halfPin, proud, chisel } = wish;
  const { WIDTH_RANGE, THICKNESS_RANGE, CHISEL_RANGE, LEAST_PIN } = limits;
  const pinRange = { least: LEAST_PIN, most: bound(width, WIDTH_RANGE) };
  const wrong = [
    ...checkRange(['width'], "the boards' width", width, WIDTH_RANGE),
    ...checkRange(['tailBoard'], "the tail board's thickness", tailBoard, THICKNESS_RANGE),
    ...checkRange(['pinBoard'], "the pin board's thickness", pinBoard, THICKNESS_RANGE),
    ...checkRange(['chisel'], 'the narrowest chisel', chisel, CHISEL_RANGE),
    ...checkRange(['pin'], 'the pin width', pin, pinRange),
    ...checkRange(['halfPin'], 'the lower half pin', halfPin?.lower, pinRange),
    ...checkRange(['halfPin'], 'the upper half pin', halfPin?.upper, pinRange),
    ...checkRange(['proud'], 'the amount proud', proud, {
      least: 0,
      most: bound(tailBoard, THICKNESS_RANGE) / 4,
    }),
  ];
  if (slope !== undefined && !isInRange(slope.run, RUN_RANGE))
    wrong.push({
      at: ['slope'],
      says: say`the slope is ${formatSlope(slope)}; it must be 1:2.5 to 1:20`,
      hint: say`1:7`,
    });
  const thin = [...checkBoard(wish, 'pin', pinBoard), ...checkBoard(wish, 'tail', tailBoard)];
  if (thin.length > 0) return [...wrong, ...thin];
  const { lengths } = kindOf(wish);
  const own = lengths.flatMap((length) => checkOwn(wish, length));
  return [...wrong, ...own, ...checkShoulder(wish), ...checkSmallPin(wish), ...KINDS[wish.kind].check(wish)];
};

/** A mitre must leave the joint room for one tail and two half pins. */
const checkShoulder = (wish: JointSpec): Complaint[] => {
  const { shoulder, shoulderWidth, width } = wish;
  const { shoulders } = kindOf(wish);
  if (shoulders === 'never' || (shoulders === 'wished' && shoulder === undefined)) return [];
  const { WIDTH_RANGE, LEAST_BASE, LEAST_PIN, LEAST_SHOULDER } = limits;
  const edges = shoulders === 'always' || shoulder === 'both' ? 2 : 1;
  const most = (bound(width, WIDTH_RANGE) - LEAST_BASE - 2 * LEAST_PIN) / edges;
  return checkRange(['shoulderWidth'], 'the mitred shoulder', shoulderWidth, { least: LEAST_SHOULDER, most });
};

/** A hound's tooth is for tails that show at their ends, and its sockets are chopped. */
const checkSmallPin = (wish: JointSpec): Complaint[] => {
  const { houndsTooth, width } = wish;
  if (houndsTooth === undefined) return [];
  const open = KIND_NAMES.filter((name) => KINDS[name].sockets === 'open');
  const { chisel } = withDefaults(wish);
  return [
    ...(kindOf(wish).sockets === 'open'
      ? []
      : [
          {
            at: ['spacing'],
            says: say`the tails of a ${wish.kind} joint end behind a lap, where no small pin would show`,
            hint: say`even`,
            remedy: say`choose a ${open.join(' or ')} joint`,
          },
        ]),
    ...checkRange(
      ['smallPin'],
      'the small pin, whose socket the narrowest chisel must enter,',
      houndsTooth.smallPin,
      {
        least: bound(chisel, limits.CHISEL_RANGE),
        most: bound(width, limits.WIDTH_RANGE),
      },
    ),
  ];
};

/** A board too thin for the kind, though not in itself. */
const checkBoard = (wish: JointSpec, board: JointBoard, thickness: number): Complaint[] => {
  const least = kindOf(wish).leastBoard[board];
  if (!isInRange(thickness, limits.THICKNESS_RANGE) || thickness >= least - EPSILON) return [];
  const thinner = KIND_NAMES.filter((name) => KINDS[name].leastBoard[board] <= thickness + EPSILON);
  return [
    {
      at: [`${board}Board`],
      says: say`the ${board} board is ${mm(thickness)} thick; a ${wish.kind} joint needs at least ${atLeast(least)}`,
      remedy: say`choose a ${thinner.join(' or ')} joint`,
    },
  ];
};

/** A range narrower than 1/32 in may hold no mark of an inch rule, and then nothing can be told to try. */
const NARROWEST = MM_PER_INCH / 32;

/** A length of the kind's own; where its board is wrong in itself, only what is given is judged. */
const checkOwn = (wish: JointSpec, { key, word, on, usual, range }: OwnLength<OwnLengthKey>): Complaint[] => {
  const { THICKNESS_RANGE, WIDTH_RANGE } = limits;
  const { tailBoard, pinBoard, width } = wish;
  const sound = isInRange(on === 'tail' ? tailBoard : pinBoard, THICKNESS_RANGE);
  const within = range({
    tailBoard: bound(tailBoard, THICKNESS_RANGE),
    pinBoard: bound(pinBoard, THICKNESS_RANGE),
    width: bound(width, WIDTH_RANGE),
  });
  const ours = sound ? usual(wish) : undefined;
  const hint =
    ours === undefined || within.most - within.least < NARROWEST
      ? undefined
      : say`${atMost(Math.min(ours, within.most))}`;
  return checkRange([key], `the ${word}`, wish[key] ?? ours, within, hint);
};
