import { optionName } from '../../files/failure.ts';
import type { CornerWish, HalfPins, JointSpec, Spacing } from '../../joint/jointSpec.ts';
import {
  foreignLengths,
  isKind,
  type JointKind,
  KINDS,
  kindFor,
  OWN_LENGTH_KEYS,
  type OwnLengthKey,
} from '../../joint/kinds/kinds.ts';
import {
  checkSpacingWish,
  KEYS_OF_SPACINGS,
  SPACING_OF,
  SPACING_WORDS,
  SPACINGS,
  type SpacingWish,
  strayKeys,
  wishedSpacing,
} from '../../joint/spacingWish.ts';
import type { Cutting } from '../../router/limits/cutting.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { parseName } from '../../units/name.ts';
import type { Notation } from '../../units/notation.ts';
import { isInInches } from '../../units/parseLength.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { parseSlope } from '../../units/slope.ts';
import { type JointOptions, KINDS_IN_WORDS, type OwnOptions } from './jointOptions.ts';
import { bareUnit, notationShown } from './notationOptions.ts';
import { type OptionReader, optionReader } from './optionReader.ts';
import { readCutterOptions } from './readCutterOptions.ts';

/** The lengths that only some kinds have, as far as they are typed. */
export const lengthsTyped = (options: OwnOptions): OwnLengthKey[] =>
  OWN_LENGTH_KEYS.filter((key) => options[key] !== undefined);

/** Sizes of a drawer's corner, to try where one is missing. */
const USUAL = { width: '96mm', tailBoard: '11mm', pinBoard: '20mm' } as const;

/** What the options say, as far as it can be read. */
export interface ReadOptions {
  readonly name: string;
  /** How lengths are shown: as `--units` and `--fractions` say, or in inches where every board is given in inches. */
  readonly units: Notation;
  /** Without what could not be read; absent where a board's size is missing. */
  readonly spec?: JointSpec;
  /** A machine's spacing in mm, which replaces the spec's tails and half pins. */
  readonly pitch?: number;
  /** The tools that the corner is cut with; absent for work by hand. */
  readonly cutting?: Cutting;
  /** Each at the option's name. */
  readonly complaints: readonly Complaint[];
}

export const readJointOptions = (options: JointOptions): ReadOptions => {
  const read = optionReader(options, bareUnit(options));
  const { complain } = read;
  const { shown, complaints } = notationShown(options, allInInches(options) ? 'in' : 'mm');
  complain(...complaints);
  const needed = (key: 'width' | 'tailBoard' | 'pinBoard', what: string): number | undefined => {
    read.need(key, say`${what} is missing`, say`${optionName([key])} ${USUAL[key]}`);
    return read.length(key);
  };

  const width = needed('width', "the boards' width");
  const tailBoard = needed('tailBoard', "the tail board's thickness");
  const pinBoard = needed('pinBoard', "the pin board's thickness");
  const named = options.kind ?? kindFor(lengthsTyped(options));
  const kind = isKind(named) ? named : undefined;
  if (kind === undefined)
    complain({
      at: ['kind'],
      says: say`${quote(named)} is not a kind of joint; the kinds are ${KINDS_IN_WORDS}`,
    });
  const own: { [Key in OwnLengthKey]?: number } = {};
  for (const key of OWN_LENGTH_KEYS) {
    const given = read.length(key);
    if (given !== undefined) own[key] = given;
  }
  if (kind !== undefined)
    for (const { key, word } of foreignLengths(kind, own))
      complain({
        at: [key],
        says: say`a ${kind} joint has no ${word}`,
        hint: say`--kind ${kindFor([key])}`,
      });
  const slope = read.value('slope', parseSlope);
  const pin = read.length('pin');
  const proud = read.length('proud');
  const chisel = read.length('chisel');
  const shoulder = read.value('shoulder', parseShoulder);
  const shoulderWidth = read.length('shoulderWidth');
  if (kind !== undefined) checkMitred(options, kind, complain);
  const mitre = readMitre(options.mitre, complain);
  const halfPin = halfPins(read.lengths('halfPin'), complain);
  const spacing = readSpacing(options, readTails(options, read), read);
  const name = read.value('name', parseName);
  const pitch = read.length('pitch');
  if (pitch !== undefined) checkPitchAlone(options, complain);
  const cutting = readCutterOptions(options, read);
  const known = {
    name: name ?? 'Corner',
    units: shown,
    ...(pitch !== undefined && { pitch }),
    ...(cutting && { cutting }),
    complaints: read.complaints,
  };
  if (width === undefined || tailBoard === undefined || pinBoard === undefined) return known;
  const common = {
    width,
    tailBoard,
    pinBoard,
    ...spacing,
    notation: shown,
    ...(slope && { slope }),
    ...(pin !== undefined && { pin }),
    ...(halfPin && { halfPin }),
    ...(shoulder && { shoulder }),
    ...(shoulderWidth !== undefined && { shoulderWidth }),
    ...(mitre && { mitre }),
    ...(proud !== undefined && { proud }),
    ...(chisel !== undefined && { chisel }),
  };
  return { ...known, spec: { ...common, ...KINDS[kind ?? kindFor([])].wish(own) } };
};

