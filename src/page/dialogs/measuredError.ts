import type { PrinterError } from '../../paper/printerCorrection.ts';
import { accuracyText, finenessOf } from '../../paper/proofAccuracy.ts';
import { proofLengths } from '../../paper/proofLengths.ts';
import { readProof } from '../../paper/readProof.ts';
import { accept, type Result, refuse } from '../../units/complaint.ts';
import { parseLength } from '../../units/parseLength.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';
import { find } from '../browser/dom.ts';
import type { Printing } from '../sheets/readPrinting.ts';

/** A printer's error, and how true it is with the correction, in words. */
export interface ReadError {
  readonly error: PrinterError;
  readonly accuracy: string;
}

const SIDES = ['measured-x', 'measured-y'];
const DIAGONALS = ['measured-d1', 'measured-d2'];

/** A printer's error, from the lengths that were measured on its proof sheet and typed into the dialog. */
export const measuredError = ({ paper, margin }: Printing, unit: Unit): Result<ReadError> => {
  const typed = (id: string): string => find(id, HTMLInputElement).value.trim();
  const nominal = proofLengths(paper, margin, unit);
  if (!nominal.ok) return nominal;
  const [x, y, d1, d2] = [...SIDES, ...DIAGONALS].map((id) =>
    typed(id) === '' ? undefined : parseLength(typed(id), unit),
  );
  const unread = [x, y, d1, d2].flatMap((each) => (each?.ok === false ? each.complaints : []));
  if (unread.length > 0) return refuse(...unread);
  if (!x?.ok || !y?.ok)
    return refuse({
      at: [],
      says: say`x and y are both needed: x should be near ${mm(nominal.value.x)}, y near ${mm(nominal.value.y)}`,
    });
  const measured = {
    x: x.value,
    y: y.value,
    ...(d1?.ok && { d1: d1.value }),
    ...(d2?.ok && { d2: d2.value }),
  };
  const error = readProof(nominal.value, measured);
  if (!error.ok) return error;
  const fineness = {
    sides: finenessOf(SIDES.map(typed), unit),
    diagonals: finenessOf(DIAGONALS.map(typed), unit),
  };
  return accept({
    error: error.value,
    accuracy: accuracyText(nominal.value, measured, fineness, unit),
  });
};
