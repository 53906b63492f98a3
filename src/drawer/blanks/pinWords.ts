import type { PinFault } from '../../stock/pins/pinFaults.ts';
import type { PlaceFault } from '../../stock/pins/placeFault.ts';
import type { Plank } from '../../stock/plank.ts';
import { extentsOf } from '../../stock/polygon.ts';
import type { Wanted } from '../../stock/wanted.ts';
import { listNames } from '../../units/listNames.ts';
import { mm, type Phrase, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import { blankName } from './blankWords.ts';
import type { PartBlank } from './partBlanks.ts';

/** What keeps a blank from a place of a board, to be said of the blank: `lies on the check at 40, 120 of "Ash 2"`. */
export const placeFaultWords = (
  fault: PlaceFault,
  { name, stocks, thickness }: Pick<Plank, 'name' | 'stocks' | 'thickness'>,
  wanted: Pick<Wanted, 'thickness'>,
): Phrase => {
  switch (fault.is) {
    case 'stock':
      return say`does not come out of a board for ${stocks.join(', ')}`;
    case 'thin':
      return say`needs a board of ${mm(wanted.thickness)}, and ${quote(name)} is ${mm(thickness)} thick`;
    case 'grain':
      return say`cannot lie across the board: its grain runs along it`;
    case 'outside':
      return say`does not lie inside ${quote(name)} with its ends cut off`;
    case 'defect': {
      const { x0, y0, x1, y1 } = extentsOf(fault.defect.outline);
      return say`lies on a defect that it may not have there: the ${fault.defect.kind} at ${mm((x0 + x1) / 2)}, ${mm((y0 + y1) / 2)}`;
    }
  }
};

/** Why a part cannot be pinned, to be said of the part. */
export const pinFaultWords = (
  fault: PinFault,
  plank: Plank,
  wanted: PartBlank,
  blanks: readonly PartBlank[],
): Phrase => {
  const nameOf = (index: number) => blankName(blanks[index] as PartBlank);
  switch (fault.is) {
    case 'no room':
      return say`is too large for ${quote(plank.name)} with its ends cut off`;
    case 'cut':
      return say`lies over cuts that have been made in ${quote(plank.name)}, or beside what they leave`;
    case 'pin':
      return say`lies on ${nameOf(fault.other)}, which is pinned there, or less than a saw cut beside it`;
    case 'stuck':
      return say`cannot be sawn free: no cuts from edge to edge part it from ${listNames(fault.others.map(nameOf))}`;
    default:
      return placeFaultWords(fault, plank, wanted);
  }
};
