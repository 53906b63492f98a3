import * as z from 'zod';
import type { Measure } from '../../drawer/fittings/fittingSpec.ts';
import { checkAngle } from '../../router/limits/cutter.ts';
import type { Complaint, Place, Result } from '../../units/complaint.ts';
import { LONGEST_NAME, parseName } from '../../units/name.ts';
import type { InchNotation } from '../../units/notation.ts';
import { notationTyped } from '../../units/notationTyped.ts';
import { inchesMeant, parseLength } from '../../units/parseLength.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { isInRange, type Range } from '../../units/range.ts';
import { parseSlope } from '../../units/slope.ts';
import type { Unit } from '../../units/unit.ts';

// To compile a schema takes longer than to check the largest plan with it; and the page's security policy forbids code that
// is made at run time.
z.config({ jitless: true });

/** Lengths in mm, as they are listed in a plan. */
export interface LengthList {
  readonly lengths: readonly number[];
  /** What they are typed in, where it is inches among mm. */
  readonly notation?: InchNotation;
}

/** Takes the issues that a transform finds. */
export type Sink = z.core.$RefinementCtx;

/** A complaint, whose lengths are in no unit yet, as an issue of zod; `explainIssues` unpacks it. */
const complain = (
  sink: Sink,
  input: unknown,
  { says, hint, remedy }: Omit<Complaint, 'at'>,
  at: Place = [],
): never => {
  sink.issues.push({
    code: 'custom',
    input,
    path: [...at],
    params: { says, ...(hint && { hint }), ...(remedy && { remedy }) },
  });
  return z.NEVER;
};

/** Each complaint as an issue of zod, at its place in the value. */
export const complainOfAll = (sink: Sink, input: unknown, complaints: readonly Complaint[]): never => {
  for (const complaint of complaints) complain(sink, input, complaint, complaint.at);
  return z.NEVER;
};

/** Text that is parsed by a function of the core; its complaints are kept. */
export const text = <T>(what: string, read: (text: string) => Result<T>) =>
  z.string({ error: what }).transform((given, sink): T => {
    const value = read(given);
    return value.ok ? value.value : complainOfAll(sink, given, value.complaints);
  });

const outside = (value: Phrase, least: Phrase, most: Phrase): Omit<Complaint, 'at'> => ({
  says: say`${value} is out of range; it must be ${least} to ${most}`,
});

const typedLength = () =>
  z.union([z.number(), z.string()], { error: 'a length, such as 18, 18mm, 0.75in or 5-11/16in' });

const readLength = (given: string | number, unit: Unit, { least, most }: Range, sink: Sink): number => {
  const read = parseLength(given, unit);
  if (!read.ok) return complain(sink, given, read.complaints[0] ?? { says: say`this is not a length` });
  const { value } = read;
  if (value >= least && value <= most) return value;
  const meant = inchesMeant(given, unit);
  const inInches = parseLength(given, 'in');
  const hint = inInches.ok && isInRange(inInches.value, { least, most }) ? meant : undefined;
  return complain(sink, given, {
    ...outside(say`${mm(value)}`, say`${atLeast(least)}`, say`${atMost(most)}`),
    ...(hint && { hint }),
  });
};

/** Lengths in mm, from `18`, `18mm`, `3/4in`; bare numbers are in `unit`. */
export const lengths = (unit: Unit) => (range: Range) =>
  typedLength().transform((given, sink): number => readLength(given, unit, range, sink));

/** A length in mm, or a share of another in percent, as a fraction: `25%` is 0.25. */
export const measures = (unit: Unit) => (range: Range, share: Range) =>
  typedLength().transform((given, sink): Measure => {
    const [, percent] = /^\s*([-−]?[\d.,]+)\s*%\s*$/u.exec(String(given)) ?? [];
    if (percent === undefined) return readLength(given, unit, range, sink);
    const value = Number(percent.replace(',', '.').replace('−', '-')) / 100;
    return isInRange(value, share)
      ? { share: value }
      : complain(sink, given, outside(say`${given}`, inPercent(share.least), inPercent(share.most)));
  });

