import { type Joint, meanTail } from '../../joint/joint.ts';
import { setOut } from '../../joint/layOut.ts';
import { leastTip } from '../../joint/spacing.ts';
import { fingerSetting } from '../../router/fingers/fingerSetting.ts';
import { leastGuardedTail } from '../../router/fingers/fingers.ts';
import { leastTail } from '../../router/limits/tailLimits.ts';
import { accept, type Complaint, type Result, refuse } from '../../units/complaint.ts';
import { listNames } from '../../units/listNames.ts';
import { mm, say } from '../../units/phrase.ts';
import { quote } from '../../units/quote.ts';
import type { DrawerDraft } from '../draftDrawer.ts';
import { MOST_SOUGHT, SPACERS_RANGE, TARGET_RANGE_IN_PINS } from '../drawerLimits.ts';
import type { DrawerSpec } from '../drawerSpec.ts';
import type { FamilyFronts } from '../familyFronts.ts';
import { advisedOnTools } from '../frontJoint.ts';
import { countRanges } from './countRanges.ts';
import { distinct, SAME_LISTED, type Seeker, type SpacerAnswer, searchSpacers } from './spacerSearch.ts';
import type { SpacerWish } from './spacerWish.ts';

/** A set whose spacers are counted: its drawers, their fronts by the family rule, and what is asked of them. */
export interface SpacerCase {
  readonly drafts: readonly DrawerDraft[];
  readonly plain: FamilyFronts;
  /** The tail width that is given for the set, in mm: then every drawer keeps its layout. */
  readonly target: number | undefined;
  readonly wish: SpacerWish;
}

/** Fronts that need few spacers. */
export interface FewSpacers {
  readonly target: number;
  readonly sum: number;
  readonly fronts: readonly Joint[];
}

/** A drawer whose layout is sought, by its place among the drafts. */
interface Sought {
  readonly index: number;
  readonly seeker: Seeker;
}

/** Listed and graded drawers keep their layout, and so do all where the set's tail width is given. */
export const isSought = (
  { fingers, joint }: Pick<DrawerSpec, 'fingers' | 'joint'>,
  target: number | undefined,
): boolean => target === undefined && fingers !== undefined && joint.spacing.kind === 'even';

const seekerOf = ({ spec, front: { resolved } }: DrawerDraft, { halfPins }: SpacerWish): Seeker => {
  const { cutter, fingers, groove } = spec;
  const { spacing } = resolved;
  if (cutter === undefined || fingers === undefined) return { origin: 0, counts: [] };
  const tools = { cutter, fingers };
  const least = Math.max(leastTip(resolved), leastTail(resolved, tools));
  const most = fingers.pairs ?? Number.POSITIVE_INFINITY;
  return {
    origin: leastGuardedTail(fingers, cutter, resolved.depth),
    counts: countRanges(resolved, groove, least, halfPins).filter(
      ({ tails }) =>
        tails <= most && (spacing.kind !== 'even' || spacing.tails === undefined || tails === spacing.tails),
    ),
  };
};

const soughtOf = ({ drafts, target, wish }: SpacerCase): Sought[] =>
  drafts.flatMap((draft, index) =>
    isSought(draft.spec, target) ? [{ index, seeker: seekerOf(draft, wish) }] : [],
  );

/** The different spacers at the front corners of drawers that keep their layout. */
const keptSpacers = ({ drafts, plain, target }: SpacerCase): number[] =>
  distinct(
    drafts.flatMap((draft, i) => {
      const { cutter, fingers } = draft.spec;
      const front = plain.fronts[i];
      if (isSought(draft.spec, target) || !cutter || !fingers || !front) return [];
      return fingerSetting(front, cutter, fingers).pairs.flatMap(({ spacer }) =>
        spacer > 0 ? [spacer] : [],
      );
    }),
    SAME_LISTED,
  );

