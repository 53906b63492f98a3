import type { Command } from 'commander';
import { checkMargin, DEFAULT_MARGIN } from '../paper/printable.ts';
import { type Paper, parsePaper } from '../paper/sizes.ts';
import { type Complaint, type Result, under } from '../units/complaint.ts';
import { parseLength } from '../units/parseLength.ts';
import type { Unit } from '../units/unit.ts';

/** The options that describe what is printed on, as typed. */
export interface PaperOptions {
  readonly paper?: string;
  readonly margin?: string;
}

export const addPaperOptions = (command: Command): Command =>
  command
    .option('--paper <size>', 'A5 to A0, Letter, Legal, Tabloid, WxH or 610xroll (A4; Letter for inches)')
    .option('--margin <length>', 'what the printer leaves blank, at least 5 mm (6 mm)');

/** Reads them in the unit that the maker reads in; what is wrong is added to the complaints. */
export const readPaperOptions = (
  options: PaperOptions,
  units: Unit,
  complaints: Complaint[],
): { readonly paper: Paper; readonly margin: number } | undefined => {
  const value = <T>(key: keyof PaperOptions, parsed: Result<T>): T | undefined => {
    if (parsed.ok) return parsed.value;
    complaints.push(...under([key], parsed.complaints));
    return undefined;
  };
  const paper = value('paper', parsePaper(options.paper ?? (units === 'in' ? 'Letter' : 'A4')));
  const margin =
    options.margin === undefined ? DEFAULT_MARGIN : value('margin', parseLength(options.margin, units));
  const wrong = margin === undefined ? [] : checkMargin(margin);
  complaints.push(...wrong);
  return paper === undefined || margin === undefined || wrong.length > 0 ? undefined : { paper, margin };
};