const inPercent = (share: number): Phrase => say`${Math.round(100 * share)}%`;

/** Lists of lengths, each within the range, and at least so many. */
export const lengthLists =
  (unit: Unit) =>
  (range: Range, { what, least = 0 }: { readonly what: string; readonly least?: number }) =>
    z
      .array(
        typedLength().transform((typed, sink) => ({ typed, length: readLength(typed, unit, range, sink) })),
        { error: what },
      )
      .min(least, { error: 'a list of at least one width' })
      .transform((list): LengthList => {
        const notation = notationTyped(
          list.map(({ typed }) => typed),
          unit,
        );
        return { lengths: list.map(({ length }) => length), ...(notation && { notation }) };
      });

/** A bare number written as text, as it should be: without its quotes. */
const unquoted = (input: unknown): string =>
  typeof input === 'string' && input.trim() !== '' && Number.isFinite(Number(input))
    ? `; try ${Number(input)}, without quotes`
    : '';

export const number = ({ least, most }: Range) =>
  z
    .number({ error: ({ input }) => `a number, ${least} to ${most}${unquoted(input)}` })
    .transform((given, sink): number =>
      given >= least && given <= most
        ? given
        : complain(sink, given, outside(say`${given}`, say`${least}`, say`${most}`)),
    )
    .meta({ minimum: least, maximum: most });

export const wholeNumber = ({ least, most }: Range, what = 'a whole number') =>
  z
    .number({ error: ({ input }) => `${what}, ${least} to ${most}${unquoted(input)}` })
    .transform((given, sink): number => {
      if (!Number.isInteger(given))
        return complain(sink, given, {
          says: say`${given} is not whole; it must be a whole number, ${least} to ${most}`,
        });
      return given >= least && given <= most
        ? given
        : complain(sink, given, outside(say`${given}`, say`${least}`, say`${most}`));
    })
    .meta({ type: 'integer', minimum: least, maximum: most });

export const slope = () =>
  z
    .string({
      error: ({ input }) =>
        typeof input === 'number'
          ? `a slope; try "1:${input}", in quotes`
          : 'a slope, such as "1:7", "1 in 7" or "8.13deg"',
    })
    .transform((given, sink) => {
      const read = parseSlope(given);
      if (read.ok) return read.value;
      return complain(sink, given, read.complaints[0] ?? { says: say`this is not a slope` });
    });

/** A cutter's angle off its axis, in degrees. */
export const cutterAngle = () =>
  z
    .number({ error: ({ input }) => `an angle in degrees, such as 8${unquoted(input)}` })
    .transform((given, sink): number => {
      const [wrong] = checkAngle(given);
      return wrong === undefined ? given : complain(sink, given, wrong);
    });

/** One of a few words. */
export const choice = <const Words extends readonly string[]>(...words: Words) =>
  z.enum(words, { error: words.length === 2 ? words.join(' or ') : `one of ${words.join(', ')}` });

/** A name in any language, without blanks round it. */
export const name = (what: string) =>
  z
    .string({
      error: ({ input }) =>
        typeof input === 'number' ? `${what}; try "${input}", in quotes` : `${what}, as text`,
    })
    .transform((given, sink): string => {
      const read = parseName(given);
      if (read.ok) return read.value;
      return complain(sink, given, read.complaints[0] ?? { says: say`this is not a name` });
    })
    .meta({ minLength: 1, maxLength: LONGEST_NAME });

/** A map of known keys, with an example of how it is written. */
export const group = <const Shape extends z.core.$ZodLooseShape>(example: string, shape: Shape) =>
  z.strictObject(shape, { error: `written ${example}` });

/**
 * Keys that may be left out. Their type is that of zod's `exactOptional`, which would run the schema of every absent key
 * and be ten times slower; that differs for `undefined` only, which a plan's text cannot hold.
 */
export const optional = <const Shape extends Readonly<Record<string, z.ZodType>>>(shape: Shape) =>
  Object.fromEntries(Object.entries(shape).map(([key, schema]) => [key, schema.optional()])) as unknown as {
    readonly [Key in keyof Shape]: z.ZodExactOptional<Shape[Key]>;
  };
