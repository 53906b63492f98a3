import { accept, type Result, refuse } from '../units/complaint.ts';
import { LONGEST_NAME } from '../units/name.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { diceSimilarity } from './diceSimilarity.ts';

/** Where a wood's figures come from. */
export type WoodSource = 'handbook' | 'memory' | 'own';

/** A wood, and how far it moves across the grain. */
export interface Wood {
  /** The handbook's name, or the user's own. */
  readonly name: string;
  /** Change of size across the rings for 1 % of moisture content, as a fraction of the size. */
  readonly radial: number;
  /** Change of size along the rings for 1 % of moisture content, as a fraction of the size. */
  readonly tangential: number;
  readonly source: WoodSource;
}

/** What to show beside figures that come from each source. */
export const SOURCE_NOTES: Readonly<Record<WoodSource, string>> = {
  handbook: 'Wood Handbook (FPL-GTR-190, 2010), Table 13-5',
  memory: 'from memory of the Wood Handbook, Table 13-5; check before you rely on it',
  own: 'your own figures',
};

type Row = readonly [name: string, radial: number, tangential: number];

/** Wood Handbook (FPL-GTR-190, 2010), Table 13-5: for 6 % to 14 % moisture content, based on the size at 10 %. */
const HANDBOOK = [
  ['Alder, red', 0.00151, 0.00256],
  ['Apple', 0.00205, 0.00376],
  ['Ash, black', 0.00172, 0.00274],
  ['Ash, Oregon', 0.00141, 0.00285],
  ['Ash, pumpkin', 0.00126, 0.00219],
  ['Ash, white', 0.00169, 0.00274],
  ['Aspen, quaking', 0.00119, 0.00234],
  ['Basswood, American', 0.0023, 0.0033],
  ['Beech, American', 0.0019, 0.00431],
  ['Birch, paper', 0.00219, 0.00304],
  ['Birch, river', 0.00162, 0.00327],
  ['Birch, yellow', 0.00256, 0.00338],
  ['Buckeye, yellow', 0.00123, 0.00285],
  ['Butternut', 0.00116, 0.00223],
  ['Catalpa, northern', 0.00085, 0.00169],
  ['Cherry, black', 0.00126, 0.00248],
  ['Chestnut, American', 0.00116, 0.00234],
  ['Cottonwood, black', 0.00123, 0.00304],
  ['Cottonwood, eastern', 0.00133, 0.00327],
  ['Elm, American', 0.00144, 0.00338],
  ['Elm, rock', 0.00165, 0.00285],
  ['Elm, slippery', 0.00169, 0.00315],
  ['Elm, winged', 0.00183, 0.00419],
  ['Hackberry', 0.00165, 0.00315],
  ['Hickory, pecan', 0.00169, 0.00315],
  ['Honeylocust', 0.00144, 0.0023],
  ['Locust, black', 0.00158, 0.00252],
  ['Madrone, Pacific', 0.00194, 0.00451],
  ['Magnolia, southern', 0.00187, 0.0023],
  ['Maple, bigleaf', 0.00126, 0.00248],
  ['Maple, red', 0.00137, 0.00289],
  ['Maple, silver', 0.00102, 0.00252],
  ['Maple, sugar', 0.00165, 0.00353],
  ['Oak, black', 0.00123, 0.0023],
  ['Oak, commercial red', 0.00158, 0.00369],
  ['Oak, commercial white', 0.0018, 0.00365],
  ['Oak, live', 0.0023, 0.00338],
  ['Oak, overcup', 0.00183, 0.00462],
  ['Persimmon, common', 0.00278, 0.00403],
  ['Sassafras', 0.00137, 0.00216],
  ['Sweetgum', 0.00183, 0.00365],
  ['Sycamore, American', 0.00172, 0.00296],
  ['Tanoak', 0.00169, 0.00423],
  ['Tupelo, black', 0.00176, 0.00308],
  ['Tupelo, water', 0.00144, 0.00267],
  ['Walnut, black', 0.0019, 0.00274],
] as const satisfies readonly Row[];

/** The same table, written down from memory. */
const FROM_MEMORY = [
  ['Yellow-poplar', 0.00158, 0.00289],
  ['Douglas-fir, coast', 0.00165, 0.00267],
  ['Pine, eastern white', 0.00071, 0.00212],
  ['Mahogany', 0.00172, 0.00238],
  ['Teak', 0.00101, 0.00186],
] as const satisfies readonly Row[];

const woods = (rows: readonly Row[], source: WoodSource): Wood[] =>
  rows.map(([name, radial, tangential]) => ({ name, radial, tangential, source }));

/** Every wood that is known by name, in the handbook's order. */
export const WOODS: readonly Wood[] = [...woods(HANDBOOK, 'handbook'), ...woods(FROM_MEMORY, 'memory')];

/** A wood's name in the table. */
type TableName = (typeof HANDBOOK | typeof FROM_MEMORY)[number][0];

/**
 * What woods are called in a timber yard. A name under which several woods are sold ("oak", "maple"), or that means
 * another tree elsewhere ("sycamore", "poplar"), is left out, so that it is asked about instead of guessed.
 */