const searchFor = (all: SpacerCase, sought: readonly Sought[], spacers: number): SpacerAnswer | undefined => {
  const { drafts, plain, target } = all;
  const { least, most } = TARGET_RANGE_IN_PINS;
  return searchSpacers({
    seekers: sought.map(({ seeker }) => seeker),
    // Listed drawers made no choice, and do not belong to the sum.
    kept: plain.fronts.flatMap((front, i) => {
      const draft = drafts[i];
      return draft === undefined || isSought(draft.spec, target) || draft.front.candidates.length === 0
        ? []
        : [meanTail(front)];
    }),
    keptSpacers: keptSpacers(all),
    target:
      target === undefined
        ? { least: least * plain.pin, most: most * plain.pin }
        : { least: target, most: target },
    spacers,
  });
};

/** The fronts of an answer: those that were sought, and the others by the family rule. */
const frontsOf = ({ drafts, plain }: SpacerCase, sought: readonly Sought[], answer: SpacerAnswer): Joint[] =>
  plain.fronts.map((front, i) => {
    const place = sought.findIndex(({ index }) => index === i);
    const [draft, layout] = [drafts[i], answer.layouts[place]];
    if (draft === undefined || layout === undefined) return front;
    const joint = setOut({
      ...draft.front.resolved,
      halfPin: layout.halfPin,
      spacing: { kind: 'even', tails: layout.tails },
    });
    return joint.ok ? advisedOnTools(draft, { ...joint.value, alternatives: [] }) : front;
  });

/** The fronts with the least family sum that need at most so many different spacers; undefined where there are none. */
export const fewSpacers = (all: SpacerCase, spacers: number): FewSpacers | undefined => {
  const sought = soughtOf(all);
  if (sought.length > MOST_SOUGHT) return undefined;
  const answer = searchFor(all, sought, spacers);
  return (
    answer && {
      target: sought.length === 0 ? all.plain.target : answer.target,
      sum: answer.sum,
      fronts: frontsOf(all, sought, answer),
    }
  );
};

/** Whether so few drawers are sought that it is done. */
export const canSeek = (all: SpacerCase): boolean => soughtOf(all).length <= MOST_SOUGHT;

/**
 * The fronts that need at most as many different spacers as asked.
 * @returns complaints at `family.spacers`, or at `family.halfPins` where those are to blame
 */
export const withFewSpacers = (all: SpacerCase, spacers: number): Result<FewSpacers> => {
  const sought = soughtOf(all);
  const complain = (complaint: Omit<Complaint, 'at'>, key = 'spacers'): Result<never> =>
    refuse({ at: ['family', key], ...complaint });
  if (sought.length > MOST_SOUGHT)
    return complain({
      says: say`few spacers are sought for at most ${MOST_SOUGHT} drawers, and this set has ${sought.length} whose tails are not listed or graded`,
      remedy: say`list the tails of some, make a plan of each part of the set, or remove the key`,
    });
  const stuck = sought.filter(({ seeker }) => seeker.counts.length === 0);
  if (stuck.length > 0) {
    const names = stuck.map(({ index }) => all.drafts[index]?.spec.name ?? '');
    const { halfPins } = all.wish;
    return complain(
      {
        says: say`${listNames(names.map(quote))}: no half pins ${halfPins ? say`of ${mm(halfPins.least)} to ${mm(halfPins.most)}, ` : []}from half to twice the wished ones, leave tails as wide as their fingers that hide the groove`,
        remedy: say`wish for other half pins or another number of tails there, or use narrower fingers`,
      },
      halfPins && 'halfPins',
    );
  }
  const found = fewSpacers(all, spacers);
  if (found !== undefined) return accept(found);
  const kept = keptSpacers(all).length;
  for (let more = spacers + 1; more <= SPACERS_RANGE.most; more++)
    if (fewSpacers(all, more) !== undefined)
      return complain({
        says: say`the front corners cannot do with ${spacers} different ${spacers === 1 ? 'spacer' : 'spacers'}${kept > 0 ? `: those that stay as they are need ${kept}` : spacers === 0 ? ': not every tail can be just as wide as its fingers' : ''}`,
        hint: say`${more}`,
        ...(all.target === undefined && {
          remedy: say`wish for wider half pins, which may then move further`,
        }),
      });
  return complain({
    says: say`the front corners cannot do with ${spacers} different spacers, nor with ${SPACERS_RANGE.most}`,
    remedy: say`wish for wider half pins, which may then move further, list fewer different tails, or remove the key`,
  });
};
