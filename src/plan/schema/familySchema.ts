import * as z from 'zod';
import { mm, say } from '../../units/phrase.ts';
import type { Unit } from '../../units/unit.ts';
import { complainOfAll, group, lengths, optional, wholeNumber } from './leaves.ts';
import * as ranges from './ranges.ts';

/** What all drawers of a plan share in their look. */
export const familySchema = (unit: Unit) => {
  const length = lengths(unit);
  const pin = length(ranges.PIN);
  const leastAndMost = 'two widths, [least, most]';
  return group(
    '{target: 18}',
    optional({
      target: length(ranges.TAIL).describe(
        "The set's tail width, which all drawers are matched to. Found from the set unless given.",
      ),
      spacers: wholeNumber(ranges.SPACERS).describe(
        'The most different spacers that the front corners may need along `fingers`. Not limited unless given.',
      ),
      within: length(ranges.WITHIN).describe(
        'Spacers that differ by no more are listed as one. 0.1 mm unless given.',
      ),
      halfPins: z
        .tuple([pin, pin], { error: leastAndMost })
        .transform(([least, most], sink) =>
          least <= most
            ? { least, most }
            : complainOfAll(
                sink,
                [least, most],
                [
                  {
                    at: [],
                    says: say`the least, ${mm(least)}, is more than the most, ${mm(most)}`,
                    hint: say`[${mm(most)}, ${mm(least)}]`,
                  },
                ],
              ),
        )
        .describe(
          'The least and the most that half pins may become for the sake of few spacers. Half to twice the wished ones unless given, and never beyond those.',
        ),
    }),
  );
};
