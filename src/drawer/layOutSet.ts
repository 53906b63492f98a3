import type { Joint } from '../joint/joint.ts';
import { setOut } from '../joint/layOut.ts';
import { withAdvice } from '../router/limits/layOutForCutter.ts';
import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { repeatedNames } from '../units/name.ts';
import { atLeast, atMost, mm, say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { isInRange } from '../units/range.ts';
import { adviseBackSpaces, adviseDrawer } from './check/adviseDrawer.ts';
import { type DrawerDraft, draftDrawer } from './draftDrawer.ts';
import { frontWith } from './draftFront.ts';
import type { Drawer, DrawerSet } from './drawer.ts';
import { TARGET_RANGE_IN_PINS } from './drawerLimits.ts';
import { boardsOf } from './drawerParts.ts';
import { frontJointSpec } from './drawerSizes.ts';
import type { DrawerSpec } from './drawerSpec.ts';
import { commonPin, familyOf, familyTarget, nearestChoice } from './familyTarget.ts';
import { type DrawerComplaint, mergeComplaints, saidOnce } from './mergeComplaints.ts';

/**
 * Sizes a whole set of drawers and sets out their corners, so that all look alike.
 *
 * All are matched to one tail width: the given one, or the one that `familyTarget` finds. Every drawer counts once, however
 * many equal ones are made of it. One with a wished number of tails counts with that; one with listed tails has no
 * choice to make and does not count, but its mean tip enters the set's spread.
 * @param target the tail width to match, in mm
 * @returns the set with all its advice, or everything that is wrong with any of its drawers; places start at the plan's
 * top: `['drawers', 1, 'opening', 'width']`, `['family', 'target']`
 */
export const layOutSet = (specs: readonly DrawerSpec[], target?: number): Result<DrawerSet> => {
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

  const pin = commonPin(drafts.map(({ front }) => front.resolved.pin));
  if (pin === undefined) return accept({ drawers: [], advice: [] });
  const choosing = drafts.map(({ front }) => front.candidates).filter((candidates) => candidates.length > 0);
  const aim =
    target ??
    familyTarget(
      choosing.map((candidates) => candidates.map(({ tip }) => tip)),
      pin,
    );
  const ofFronts: DrawerComplaint[] = [];
  const fronts: Joint[] = [];
  drafts.forEach((draft, i) => {
    const front = frontJoint(draft, aim);
    if (front.ok) fronts.push(front.value);
    else ofFronts.push(...ofDrawer(draft.spec, i, front.complaints));
  });
  if (ofFronts.length > 0) return refuse(...mergeComplaints(ofFronts));

  const family = familyOf(fronts, aim, pin);
  const drawers: Drawer[] = [];
  const said: DrawerComplaint[] = [];
  fronts.forEach((front, i) => {
    const draft = drafts[i];
    if (draft === undefined) return;
    const { spec, sizes, back } = draft;
    const advice = adviseDrawer(draft, front, family);
    drawers.push({
      spec,
      sizes,
      boards: boardsOf(spec, sizes),
      front,
      back,
      choices: draft.front.possible,
      advice,
    });
    said.push(...ofDrawer(spec, i, [...advice, ...adviseBackSpaces(draft)]));
  });
  const [onCutter, onDrawers] = [said.filter(isOnCutter), said.filter((each) => !isOnCutter(each))];
  return accept({
    drawers,
    family,
    advice: [
      ...adviseOnTarget(aim, pin),
      ...mergeComplaints(onDrawers),
      // Advice on the cutter concerns every drawer and is given once.
      ...saidOnce(onCutter),
    ],
  });
};

/** The front joint with the number of tails that comes nearest to the aim; a listed one is as it was listed. */
const frontJoint = ({ front, spec, sizes }: DrawerDraft, aim: number): Result<Joint> => {
  const { cutter } = spec;
  const { resolved, possible } = front;
  const choice = nearestChoice(front.candidates, aim);
  const advised = (joint: Joint): Joint =>
    cutter === undefined ? joint : withAdvice(frontJointSpec(spec, sizes.height), joint, cutter);
  if (choice === undefined || resolved.spacing.kind === 'listed') {
    const listed = setOut(resolved);
    return listed.ok ? accept(advised(listed.value)) : listed;
  }
  const { tails } = choice;
  const joint = frontWith(resolved, resolved.spacing, choice);
  if (!joint.ok) return joint;
  const alternatives = possible
    .filter((other) => Math.abs(other.tails - tails) === 1)
    .map((other) => ({ tails: other.tails, tip: other.tip }));
  return accept(advised({ ...joint.value, alternatives }));
};

const ofDrawer = ({ name }: DrawerSpec, i: number, complaints: readonly Complaint[]): DrawerComplaint[] =>
  complaints.map((complaint) => ({ name, entry: ['drawers', i], complaint }));

const isOnCutter = ({ complaint: { at } }: DrawerComplaint): boolean => at[0] === 'cutter';

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