const allInInches = ({ width, tailBoard, pinBoard }: JointOptions): boolean =>
  [width, tailBoard, pinBoard].every((text) => text !== undefined && isInInches(text, 'mm'));

type Complain = (complaint: Complaint) => void;

/** Options for a mitre where the corner has none. */
const checkMitred = (
  { shoulder, shoulderWidth, mitre }: JointOptions,
  kind: JointKind,
  complain: Complain,
): void => {
  const { shoulders } = KINDS[kind];
  if (shoulders === 'always' || (shoulders === 'wished' && shoulder !== undefined)) return;
  const instead = shoulders === 'wished' ? say`--shoulder lower` : say`--kind secret-mitred`;
  if (mitre !== undefined)
    complain({ at: ['mitre'], says: say`a ${kind} joint has no mitre without a shoulder`, hint: instead });
  if (shoulderWidth !== undefined)
    complain({ at: ['shoulderWidth'], says: say`there is no shoulder to be so wide`, hint: instead });
};

const parseShoulder = (text: string): Result<NonNullable<JointSpec['shoulder']>> =>
  text === 'lower' || text === 'upper' || text === 'both'
    ? accept(text)
    : refuse({ at: [], says: say`${quote(text)} is no edge to mitre; it must be lower, upper or both` });

/** How boards of unequal thickness meet in a mitre. */
const readMitre = (typed: string | undefined, complain: Complain): 'corner' | undefined => {
  if (typed !== undefined && typed !== 'corner')
    complain({ at: ['mitre'], says: say`${quote(typed)} is no way to mitre boards`, hint: say`corner` });
  return typed === 'corner' ? typed : undefined;
};

const halfPins = (widths: readonly number[] | undefined, complain: Complain): HalfPins | undefined => {
  if (widths === undefined) return undefined;
  const [lower, upper = lower, ...more] = widths;
  if (more.length > 0)
    complain({
      at: ['halfPin'],
      says: say`there are two half pins, so one width or two`,
      hint: say`${mm(6)} or ${mm(6)},${mm(8)}`,
    });
  return lower === undefined || upper === undefined ? undefined : { lower, upper };
};

const BESIDE_NO_PITCH = [
  ...(['tails', 'pins', 'graded', 'halfPin', 'shoulder'] as const),
  ...(['spacing', ...KEYS_OF_SPACINGS] as const),
];

/** Complains of options for the spacing beside a pitch, which determines it. */
const checkPitchAlone = (options: JointOptions, complain: Complain): void => {
  const beside = BESIDE_NO_PITCH.filter((key) => options[key] !== undefined);
  if (beside.length > 0)
    complain({
      at: ['pitch'],
      says: say`the pitch sets the tails and both half pins by itself, over the whole width`,
      remedy: say`remove ${beside.map((key) => optionName([key])).join(' and ')}`,
    });
};

