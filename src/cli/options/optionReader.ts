import { type Complaint, type Result, under } from '../../units/complaint.ts';
import type { InchNotation } from '../../units/notation.ts';
import { notationTyped } from '../../units/notationTyped.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { Phrase } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';

/** Reads typed options one at a time, and collects complaints, each at its option's name. */
export interface OptionReader<O> {
  /** What a bare number means. */
  readonly unit: Unit;
  /** What is wrong so far. */
  readonly complaints: readonly Complaint[];
  complain(...complaints: readonly Complaint[]): void;
  /** Complains of an option that is not given. */
  need(option: keyof O & string, says: Phrase, hint: Phrase): void;
  /**
   * An option's value; undefined where it is not given, or cannot be read, which is complained of.
   * @param otherwise what is read where it is not given
   */
  value<T>(option: keyof O & string, parse: (typed: string) => Result<T>, otherwise?: string): T | undefined;
  /** A length in mm. */
  length(option: keyof O & string, otherwise?: string): number | undefined;
  /** Lengths in mm, between commas; undefined where any of them cannot be read. */
  lengths(option: keyof O & string): number[] | undefined;
  /** What the lengths between commas are typed in, where it is inches among mm. */
  notation(option: keyof O & string): InchNotation | undefined;
}

export const optionReader = <O extends object>(options: O, unit: Unit): OptionReader<O> => {
  const complaints: Complaint[] = [];
  const complain = (...more: readonly Complaint[]) => complaints.push(...more);
  const typed = (option: keyof O & string, otherwise?: string): string | undefined => {
    const text = options[option] ?? otherwise;
    return typeof text === 'string' ? text : undefined;
  };
  const read = <T>(option: string, parsed: Result<T>): T | undefined => {
    if (parsed.ok) return parsed.value;
    complain(...under([option], parsed.complaints));
    return undefined;
  };
  const value = <T>(
    option: keyof O & string,
    parse: (text: string) => Result<T>,
    otherwise?: string,
  ): T | undefined => {
    const text = typed(option, otherwise);
    return text === undefined ? undefined : read(option, parse(text));
  };
  return {
    unit,
    complaints,
    complain,
    need: (option, says, hint) => {
      if (options[option] === undefined) complain({ at: [option], says, hint });
    },
    value,
    length: (option, otherwise) => value(option, (text) => parseLength(text, unit), otherwise),
    lengths: (option) => {
      const each = typed(option)
        ?.split(',')
        .map((part) => read(option, parseLength(part, unit)));
      return each?.every((length) => length !== undefined) ? each : undefined;
    },
    notation: (option) => notationTyped(typed(option)?.split(',') ?? [], unit),
  };
};
