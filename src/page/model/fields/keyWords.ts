import { isKind } from '../../../joint/kinds/kinds.ts';
import type { Place } from '../../../units/complaint.ts';
import { type CornerRef, listOf } from '../editedCorner.ts';
import { measuresOf } from '../quantities.ts';
import { isOfEntry, type KeyGroup } from './keyGroups.ts';
import type { PlanKey } from './planKeys.ts';

/** What a key is called on the page, where its own words would not say it. */
const CALLED: Readonly<Record<string, string>> = {
  'fit.side': 'gap at each side',
  'fit.top': 'gap above',
  'fit.behind': 'gap behind',
  'front.lip': 'lip all round',
  'front.lip.sides': 'lip at the sides',
  'front.lip.top': 'lip above',
  'front.lip.bottom': 'lip below',
  'stock.front.species': 'wood of the fronts',
  'stock.front.grain': 'grain of the fronts',
  'stock.side.species': 'wood of the sides',
  'stock.side.grain': 'grain of the sides',
  'stock.back.species': 'wood of the backs',
  'stock.back.grain': 'grain of the backs',
  'stock.bottom.thickness': 'thickness of the bottoms',
  'stock.bottom.species': 'wood of the bottoms',
  'stock.bottom.grain': 'grain of the bottoms',
  'joint.graded': 'graded tails',
  'joint.graded.ratio': 'each tail to its neighbour',
  'joint.graded.from': 'graded from the',
  'joints.*.rail': 'rail over the drawers',
  'joints.*.rail.between': 'rail between the sides',
  'joints.*.rail.sideWidth': 'width of the sides',
  'joints.*.rail.setBack': 'behind the sides’ front edges',
  'back.joint.graded': 'graded tails',
  'back.joint.graded.ratio': 'each tail to its neighbour',
  'back.joint.graded.from': 'graded from the',
  'joints.*.graded': 'graded tails',
  'joints.*.graded.ratio': 'each tail to its neighbour',
  'joints.*.graded.from': 'graded from the',
  'boxes.*.bottom.hold': 'what holds the bottom',
  'boxes.*.lid.height': "lid's height",
  'boxes.*.lid.kerf': 'saw cut of the lid',
  'boxes.*.lid.made': 'how the lid is made',
  'drawers.*.size': 'outside size',
  'drawers.*.size.width': 'outside width',
  'drawers.*.size.height': 'outside height',
  'drawers.*.size.depth': 'outside depth',
  'drawers.*.opening.width': "opening's width",
  'drawers.*.opening.width.front': 'width in front',
  'drawers.*.opening.width.back': 'width behind',
  'drawers.*.opening.height': "opening's height",
  'drawers.*.opening.height.left': 'height on the left',
  'drawers.*.opening.height.right': 'height on the right',
  'drawers.*.opening.height.back': 'height behind',
  'drawers.*.opening.depth': "opening's depth",
  'drawers.*.opening.diagonals': 'diagonals',
  'drawers.*.opening.diagonals.rising': 'diagonal that rises to the right',
  'drawers.*.opening.diagonals.falling': 'diagonal that falls to the right',
  'drawers.*.asBuilt': 'boards, one a line',
  'woods.*': 'wood',
  'woods.*.shrinkage.radial': 'shrinkage across the rings',
  'woods.*.shrinkage.tangential': 'shrinkage along the rings',
  'woods.*.coefficient.radial': 'coefficient across the rings',
  'woods.*.coefficient.tangential': 'coefficient along the rings',
  'groove.stopped': 'groove stopped at',
  'back.drop': 'back lower than the sides by',
  'bottom.kind': 'kind of bottom',
  'bottom.slack': "bottom's slack",
  'bottom.slips': 'drawer slips',
  'bottom.slips.width': "slips' width",
  'bottom.slips.height': "slips' height",
  'pulls.holes.diameter': 'hole',
  'pulls.holes.spacing': 'between two holes',
  'pulls.size.width': "pull's width",
  'pulls.size.height': "pull's height",
  'locks.body.width': "lock's width",
  'locks.body.height': "lock's height",
  'locks.body.depth': "lock's depth",
  family: 'look of the set',
  'family.target': 'tail width of the set',
  'family.spacers': 'different spacers at most',
  'family.within': 'spacers alike within',
  'cabinet.heights.progression': 'heights grow',
  'cabinet.heights.first': 'height of the top row',
  'cabinet.heights.overall': 'bottom row to top row',
  'cabinet.heights.step': 'step from row to row',
  'cabinet.heights.ratio': 'each row to the one above',
  'cabinet.rails.width': 'rails from front to back',
  'cabinet.rails.top': 'rail over the top row',
  'cabinet.rails.bottom': 'rail under the lowest row',
  'cabinet.rails.tenon': 'tenon',
  'cabinet.rails.species': 'wood of the rails',
  'cabinet.runners.width': 'width of a runner',
  'cabinet.runners.species': 'wood of the runners',
  'cabinet.guides.height': 'height of a guide',
  'cabinet.guides.sides': 'guides at the sides',
  'saw.keep': 'least offcut',
};

/** The words of a key: `sizeWidth` as `size width`; what is in a key and is no word, as it is. */
export const inWords = (key: string | number): string =>
  String(key).replace(/(?<=[a-z])[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);

/**
 * What the page calls the field at a place in an entry of a plan, or among what all drawers have; undefined where its own
 * keys say it.
 */
export const fieldWords = (at: Place, of: CornerRef['of']): readonly string[] | undefined => {
  const place = at.join('.');
  const measure = measuresOf(of).find((each) => each.at.join('.') === place);
  if (measure !== undefined) {
    const { group, label } = measure;
    return group === 'Corner' || group === 'Boards' ? [label] : [group.toLowerCase(), label];
  }
  const called = CALLED[place] ?? CALLED[`${listOf({ of })}.*.${place}`];
  return called === undefined ? undefined : [called];
};

/** What a key is called in its group. */
export const labelOf = ({ of, places }: KeyGroup, { at }: PlanKey): string => {
  const place = at.join('.');
  // A box's keys are called as a drawer's, where those are given for all drawers.
  const called = CALLED[place] ?? (of === 'box' ? CALLED[at.slice(2).join('.')] : undefined);
  if (called !== undefined) return called;
  const [list, kind, part = 'ends'] = at;
  if (list === 'fingers' && isKind(String(kind))) return `${part} for ${kind} corners`;
  const own = isOfEntry(of) ? at.slice(2) : at;
  const prefix = places.find((place) => own.join('.').startsWith(`${place}.`))?.split('.').length ?? 0;
  const rest = own.slice(places.length === 1 ? prefix : 0).filter((step) => step !== '*');
  return (rest.length === 0 ? own : rest).map(inWords).join(' ');
};

/** What a key is, without the marks of a plan's text. */
export const aboutOf = ({ about }: PlanKey): string =>
  about.replace(/`([\w-]+)`/gu, (_, word: string) => inWords(word));

/** What a choice of words is where nothing is chosen: `lapped (as usual)`, by what the schema says of it. */
export const usualWords = ({ about, value }: PlanKey): string => {
  const [said = '', ...more] = about.split(' unless given');
  if (more.length === 0) return 'not given';
  const told = (value?.words ?? [])
    .map((word) => ({
      word: String(word),
      at: said.search(new RegExp(`\\b${word}\\b(?!.*\\b${word}\\b)`, 'u')),
    }))
    .toSorted((a, b) => b.at - a.at)[0];
  return `${told === undefined || told.at < 0 ? 'none' : told.word} (as usual)`;
};