/** @param plain the tails as they are in no other spacing */
const readSpacing = (
  options: JointOptions,
  plain: Spacing,
  read: OptionReader<JointOptions>,
): Pick<CornerWish, 'spacing' | 'houndsTooth'> => {
  const { tails, graded } = options;
  const [spacing, groups] = [read.value('spacing', parseSpacing), read.value('groups', parseGroups)];
  const [groupPin, smallPin] = [read.length('groupPin'), read.length('smallPin')];
  const [closer, closerTails] = [read.value('closer', parseRatio), read.value('closerTails', parseWhole)];
  const wish: SpacingWish = {
    ...(spacing && { spacing }),
    ...(groups && { groups }),
    ...(groupPin !== undefined && { groupPin }),
    ...(smallPin !== undefined && { smallPin }),
    ...(closer !== undefined && { closer }),
    ...(closerTails !== undefined && { closerTails }),
  };
  read.complain(
    // Groups that cannot be read are not missing.
    ...checkSpacingWish(
      { ...wish, ...(options.groups !== undefined && { groups: groups ?? [] }), tails, graded },
      isList(tails),
    ),
    ...strayKeys(wish).map((key): Complaint => {
      const hint = say`--spacing ${SPACING_OF[key]}`;
      return { at: [key], says: say`this is for tails in another spacing`, hint };
    }),
  );
  return wishedSpacing(wish, plain);
};

const parseSpacing = (text: string): Result<NonNullable<SpacingWish['spacing']>> => {
  const spacing = SPACINGS.find((each) => each === text);
  return spacing === undefined
    ? refuse({ at: [], says: say`${quote(text)} is no spacing; it must be ${SPACING_WORDS}` })
    : accept(spacing);
};

const parseGroups = (text: string): Result<readonly number[]> =>
  /^\s*\d+\s*(?:,\s*\d+\s*)*$/u.test(text)
    ? accept(text.split(',').map(Number))
    : refuse({
        at: [],
        says: say`${quote(text)} lists no groups; each must be a whole number of tails`,
        hint: say`2,3,2`,
      });

const readTails = (options: JointOptions, read: OptionReader<JointOptions>): Spacing => {
  const { complain } = read;
  const { tails, pins, graded, gradedFrom = 'edge' } = options;
  const listed = isList(tails);
  if (listed && graded !== undefined)
    complain({ at: ['graded'], says: say`listed tails are not graded as well; give one or the other` });
  if (!listed && pins !== undefined)
    complain({
      at: ['pins'],
      says: say`listed pins need listed tails`,
      hint: say`--tails ${mm(20)},${mm(25)},${mm(20)} --pins ${mm(5)},${mm(5)}`,
    });
  if (graded === undefined && options.gradedFrom !== undefined)
    complain({ at: ['gradedFrom'], says: say`there is no grading to count`, hint: say`--graded 0.9` });
  if (gradedFrom !== 'edge' && gradedFrom !== 'middle')
    complain({ at: ['gradedFrom'], says: say`${quote(gradedFrom)} must be edge or middle` });
  if (listed) {
    const widths = read.lengths('tails');
    const between = read.lengths('pins');
    const notation = read.notation('tails');
    return widths === undefined
      ? { kind: 'even' }
      : { kind: 'listed', tails: widths, ...(between && { pins: between }), ...(notation && { notation }) };
  }
  const count = read.value('tails', parseCount);
  const counted = count === undefined ? {} : { tails: count };
  const ratio = read.value('graded', parseRatio);
  return ratio === undefined
    ? { kind: 'even', ...counted }
    : {
        kind: 'graded',
        ratio,
        from: gradedFrom === 'middle' ? 'middle' : 'edge',
        ...counted,
      };
};

/** Whether an option gives the width of each tail. */
const isList = (tails: string | undefined): boolean => tails?.includes(',') === true;

const parseRatio = (text: string): Result<number> =>
  /^\s*(?:\d+(?:[.,]\d+)?|[.,]\d+)\s*$/u.test(text)
    ? accept(Number(text.replace(',', '.')))
    : refuse({ at: [], says: say`${quote(text)} is not a number`, hint: say`0.9` });

const parseCount = (text: string): Result<number> => countOf(text, ', or tip widths with commas', 5);

const parseWhole = (text: string): Result<number> => countOf(text, '', 2);

const countOf = (text: string, or: string, example: number): Result<number> =>
  /^\s*\d+\s*$/u.test(text)
    ? accept(Number(text))
    : refuse({
        at: [],
        says: say`${quote(text)} is not a number of tails; it must be a whole number from 1${or}`,
        hint: say`${example}`,
      });
