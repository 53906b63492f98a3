import type { Joint } from '../../joint/joint.ts';
import type { Complaint } from '../../units/complaint.ts';
import { atLeast, atMost, mm, type Phrase, say } from '../../units/phrase.ts';
import { type Cutter, diameterAt } from './cutter.ts';

/** Least cutting length above the wood, in mm: with less the neck comes close to it. */
const SPARE_LENGTH = 1;

/** Advice on cutting this joint with this cutter; places start with `cutter`. */
export const adviseCutter = ({ depth }: Joint, cutter: Cutter): Complaint[] => {
  const { length, neck } = cutter;
  const advice: Complaint[] = [];
  const atSurface = diameterAt(cutter, depth);
  if (length - depth < SPARE_LENGTH)
    advice.push({
      at: ['cutter', 'length'],
      says: say`set ${mm(depth)} deep, the cutter has ${mm(length - depth)} of its cutting length to spare: a deeper setting after a trial joint may be more than it cuts`,
      hint: say`${atLeast(depth + SPARE_LENGTH)}`,
    });
  if (neck !== undefined && neck > atSurface)
    advice.push({
      at: ['cutter', 'neck'],
      says: say`a neck of ${mm(neck)} is wider than the cut at the surface (${mm(atSurface)}): it rubs as soon as it comes down to the wood, ${mm(length)} above the cutter's end`,
      hint: say`${atMost(atSurface)}`,
      remedy: say`never set the cutter deeper than ${mm(length)}`,
    });
  return advice;
};

/** Safety before a router is switched on (common practice). */
export const BEFORE_ROUTING: readonly Phrase[] = [
  say`Unplug the router to change or set the cutter; hold at least two thirds of its shank, and check the setting again when it is tight.`,
  say`Keep the guards on. Wear eye and ear protection and a dust mask. Clamp work and guide; keep both hands on the router. Its maker's manual comes before these words.`,
];

/** Steps and safety of work with any router and guide, in the order of the work (common practice). */
export const CAUTIONS: readonly Phrase[] = [
  ...BEFORE_ROUTING,
  say`A dovetail cutter cuts its full depth in one pass: it cannot be lowered into the cut, nor lifted out of it. Switch off and let it stop before the router leaves the guide.`,
  say`Take most of the waste out first with a straight cutter no wider than the narrow end of the space.`,
  say`Score the grain first: a light pass along the whole edge, from right to left, no more than ${mm(1)} deep, keeps the long grain from tearing where the cutter leaves.`,
  say`Then feed against the cutter's turn, from left to right as you stand before the work, and back the far face with a strip of scrap.`,
  say`Cut one trial joint in scrap of the same thickness before the work, and set the cutter by what it shows.`,
];

/** Work with fingers that slide along a bar (common practice). */
export const FINGER_CAUTIONS: readonly Phrase[] = [
  say`Set every pair from the reference edge, by the rod; never from the pair beside it, as errors would add up.`,
  say`Push the two fingers of each pair against their spacer and lock both. Push every finger by hand before the router is switched on.`,
  say`Clamp a backing board behind the work, its end level with the work's: the cutter then breaks out in scrap.`,
  say`Beyond the half spaces there is no finger: put a support as high as the fingers under the router there.`,
];
