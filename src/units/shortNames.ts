import { nameKey } from './name.ts';

/** A name in every wording that sheets have for it; none is a wording of another name of its plan. */
export interface ShortName {
  /** What it names: a drawer, a single corner, or several drawers. */
  readonly names: readonly string[];
  /** In full. */
  readonly item: string;
  /** Shorter wordings, the longest first. */
  readonly shorter: readonly string[];
  /** The number in those wordings that would be another name's without it, for sheets to explain; absent where there are none. */
  readonly number?: string;
}

/** The most characters of each wording. */
const LENGTHS = [Number.POSITIVE_INFINITY, 30, 20, 12, 8, 5];

/** The length at which a number stands alone; a wording that is shorter still is left out where it would need one. */
const NUMBER_ALONE = 8;

/** The fewest characters of a wording that says `more` in words. */
const ROOM_FOR_MORE = 20;

/** A name cut to `most` characters, with an ellipsis where it was longer. */
export const cut = (text: string, most: number): string => {
  const characters = [...text];
  const kept = characters.slice(0, most - 1).join('');
  return characters.length <= most ? text : `${withoutSigns(kept)}…`;
};

/** A name cut before its last word or, where that is too long, before its last letters. */
const cutInMiddle = (text: string, most: number): string => {
  const characters = [...text];
  if (characters.length <= most) return text;
  const word = [...(/\S+$/u.exec(text)?.[0] ?? '')];
  const tail = word.length <= most - 3 ? word : characters.slice(-Math.floor(most / 2));
  const head = characters.slice(0, most - 1 - tail.length).join('');
  return `${withoutSigns(head)}…${tail.join('').replace(/^[\s\p{P}\p{M}]+/u, '')}`;
};

/** Names that stand together: in full, or the first of them cut and how many more there are, so that none seems the only one. */
const cutGroup = (
  names: readonly string[],
  most: number,
): { readonly end: string; readonly middle: string } => {
  const [first = '', ...others] = names;
  const whole = names.join(', ');
  if (others.length === 0 || [...whole].length <= most)
    return { end: cut(whole, most), middle: cutInMiddle(whole, most) };
  const more = most < ROOM_FOR_MORE ? `+${others.length}` : ` + ${others.length} more`;
  return {
    end: cut(first, most - more.length) + more,
    middle: cutInMiddle(first, most - more.length) + more,
  };
};

/** A text without the blanks and signs at its end. */
const withoutSigns = (text: string): string => text.replace(/[\s\p{P}]+$/u, '');

/**
 * Every name of a plan in its wordings, a group's names side by side: cut at its end or, where another name comes to the
 * same, in its middle; where that is another's too, with a number, its place in the list. Wordings are compared by `nameKey`.
 * @param word what stands before a number
 */
export const shortNames = (groups: readonly (readonly string[])[], word = 'no.'): ShortName[] => {
  const cuts = groups.map((names) => LENGTHS.map((most) => ({ most, ...cutGroup(names, most) })));
  const owners = new Map<string, number | 'several'>();
  for (const [i, levels] of cuts.entries())
    for (const key of levels.flatMap(({ end, middle }) => [nameKey(end), nameKey(middle)]))
      owners.set(key, (owners.get(key) ?? i) === i ? i : 'several');

  return cuts.map((levels, i): ShortName => {
    const ownerOf = (text: string) => owners.get(nameKey(text));
    const own = levels.map(({ most, end, middle }) => ({
      most,
      end,
      text: [end, middle].find((text) => ownerOf(text) === i),
    }));
    const wordings = (number: string): string[] =>
      own.flatMap(({ most, end, text }) => {
        if (text !== undefined) return [text];
        return most > NUMBER_ALONE ? [`${end} ${number}`] : most === NUMBER_ALONE ? [number] : [];
      });
    // Another name may look like this one's with its number.
    let place = i + 1;
    while (wordings(`${word} ${place}`).some((text) => (ownerOf(text) ?? i) !== i)) place += groups.length;
    const number = `${word} ${place}`;
    const [item = '', ...shorter] = wordings(number);
    return {
      names: groups[i] ?? [],
      item,
      shorter,
      ...(own.some(({ most, text }) => text === undefined && most >= NUMBER_ALONE) && { number }),
    };
  });
};

/**
 * The wordings of each group of a plan's drawers that sheets name together, or of one alone, for `shortNames`.
 * @param names all of the plan's, whose places are their numbers
 */
export const groupNames = (
  names: readonly string[],
  groups: readonly (readonly string[])[],
  word?: string,
): ((group: readonly string[]) => ShortName) => {
  const all = new Map(
    [...names.map((name) => [name]), ...groups].map((group) => [JSON.stringify(group), group]),
  );
  const short = new Map(
    shortNames([...all.values()], word).map((name) => [JSON.stringify(name.names), name]),
  );
  return (group) => short.get(JSON.stringify(group)) ?? { names: group, item: group.join(', '), shorter: [] };
};
