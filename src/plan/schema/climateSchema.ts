import { checkYear, parseMaking } from '../../wood/climate.ts';
import { parseMoisture } from '../../wood/moisture.ts';
import { complainOfAll, group, text } from './leaves.ts';

const CONDITIONS = 'air, such as 21C/45% or 70F/45%, or what a moisture meter says, such as 8%';

/** Where the wood is worked and where the piece is kept, as moisture contents in percent. */
export const climateSchema = () =>
  group('{making: 21C/45%, driest: 21C/30%, dampest: 21C/70%}', {
    making: text(CONDITIONS, parseMaking).describe(
      'On the day of making: the air in the workshop, or what a moisture meter says. 6 % to 14 % moisture content.',
    ),
    driest: text(CONDITIONS, parseMoisture).describe('Where the furniture is kept, when that is driest.'),
    dampest: text(CONDITIONS, parseMoisture).describe('Where the furniture is kept, when that is dampest.'),
  }).transform((climate, sink) => {
    const wrong = checkYear(climate);
    return wrong.length === 0 ? climate : complainOfAll(sink, climate, wrong);
  });
