import type { Paper } from '../../paper/paperSizes.ts';
import type { PrinterError } from '../../paper/printerCorrection.ts';
import { proofLengths } from '../../paper/proofLengths.ts';
import { readProof } from '../../paper/readProof.ts';
import { type Result, refuse } from '../../units/complaint.ts';
import { parseLength } from '../../units/parseLength.ts';
import { mm, say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';
import { find } from '../browser/dom.ts';

/** What is printed on. */
export interface Printing {
  readonly paper: Paper;
  readonly margin: number;
}

/** A printer's error, from the lengths that were measured on its proof sheet and typed into the dialog. */
export const measuredError = ({ paper, margin }: Printing, unit: Unit): Result<PrinterError> => {
  const measured = (id: string): Result<number> | undefined => {
    const { value } = find(id, HTMLInputElement);
    return value.trim() === '' ? undefined : parseLength(value, unit);
  };
  const nominal = proofLengths(paper, margin, unit);
  if (!nominal.ok) return nominal;
  const [x, y, d1, d2] = ['measured-x', 'measured-y', 'measured-d1', 'measured-d2'].map(measured);
  const unread = [x, y, d1, d2].flatMap((each) => (each?.ok === false ? each.complaints : []));
  if (unread.length > 0) return refuse(...unread);
  if (!x?.ok || !y?.ok)
    return refuse({
      at: [],
      says: say`x and y are both needed: x should be near ${mm(nominal.value.x)}, y near ${mm(nominal.value.y)}`,
    });
  return readProof(nominal.value, {
    x: x.value,
    y: y.value,
    ...(d1?.ok && { d1: d1.value }),
    ...(d2?.ok && { d2: d2.value }),
  });
};
