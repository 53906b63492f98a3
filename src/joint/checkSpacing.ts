import type { Complaint } from '../units/complaint.ts';
import { atLeast, atMost, type Phrase, say } from '../units/phrase.ts';
import { checkRange, isInRange, lengthOrNaN } from '../units/range.ts';
import { checkCloser } from './closerSpacing.ts';
import { checkGroups } from './groupedSpacing.ts';
import * as limits from './jointLimits.ts';
import type { ListedSpacing, Spacing } from './jointSpec.ts';

/**
 * Everything that is wrong with a wished spacing, whatever the board's width.
 * @param leastTip the narrowest tip that can still be cut, in mm
 * @param kept what of a hound's tooth such a tip keeps; its base unless given
 */
export const checkSpacing = (spacing: Spacing, leastTip: number, kept?: Phrase): Complaint[] => {
  if (spacing.kind === 'listed') return checkList(spacing, leastTip, kept);
  if (spacing.kind === 'grouped') return checkGroups(spacing);
  const wrong: Complaint[] = [];
  const { tails } = spacing;
  if (tails !== undefined && !(Number.isInteger(tails) && tails >= 1))
    wrong.push({
      at: ['tails'],
      says: say`${tails} is no number of tails; it must be a whole number, at least 1`,
      remedy: say`remove it, to have the number chosen`,
    });
  if (spacing.kind === 'graded') {
    const { least, most } = limits.RATIO_RANGE;
    if (!(spacing.ratio >= least && spacing.ratio <= most))
      wrong.push({
        at: ['graded'],
        says: say`the ratio from tail to tail is ${spacing.ratio}; it must be ${least} to ${most}`,
        hint: say`0.9`,
      });
  }
  if (spacing.kind === 'closer-edges') wrong.push(...checkCloser(spacing));
  return wrong;
};

const checkList = ({ tails, pins }: ListedSpacing, leastTip: number, kept?: Phrase): Complaint[] => {
  const wrong: Complaint[] = [];
  const { most } = limits.WIDTH_RANGE;
  const tipRange = { least: leastTip, most };
  if (tails.length === 0)
    wrong.push({ at: ['tails'], says: say`no tails are listed; list at least one width` });
  else if (pins !== undefined && pins.length !== tails.length - 1)
    wrong.push({
      at: ['pins'],
      says: say`${pins.length} ${pins.length === 1 ? 'pin is' : 'pins are'} listed between ${tails.length} tails; there must be ${tails.length - 1} (the half pins are given separately)`,
    });
  tails.forEach((tip, i) => {
    if (!isInRange(tip, tipRange))
      wrong.push({
        at: ['tails', i],
        says: say`tail ${i + 1} is ${lengthOrNaN(tip)} wide; it must be ${atLeast(leastTip)} to ${atMost(tipRange.most)}, for ${kept ?? say`a base of at least ${atLeast(limits.LEAST_BASE)}`}`,
      });
  });
  pins?.forEach((pin, i) => {
    wrong.push(...checkRange(['pins', i], `pin ${i + 1}`, pin, { least: limits.LEAST_PIN, most }));
  });
  return wrong;
};
