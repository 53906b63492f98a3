import type { Command } from 'commander';
import { type Cutting, checkCutting } from '../../router/limits/cutting.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { atOption } from './atOption.ts';
import { type OptionReader, optionReader } from './optionReader.ts';

/** The options that describe what a corner is cut with, as typed. */
export interface CutterOptions {
  readonly cutterDiameter?: string;
  readonly cutterAngle?: string;
  readonly cutterLength?: string;
  readonly cutterNeck?: string;
  readonly straight?: string;
  readonly bush?: string;
  readonly pinBush?: string;
}

export const addCutterOptions = (command: Command): Command =>
  command
    .optionsGroup('A dovetail cutter in a router, that the corner is set out for:')
    .option('--cutter-diameter <length>', 'of the dovetail cutter at its end, where it is widest')
    .option('--cutter-angle <degrees>', 'of its side to its axis, in degrees: 8 cuts 1:7.12, 14 cuts 1:4.01')
    .option('--cutter-length <length>', 'how far up its side it cuts')
    .option('--cutter-neck <length>', 'its diameter above the cutting length')
    .option('--straight <length>', 'diameter of the straight cutter for through pins')
    .option('--bush <length>', 'outside diameter of the guide bush, for guides to make')
    .option(
      '--pin-bush <length>',
      'outside diameter of the guide bush for the straight cutter, if different',
    );

const CUTTER_KEYS = ['cutterDiameter', 'cutterAngle', 'cutterLength', 'cutterNeck'] as const;
/** Tools that may be changed beside a plan: no layout depends on them. */
const TOOL_KEYS = ['straight', 'bush', 'pinBush'] as const;

const EXAMPLE = say`--cutter-diameter ${mm(12.7)} --cutter-angle 8 --cutter-length ${mm(20)}`;

/** The tools, as far as they can be read; undefined where no cutter is given. */
export const readCutterOptions = (
  options: CutterOptions,
  read: OptionReader<CutterOptions>,
): Cutting | undefined => {
  const tools = readTools(read);
  if (CUTTER_KEYS.every((key) => options[key] === undefined)) {
    const typed = TOOL_KEYS.filter((key) => options[key] !== undefined);
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
  if (diameter === undefined || angle === undefined || length === undefined) return undefined;
  const cutting: Cutting = {
    cutter: { diameter, angle, length, ...(neck !== undefined && { neck }) },
    ...tools,
  };
  const wrong = checkCutting(cutting).map((each) => atOption(each));
  read.complain(...wrong);
  return wrong.length > 0 ? undefined : cutting;
};

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
