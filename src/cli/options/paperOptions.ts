import type { Command } from 'commander';
import { type Paper, parsePaper } from '../../paper/paperSizes.ts';
import { checkMargin, DEFAULT_MARGIN } from '../../paper/printable.ts';
import type { OptionReader } from './optionReader.ts';

/** The options that describe what is printed on, as typed. */
export interface PaperOptions {
  readonly paper?: string;
  readonly margin?: string;
}

/** The option of what shows names on paper. */
export const FONT_OPTION = [
  '--font <file>',
  'a TrueType or OpenType file, for letters that the font of the sheets lacks',
] as const;

export const addPaperOptions = (command: Command): Command =>
  command
    .option('--paper <size>', 'A5 to A0, Letter, Legal, Tabloid, WxH or 610xroll (A4; Letter for inches)')
    .option('--margin <length>', 'what the printer leaves blank, at least 5 mm (6 mm)');

/** Paper and margin, bare numbers in the reader's unit; undefined where they are wrong. */
export const readPaperOptions = (
  read: OptionReader<PaperOptions>,
): { readonly paper: Paper; readonly margin: number } | undefined => {
  const paper = read.value('paper', parsePaper, read.unit === 'in' ? 'Letter' : 'A4');
  const margin = read.length('margin', `${DEFAULT_MARGIN}mm`);
  const wrong = margin === undefined ? [] : checkMargin(margin);
  read.complain(...wrong);
  return paper === undefined || margin === undefined || wrong.length > 0 ? undefined : { paper, margin };
};
