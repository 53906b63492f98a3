import fc from 'fast-check';
import { bottomSeason } from '../../src/wood/bottomSeason.ts';
import { adviseClimate, checkYear, parseMaking } from '../../src/wood/climate.ts';
import { cornerSteps } from '../../src/wood/cornerSteps.ts';
import { gapsThroughYear, gapToLeave, judgeGaps, sizesThroughYear } from '../../src/wood/gapBand.ts';
import { gapYear } from '../../src/wood/gapYear.ts';
import { parseMoisture } from '../../src/wood/moisture.ts';
import { widthCoefficient } from '../../src/wood/movement.ts';
import { ownWood } from '../../src/wood/ownWood.ts';
import { findWood, WOODS } from '../../src/wood/species.ts';
import { mostly, wild } from '../joint/anySpec.ts';
import { abuse, must, mustBeFinite, refused } from './abuse.ts';
import { anyText } from './texts.ts';

const figure = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const written = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.tuple(figure(10, 30), figure(20, 80)).map(([t, h]) => `${t.toFixed(1)}C/${h.toFixed(0)}%`),
  },
  { weight: 3, arbitrary: figure(5, 15).map((moisture) => `${moisture.toFixed(1)}%`) },
  fc.tuple(wild, wild).map(([t, h]) => `${t}F/${h}%`),
  anyText,
);

/** Any climate for any of the known woods: what is cut to fit it never sticks. */
export const climates = abuse(
  'climates of any text',
  1,
  fc.record({
    text: fc.record({ making: written, driest: written, dampest: written }),
    wood: fc.constantFrom(...WOODS),
    cut: fc.constantFrom('flatsawn' as const, 'quartersawn' as const),
    opening: figure(20, 1000),
    least: figure(0, 3),
  }),
  ({ text, wood, cut, opening, least }) => {
    const [making, driest, dampest] = [
      parseMaking(text.making),
      parseMoisture(text.driest),
      parseMoisture(text.dampest),
    ];
    if (!making.ok || !driest.ok || !dampest.ok)
      return refused([making, driest, dampest].flatMap((read) => (read.ok ? [] : read.complaints)));
    const climate = { making: making.value, driest: driest.value, dampest: dampest.value };
    mustBeFinite(climate);
    const turned = checkYear(climate);
    if (turned.length > 0) return refused(turned);
    must(climate.driest <= climate.dampest, 'driest is damper than dampest');
    const advice = adviseClimate(climate);
    if (advice.length > 0) refused(advice);
    const coefficient = widthCoefficient(wood, cut);
    const made = opening - gapToLeave(opening, coefficient, climate, least);
    const gaps = gapsThroughYear(opening, sizesThroughYear(made, coefficient, climate));
    mustBeFinite(gaps);
    must(
      gaps.dampest >= least - 1e-6 && gaps.making >= least - 1e-6,
      'it sticks for all the gap that is left',
    );
    must(gaps.driest >= gaps.dampest - 1e-9, 'wood shrinks as it grows damper');
    must(!judgeGaps(gaps, { least, most: 1e9 }).includes('sticks'), 'it is judged to stick');
    const year = gapYear(opening, made, coefficient, climate, 12);
    mustBeFinite(year);
    const bottom = bottomSeason(
      { kind: 'solid', wood, cut },
      { flush: opening - 10, room: opening },
      climate,
      4,
    );
    mustBeFinite(bottom);
    must(bottom.depth.dampest <= opening + 1e-6, 'the bottom outgrows its room');
    const board = { wood, cut, thickness: 18 };
    mustBeFinite(cornerSteps(board, board, opening, climate.making, climate.dampest));
    return 'valid';
  },
);

export const woods = abuse(
  'woods of any name and figures',
  1,
  fc.record({
    name: fc.oneof(fc.constantFrom(...WOODS.map(({ name }) => name)), anyText),
    pair: fc.record({
      radial: mostly(1, 6),
      tangential: mostly(5, 12),
    }),
    scale: fc.constantFrom(1, 0.0003),
  }),
  ({ name, pair: { radial, tangential }, scale }) => {
    const found = findWood(name);
    const pair = { radial: radial * scale, tangential: tangential * scale };
    const own = ownWood(name, scale === 1 ? { shrinkage: pair } : { coefficient: pair });
    for (const wood of [found, own])
      if (wood.ok) {
        mustBeFinite(wood.value);
        must(wood.value.radial > 0 && wood.value.radial <= wood.value.tangential, 'no wood moves so');
      }
    const complaints = [found, own].flatMap((wood) => (wood.ok ? [] : wood.complaints));
    return complaints.length > 0 ? refused(complaints, 'numbers') : 'valid';
  },
);
