import { accept, type Result, refuse } from '../units/complaint.ts';
import { nameKey } from '../units/name.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';

/** Whether a printer can have been saved under a name: it is something to type again. */
export const isPrinterName = (text: string): boolean =>
  /^[\p{L}\p{N}][\p{L}\p{M}\p{N} ._-]{0,39}$/u.test(text);

/** What stands for no printer where one is chosen. */
const NO_PRINTER = 'none';

/** Reads the name that a printer is to be saved under; complaints have an empty place. */
export const readPrinterName = (typed: string): Result<string> => {
  if (!isPrinterName(typed))
    return refuse({
      at: [],
      says: say`a printer is named with letters, digits, spaces, dots and hyphens, 40 at the most`,
      hint: say`office`,
    });
  return nameKey(typed) === NO_PRINTER
    ? refuse({
        at: [],
        says: say`${quote(typed)} stands for printing without a correction, so no printer can be called that`,
        hint: say`office`,
      })
    : accept(typed);
};
