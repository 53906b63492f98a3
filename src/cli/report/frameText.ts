import type { FramePart } from '../../drawer/arrangement/frameParts.ts';
import { roughThickness, roughWidth } from '../../drawer/cuttingList.ts';
import { TRIAL_SPARE, TRIM_SPARE } from '../../drawer/drawerLimits.ts';
import { table } from '../../render/table.ts';
import type { Sawing } from '../../stock/usualSawing.ts';
import { formatLength, formatNumber } from '../../units/formatLength.ts';
import { type Notation, unitOf } from '../../units/notation.ts';
import { terminalLines } from './jointText.ts';

/** The parts of a cabinet's frame, and rails that are dovetailed into its sides; no lines where there are none. */
export const framePartsText = (frame: readonly FramePart[], units: Notation): string[] => {
  if (frame.length === 0) return [];
  const number = (value: number): string => formatNumber(value, units);
  return [
    ...terminalLines(
      `The cabinet's frame: the length has tenons and tails, the one between shoulders has not; the rough length has ${formatLength(TRIM_SPARE[unitOf(units)], units)} more at each end, or for a tail its depth and ${formatLength(TRIAL_SPARE, units)}.`,
    ),
    ...table(
      ['part', 'quantity', 'length', 'shoulders', 'width', 'thickness', 'rough', 'wood'],
      frame.map(({ part, count, length, shoulders, width, thickness, roughLength, species = '' }) => [
        part,
        String(count),
        ...[length, shoulders, width, thickness, roughLength].map(number),
        species,
      ]),
      [false, true, true, true, true, true, true, false],
    ),
    '',
    ...frame.flatMap(({ part, length, width, thickness, drawers }) =>
      drawers.length === 0
        ? []
        : terminalLines(
            `${part} of ${[length, width, thickness].map((each) => formatLength(each, units)).join(' x ')}: ${drawers.join(', ')}`,
          ),
    ),
  ];
};

/** A part of a frame for another program. */
export const framePartRecord = (part: FramePart, saw: Sawing) => ({
  ...part,
  roughWidth: roughWidth(part, saw),
  roughThickness: roughThickness(part, saw),
  species: part.species ?? null,
});
