import * as z from 'zod';
import { type Complaint, refuse, under } from '../../units/complaint.ts';
import { parseName } from '../../units/name.ts';
import { say } from '../../units/phrase.ts';
import { type OwnFigures, ownWood } from '../../wood/ownWood.ts';
import type { Wood } from '../../wood/species.ts';
import { complainOfAll, group, optional } from './leaves.ts';

/** The most woods of one's own: every board's wood is sought among them. */
const MOST_WOODS = 100;

/** The user's own woods, by their names. */
export const woodsSchema = () =>
  z
    .record(z.string(), figuresSchema(), {
      error: 'written {Plum: {shrinkage: {radial: 3.7, tangential: 7.1}}}',
    })
    .transform((woods, sink): readonly Wood[] => {
      const names = Object.keys(woods);
      if (names.length > MOST_WOODS)
        return complainOfAll(sink, woods, [
          {
            at: [],
            says: say`there are ${names.length} woods of your own; there may be up to ${MOST_WOODS}; leave out those that no drawer is made of`,
          },
        ]);
      const wrong = names.flatMap((name) => {
        const read = parseName(name);
        return read.ok ? [] : under([name], read.complaints);
      });
      if (wrong.length > 0) return complainOfAll(sink, woods, wrong);
      return Object.entries(woods).map(([name, wood]) => ({ ...wood, name: name.trim() }));
    });

const pair = (example: string) => {
  const figure = z.number({ error: 'a number' });
  return group(example, {
    radial: figure.describe('Across the rings.'),
    tangential: figure.describe('Along the rings.'),
  });
};

const figuresSchema = () =>
  group(
    '{shrinkage: {radial: 3.7, tangential: 7.1}}',
    optional({
      shrinkage: pair('{radial: 3.7, tangential: 7.1}').describe(
        'Shrinkage from green to oven-dry, in percent, as wood data sheets give it.',
      ),
      coefficient: pair('{radial: 0.00126, tangential: 0.00248}').describe(
        'Change of size for 1 % of moisture content, as a part of the size. In place of `shrinkage`.',
      ),
    }),
  ).transform(({ shrinkage, coefficient }, sink): Wood => {
    const ways: OwnFigures[] = [
      ...(shrinkage === undefined ? [] : [{ shrinkage }]),
      ...(coefficient === undefined ? [] : [{ coefficient }]),
    ];
    const [way] = ways;
    const wood = way !== undefined && ways.length === 1 ? ownWood('', way) : refuse(ONE_WAY);
    return wood.ok ? wood.value : complainOfAll(sink, ways, wood.complaints);
  });

const ONE_WAY: Complaint = {
  at: [],
  says: say`a wood of your own is given by its shrinkage or by its coefficient, one of the two`,
  hint: say`shrinkage: {radial: 3.7, tangential: 7.1}`,
};