const ALIASES: Readonly<Record<string, TableName>> = {
  alder: 'Alder, red',
  ash: 'Ash, white',
  'American ash': 'Ash, white',
  aspen: 'Aspen, quaking',
  basswood: 'Basswood, American',
  'American linden': 'Basswood, American',
  beech: 'Beech, American',
  buckeye: 'Buckeye, yellow',
  'white walnut': 'Butternut',
  catalpa: 'Catalpa, northern',
  cherry: 'Cherry, black',
  'American cherry': 'Cherry, black',
  'American black cherry': 'Cherry, black',
  chestnut: 'Chestnut, American',
  'white elm': 'Elm, American',
  'red elm': 'Elm, slippery',
  pecan: 'Hickory, pecan',
  'honey locust': 'Honeylocust',
  robinia: 'Locust, black',
  'false acacia': 'Locust, black',
  madrone: 'Madrone, Pacific',
  magnolia: 'Magnolia, southern',
  'hard maple': 'Maple, sugar',
  'rock maple': 'Maple, sugar',
  'red oak': 'Oak, commercial red',
  'American red oak': 'Oak, commercial red',
  'white oak': 'Oak, commercial white',
  'American white oak': 'Oak, commercial white',
  persimmon: 'Persimmon, common',
  'sweet gum': 'Sweetgum',
  'red gum': 'Sweetgum',
  'tan oak': 'Tanoak',
  'black gum': 'Tupelo, black',
  walnut: 'Walnut, black',
  'American walnut': 'Walnut, black',
  'American black walnut': 'Walnut, black',
  'tulip poplar': 'Yellow-poplar',
  'American tulipwood': 'Yellow-poplar',
  'Douglas fir': 'Douglas-fir, coast',
  'white pine': 'Pine, eastern white',
};

/** What else a wood is called. */
export const everydayNames = ({ name }: Wood): string[] =>
  Object.entries(ALIASES).flatMap(([called, known]) => (known === name ? [called] : []));

/** A name's words and figures, whatever their order, capitals, commas and hyphens. */
const keyOf = (name: string): string =>
  name
    .normalize('NFC')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]/u)
    .filter((word) => word !== '')
    .sort()
    .join(' ');

/** No name is longer, as a letter is at most two units of a text; of longer text only the beginning is compared. */
const LONGEST_WOOD = 2 * LONGEST_NAME;

/** Whether every word of a key is a word of another: `white` of `oak white`. */
const within = (key: string, other: string): boolean => {
  const words = new Set(other.split(' '));
  return key.split(' ').every((word) => words.has(word));
};

/** Everyday names come first, so that of two woods equally like a misspelt name the everyday one is offered. */
const BY_KEY: ReadonlyMap<string, Wood> = new Map(
  [...Object.entries(ALIASES), ...WOODS.map(({ name }) => [name, name] as const)].flatMap(([called, name]) =>
    WOODS.filter((wood) => wood.name === name).map((wood) => [keyOf(called), wood] as const),
  ),
);

/**
 * A wood by the handbook's name or an everyday one, whatever its capitals and the order of its words: `Cherry, black`,
 * `black cherry`, `cherry`.
 * @param own the user's woods, which go before those of the table
 * @returns the wood, or a complaint with an empty place that names the woods of that family ("pine") with their figures,
 * or else the three whose names are most like it
 * @example
 * ```ts
 * const wood = findWood('black cherry');
 * if (wood.ok) console.log(wood.value.name); // Cherry, black
 * ```
 */
export const findWood = (name: string, own: readonly Wood[] = []): Result<Wood> => {
  const key = keyOf(name.slice(0, LONGEST_WOOD));
  const wood =
    name.length > LONGEST_WOOD
      ? undefined
      : (own.find((each) => keyOf(each.name) === key) ?? BY_KEY.get(key));
  if (wood !== undefined) return accept(wood);
  const family = familyOf(key, own);
  if (family.length > 1)
    return refuse({
      at: [],
      says: say`${quote(name)} may be one of several woods: ${family.map(withFigures).join('; ')} (radial, tangential: percent of a board's size for 1 % of moisture content)`,
      remedy: say`choose one of these`,
    });
  const names = family.length > 0 ? family.map((wood) => wood.name) : nearestNames(key, own);
  const [only, ...others] = names;
  const unknown = say`${quote(name)} is not a wood that is known here`;
  return refuse(
    only !== undefined && others.length === 0
      ? { at: [], says: say`${unknown}; the closest name is ${quote(only)}`, hint: say`${quote(only)}` }
      : {
          at: [],
          says: say`${unknown}; the closest names are ${names.map(quote).join('; ')}`,
          remedy: say`choose one of these`,
        },
  );
};

/** Whether a name is that of a wood or of a family of woods ("oak"), and not of plywood or another board that does not move. */
export const isSolidWood = (name: string): boolean => {
  const key = keyOf(name);
  return [...BY_KEY.keys()].some((known) => within(key, known));
};

/** Most woods that share a word as a family does ("oak"); a word of more is a colour or a country. */
const MOST_OF_A_FAMILY = 6;

const familyOf = (key: string, own: readonly Wood[]): Wood[] => {
  const known = [...own.map((wood) => [keyOf(wood.name), wood] as const), ...BY_KEY];
  const woods = new Map(
    known.flatMap(([each, wood]) => (within(key, each) ? [[wood.name, wood] as const] : [])),
  );
  return woods.size <= MOST_OF_A_FAMILY ? [...woods.values()] : [];
};

/** `"Maple, sugar" (0.165, 0.353)`. */
const withFigures = ({ name, radial, tangential }: Wood): string =>
  `${quote(name)} (${[radial, tangential].map((share) => (100 * share).toFixed(3)).join(', ')})`;

const nearestNames = (key: string, own: readonly Wood[]): string[] => {
  const byLikeness = [...own.map((wood) => [keyOf(wood.name), wood] as const), ...BY_KEY]
    .map(([known, wood]) => ({ name: wood.name, known, likeness: diceSimilarity(key, known) }))
    // Of names equally like it the shortest has the least that was not asked for.
    .sort((a, b) => b.likeness - a.likeness || a.known.length - b.known.length);
  return [...new Set(byLikeness.map(({ name }) => name))].slice(0, 3);
};
