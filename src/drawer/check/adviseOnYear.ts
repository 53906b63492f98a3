import { type Complaint, under } from '../../units/complaint.ts';
import { roundUp } from '../../units/epsilon.ts';
import { atLeast, atMost, mm, say } from '../../units/phrase.ts';
import { adviseBottom } from '../../wood/bottomSeason.ts';
import { GAP_BAND } from '../../wood/gapBand.ts';
import { bottomThroughYear, screwPlace } from '../bottomDepth.ts';
import type { Sizes } from '../drawerSizes.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import { BESIDE_BAND, gapsOf } from '../gaps.ts';

/** Advice where a drawer will stick, or a gap will show, in the year after its making; places start in the drawer's entry. */
export const adviseOnYear = (spec: DrawerSpec, sizes: Sizes): Complaint[] => {
  const advice: Complaint[] = [];
  const bottom = bottomThroughYear(spec, sizes);
  if (bottom !== undefined) advice.push(...under(['bottom'], adviseBottom(bottom, screwPlace(spec, sizes))));
  const gaps = gapsOf(spec, sizes);
  if (gaps === undefined) return advice;
  const { front, side, beside, leave } = gaps;
  const enough = roundUp(leave, 10);
  const [tightest, board] =
    front.gap.dampest <= side.gap.dampest ? ([front, 'front'] as const) : ([side, 'sides'] as const);
  if (tightest.verdict.startsWith('sticks'))
    advice.push({
      at: ['fit', 'top'],
      says: say`when dampest, the gap above the ${board} is ${mm(tightest.gap.dampest)}, so the drawer will stick; it should be at least ${atLeast(GAP_BAND.least)}`,
      hint: say`auto, or ${mm(enough)}`,
    });
  if (front.verdict.endsWith('shows'))
    advice.push({
      at: ['fit', 'top'],
      says: say`when driest, the gap above the front is ${mm(front.gap.driest)} and will show; it should be at most ${atMost(GAP_BAND.most)}`,
      ...(front.gap.making > enough
        ? { hint: say`auto, or ${mm(enough)}` }
        : { remedy: say`use quartersawn stock, or a wood that moves less` }),
    });
  if (beside.verdict === 'sticks')
    advice.push({
      at: ['fit', 'side'],
      says: say`when dampest, the gap beside each side is ${mm(beside.gap.dampest)}, so the drawer will stick; it should be at least ${atLeast(BESIDE_BAND.least)}`,
      hint: say`${mm(roundUp(beside.gap.making + BESIDE_BAND.least - beside.gap.dampest, 10))}`,
    });
  return advice;
};
