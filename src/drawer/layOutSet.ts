import type { Joint } from '../joint/joint.ts';
import { accept, type Complaint, isOnTools, type Result, refuse } from '../units/complaint.ts';
import { repeatedNames } from '../units/name.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { isInRange } from '../units/range.ts';
import { adviseBackSpaces, adviseDrawer } from './check/adviseDrawer.ts';
import { adviseLips } from './check/adviseLips.ts';
import { type DrawerDraft, draftDrawer, frontOfBox } from './draftDrawer.ts';
import type { Drawer, DrawerSet } from './drawer.ts';
import { TARGET_RANGE_IN_PINS } from './drawerLimits.ts';
import { boardsOf } from './drawerParts.ts';
import { hasEqualEnds } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import { familyFronts } from './familyFronts.ts';
import { familyOf } from './familyTarget.ts';
import { type DrawerComplaint, mergeComplaints, saidOnce } from './mergeComplaints.ts';
import { withFewSpacers } from './spacers/fewSpacers.ts';
import type { SpacerWish } from './spacers/spacerWish.ts';

/**
 * Sizes a whole set of drawers as planned and sets out their corners, so that all look alike; and boxes, each by itself.
 *
 * All are matched to one tail width: the given one, or the one that `familyTarget` finds. Every drawer counts once, however
 * many equal ones are made of it. One with a wished number of tails counts with that; one with listed tails has no
 * choice to make and does not count, but its mean tip enters the set's spread.
 * @param target the tail width to match, in mm
 * @param wish what is asked of the spacers where fingers guide the cutter: then half pins may move for few of them
 * @returns the set with all its advice, or everything that is wrong with any of its drawers; places start at the plan's
 * top: `['drawers', 1, 'opening', 'width']`, `['family', 'target']`
 */
export const layOutSet = (
  specs: readonly DrawerSpec[],
  target?: number,
  wish: SpacerWish = {},
  boxSpecs: readonly DrawerSpec[] = [],
): Result<DrawerSet> => {
  const set = layOutDrawers(specs, target, wish);
  const boxes = layOutBoxes(boxSpecs);
  if (!set.ok || !boxes.ok) return refuse(...complaintsOf(set), ...complaintsOf(boxes));
  return boxSpecs.length === 0
    ? set
    : accept({
        ...set.value,
        boxes: boxes.value.boxes,
        advice: [...set.value.advice, ...boxes.value.advice],
      });
};

const complaintsOf = (result: Result<unknown>): readonly Complaint[] => (result.ok ? [] : result.complaints);

const layOutDrawers = (
  specs: readonly DrawerSpec[],
  target: number | undefined,
  wish: SpacerWish,
): Result<DrawerSet> => {
  const wrong: Complaint[] = [...sameNames(specs)];
  if (target !== undefined && !(target > 0 && Number.isFinite(target)))
    wrong.push({
      at: ['family', 'target'],
      says: say`the set's tail width is ${target}; it must be more than 0`,
    });
  const ofSpecs: DrawerComplaint[] = [];
  const drafts: DrawerDraft[] = [];
  specs.forEach((spec, i) => {
    const draft = draftDrawer(spec);
    if (draft.ok) drafts.push(draft.value);
    else ofSpecs.push(...ofDrawer(spec, i, draft.complaints));
  });
  wrong.push(...mergeComplaints(ofSpecs));
  if (wrong.length > 0) return refuse(...wrong);

  const plain = familyFronts(drafts, target);
  if (plain === undefined) return accept({ drawers: [], advice: [] });
  if (!('fronts' in plain))
    return refuse(
      ...mergeComplaints(
        plain.flatMap(({ index, complaints }) => {
          const draft = drafts[index];
          return draft === undefined ? [] : ofDrawer(draft.spec, index, complaints);
        }),
      ),
    );
  const { pin } = plain;
  const guided = drafts.some(({ spec }) => spec.fingers !== undefined);
  const few =
    guided && wish.spacers !== undefined
      ? withFewSpacers({ drafts, plain, target, wish }, wish.spacers)
      : accept(plain);
  if (!few.ok) return few;
  const { fronts, target: aim } = few.value;

  const family = familyOf(fronts, aim, pin);
  const drawers: Drawer[] = [];
  const said: DrawerComplaint[] = [];
  fronts.forEach((front, i) => {
    const draft = drafts[i];
    if (draft === undefined) return;
    const { spec } = draft;
    const advice = adviseDrawer(draft, front, family);
    drawers.push(drawerOf(draft, front, advice));
    said.push(...ofDrawer(spec, i, [...advice, ...adviseBackSpaces(draft)]));
  });
  const onTools = ({ complaint }: DrawerComplaint): boolean => isOnTools(complaint);
  return accept({
    drawers,
    family,
    advice: [
      ...adviseOnTarget(aim, pin),
      ...adviseLips(drawers),
      ...mergeComplaints(said.filter((each) => !onTools(each))),
      // Advice on the tools concerns every drawer and is given once.
      ...saidOnce(said.filter(onTools)),
    ],
    ...(guided && { asked: { ...(target !== undefined && { target }), spacers: wish } }),
  });
};

