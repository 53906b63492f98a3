import type { Place } from '../../../units/complaint.ts';
import { measuresOf } from '../quantities.ts';
import type { KeyGroup } from './keyGroups.ts';
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
  'drawers.*.size': 'outside size',
  'woods.*': 'wood',
  'groove.stopped': 'groove stopped at',
  family: 'look of the set',
  'family.target': 'tail width of the set',
  'saw.keep': 'least offcut',
};

/** The words of a key: `sizeWidth` as `size width`; what is in a key and is no word, as it is. */
export const inWords = (key: string | number): string =>
  String(key).replace(/(?<=[a-z])[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);

/**
 * What the page calls the field at a place in an entry of a plan, or among what all drawers have; undefined where its own
 * keys say it.
 */
export const fieldWords = (at: Place, of: 'drawer' | 'joint'): readonly string[] | undefined => {
  const place = at.join('.');
  const called = CALLED[place] ?? CALLED[`${of}s.*.${place}`];
  if (called !== undefined) return [called];
  const measure = measuresOf(of).find((each) => each.at.join('.') === place);
  if (measure === undefined) return undefined;
  const { group, label } = measure;
  return group === 'Corner' || group === 'Boards' ? [label] : [group.toLowerCase(), label];
};

/** What a key is called in its group. */
export const labelOf = ({ of, places }: KeyGroup, { at }: PlanKey): string => {
  const called = CALLED[at.join('.')];
  if (called !== undefined) return called;
  const own = of === 'drawer' || of === 'joint' ? at.slice(2) : at;
  const prefix = places.find((place) => own.join('.').startsWith(`${place}.`))?.split('.').length ?? 0;
  const rest = own.slice(places.length === 1 ? prefix : 0).filter((step) => step !== '*');
  return (rest.length === 0 ? own : rest).map(inWords).join(' ');
};

/** What a key is, without the marks of a plan's text. */
export const aboutOf = ({ about }: PlanKey): string =>
  about.replace(/`(\w+)`/gu, (_, word: string) => inWords(word));

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
