import type { Fingers } from '../../router/fingers/fingers.ts';
import { settleFingers } from '../../router/fingers/settleFingers.ts';
import { type Cutting, checkCutting } from '../../router/limits/cutting.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { atOption } from './atOption.ts';
import type { CutterOptions } from './cutterOptions.ts';
import { type OptionReader, optionReader } from './optionReader.ts';

const CUTTER_KEYS = ['cutterDiameter', 'cutterAngle', 'cutterLength', 'cutterNeck'] as const;
/** Tools that may be changed beside a plan: no layout depends on them, but on a bush that fingers share. */
const TOOL_KEYS = ['straight', 'bush', 'pinBush'] as const;

/** Fingers are set to a layout as a cutter is. */
const FINGER_KEYS = ['fingersTogether', 'fingersBush', 'fingersPairs', 'fingersBar'] as const;

const EXAMPLE = say`--cutter-diameter ${mm(12.7)} --cutter-angle 8 --cutter-length ${mm(20)}`;

/** The tools, as far as they can be read; undefined where no cutter is given. */
export const readCutterOptions = (
  options: CutterOptions,
  read: OptionReader<CutterOptions>,
): Cutting | undefined => {
  const tools = readTools(read);
  if (CUTTER_KEYS.every((key) => options[key] === undefined)) {
    const typed = [...TOOL_KEYS, ...FINGER_KEYS].filter((key) => options[key] !== undefined);
    read.complain(
      ...typed.map((key) => ({
        at: [key],
        says: say`there is no dovetail cutter for it to go with`,
        hint: EXAMPLE,
      })),
    );
    return undefined;
  }
  read.need('cutterDiameter', say`the cutter's diameter is missing`, EXAMPLE);
  const diameter = read.length('cutterDiameter');
  read.need('cutterAngle', say`the cutter's angle is missing`, EXAMPLE);
  const angle = read.value('cutterAngle', parseAngle);
  read.need('cutterLength', say`the cutter's cutting length is missing`, EXAMPLE);
  const length = read.length('cutterLength');
  const neck = read.length('cutterNeck');
  const fingers = readFingers(options, read, tools.bush);
  if (diameter === undefined || angle === undefined || length === undefined) return undefined;
  const cutting: Cutting = {
    cutter: { diameter, angle, length, ...(neck !== undefined && { neck }) },
    ...tools,
    ...(fingers && { fingers }),
  };
  const wrong = checkCutting(cutting).map((each) => atOption(each));
  read.complain(...wrong);
  return wrong.length > 0 ? undefined : cutting;
};

/** The fingers, as far as they can be read; undefined where none are given. */
const readFingers = (
  options: CutterOptions,
  read: OptionReader<CutterOptions>,
  guideBush: number | undefined,
): Fingers | undefined => {
  if (FINGER_KEYS.every((key) => options[key] === undefined)) return undefined;
  read.need(
    'fingersTogether',
    say`the width of a pair of fingers pushed together is missing`,
    say`--fingers-together ${mm(20)}`,
  );
  const together = read.length('fingersTogether');
  const bush = read.length('fingersBush');
  const pairs = read.value('fingersPairs', parsePairs);
  const bar = read.length('fingersBar');
  if (together === undefined || (bush === undefined && options.fingersBush !== undefined)) return undefined;
  const settled = settleFingers(
    {
      together,
      ...(bush !== undefined && { bush }),
      ...(pairs !== undefined && { pairs }),
      ...(bar !== undefined && { bar }),
    },
    guideBush,
  );
  if (settled.ok) return settled.value;
  if (options.bush === undefined) read.complain(...settled.complaints.map((each) => atOption(each)));
  return undefined;
};

const parsePairs = (text: string): Result<number> =>
  /^\s*\d+\s*$/u.test(text)
    ? accept(Number(text))
    : refuse({
        at: [],
        says: say`${quote(text)} is not a number of pairs of fingers; it must be a whole number from 1`,
        hint: say`10`,
      });

/** A plan's tools with those that are typed beside it in their place; a tool without a cutter is complained of. */
export const changeTools = (
  planned: Cutting | undefined,
  options: CutterOptions,
  unit: Notation,
): Result<Cutting | undefined> => {
  const typed = TOOL_KEYS.find((key) => options[key] !== undefined);
  if (typed === undefined) return accept(planned);
  if (planned === undefined)
    return refuse({
      at: [typed],
      says: say`the plan names no cutter for it to go with`,
      hint: say`cutter: {diameter: ${mm(12.7)}, angle: 8, length: ${mm(20)}} in the plan`,
    });
  if (options.bush !== undefined && planned.fingers !== undefined && planned.fingers.bush === planned.bush)
    return refuse({
      at: ['bush'],
      says: say`the plan's fingers are set for its own bush`,
      remedy: say`change cutter.bush in the plan, or give the fingers a bush there (fingers.bush)`,
    });
  const read = optionReader(options, unitOf(unit));
  const cutting = { ...planned, ...readTools(read) };
  const wrong = [...read.complaints, ...checkCutting(cutting).map((each) => atOption(each))];
  return wrong.length > 0 ? refuse(...wrong) : accept(cutting);
};

const ANGLE = /^(\d+(?:[.,]\d+)?)\s*(?:deg|degrees?|°)?$/iu;

/** Reads an angle: `8`, `8deg`, `8°`. */
export const parseAngle = (text: string): Result<number> => {
  const number = ANGLE.exec(text.trim())?.[1];
  return number === undefined
    ? refuse({ at: [], says: say`${quote(text)} is not an angle in degrees`, hint: say`8` })
    : accept(Number(number.replace(',', '.')));
};

const readTools = (read: OptionReader<CutterOptions>): Pick<Cutting, (typeof TOOL_KEYS)[number]> =>
  Object.fromEntries(
    TOOL_KEYS.flatMap((key) => {
      const length = read.length(key);
      return length === undefined ? [] : [[key, length]];
    }),
  );