const drawerOf = (draft: DrawerDraft, front: Joint, advice: readonly Complaint[]): Drawer => {
  const { spec, sizes, back } = draft;
  return { spec, sizes, boards: boardsOf(spec, sizes), front, back, choices: draft.front.possible, advice };
};

/** Boxes with all advice on them, places from the plan's top: `['boxes', 0, 'joint', 'slope']`. */
const layOutBoxes = (
  specs: readonly DrawerSpec[],
): Result<{ readonly boxes: readonly Drawer[]; readonly advice: readonly Complaint[] }> => {
  const wrong: DrawerComplaint[] = [];
  const said: DrawerComplaint[] = [];
  const boxes: Drawer[] = [];
  specs.forEach((spec, i) => {
    const ofBox = (complaint: Complaint): DrawerComplaint => ({
      name: spec.name,
      entry: ['boxes', i],
      complaint,
    });
    const draft = draftDrawer(spec);
    const front = draft.ok ? frontOfBox(draft.value) : draft;
    if (!draft.ok || !front.ok) {
      wrong.push(...complaintsOf(front).map(ofBox));
      return;
    }
    const advice = adviseDrawer(draft.value, front.value);
    // One corner, where all four are alike.
    const back = hasEqualEnds(spec) ? front.value : draft.value.back;
    boxes.push(drawerOf({ ...draft.value, back }, front.value, advice));
    said.push(...advice.map(ofBox));
  });
  return wrong.length > 0
    ? refuse(...mergeComplaints(wrong))
    : accept({ boxes, advice: mergeComplaints(said) });
};

const ofDrawer = ({ name }: DrawerSpec, i: number, complaints: readonly Complaint[]): DrawerComplaint[] =>
  complaints.map((complaint) => ({ name, entry: ['drawers', i], complaint }));

const sameNames = (specs: readonly DrawerSpec[]): Complaint[] =>
  repeatedNames(specs.map(({ name }) => name)).map(({ name, index, first }) => ({
    at: ['drawers', index, 'name'],
    says: say`drawer ${index + 1} is called ${quote(name)}, as drawer ${first + 1} is already`,
    remedy: say`give it another name, or give one drawer a count`,
  }));

const adviseOnTarget = (target: number, pin: number): Complaint[] => {
  const { least, most } = TARGET_RANGE_IN_PINS;
  return isInRange(target, { least: least * pin, most: most * pin })
    ? []
    : [
        {
          at: ['family', 'target'],
          says: say`tails of ${mm(target)} are not ${least} to ${most} times the set's pin of ${mm(pin)}`,
          hint: say`${target < least * pin ? atLeast(least * pin) : atMost(most * pin)}`,
        },
      ];
};
