import { describe, expect, it } from 'vitest';
import type { FittingsWish } from '../../../src/drawer/fittings/fittingSpec.ts';
import { setFittings } from '../../../src/drawer/fittings/setFittings.ts';
import { benchSheet } from '../../../src/sheets/bench/benchSheet.ts';
import type { Notation } from '../../../src/units/notation.ts';
import { inOpening } from '../../drawer/chest.ts';
import { value } from '../../value.ts';
import { AREAS, made } from '../anyDrawer.ts';
import { sheetFaults, wordsOf } from '../sheetFaults.ts';

/** The bench sheet of a drawer whose front is 574 x 190 and 20 thick. */
const sheet = (wish: FittingsWish, units: Notation = 'mm', area = AREAS.A4) => {
  const found = made({ ...inOpening(575, 191, 420), fittings: wish });
  if (found === undefined) throw new Error('this drawer can be made');
  const fittings = value(setFittings([found.drawer])).of.get(found.drawer);
  return benchSheet(found.drawer, found.parts, { units, area, ...(fittings && { fittings }) }).draw();
};

const words = (wish: FittingsWish): string => sheet(wish).map(wordsOf).join(' ').replaceAll('\u00A0', ' ');

describe('pulls, lock and stops on a bench sheet', () => {
  it('have the places to drill, those that mirror each other once', () => {
    expect(words({ pulls: { number: 2, holes: { spacing: 64 } } })).toMatch(
      /Pulls .*drill 5 mm; from each end, and up: 111\.5 mm, 95 mm .*from each end, and up: 175\.5 mm, 95 mm/u,
    );
    expect(words({ pulls: {} })).toMatch(/drill 5 mm; from each end, and up: 287 mm, 95 mm/u);
    const locked = words({ locks: { pin: 18 }, pulls: { number: 2 } });
    expect(locked).toMatch(/Pulls and lock .*Key: drill 6 mm in the middle, down from the upper edge 18 mm/u);
    expect(locked).toMatch(/width × height × depth: 50 × 32 × 10 mm/u);
  });

  it('have the stops’ size and places', () => {
    // A fifth of 575.
    expect(words({ stops: {} })).toMatch(/Stops .*behind its front edge 20 mm .*opening: 115 mm/u);
    expect(words({ stops: { number: 1 } })).toMatch(
      /Stop .*Its middle from both sides of the opening: 287\.5 mm/u,
    );
  });

  it('come with the cautions for drilling, which nothing else has', () => {
    const caution =
      /Drill from the outside face\. Clamp a backing board.*Keep fingers, hair and sleeves clear of the drill/u;
    expect(words({ pulls: {} })).toMatch(caution);
    expect(words({ locks: {} })).toMatch(caution);
    expect(words({ stops: {} })).not.toMatch(/drill/u);
  });

  it('have nothing over anything else, on any paper and in any unit', () => {
    const all = { pulls: { number: 2, holes: { spacing: 96 } }, locks: {}, stops: {} };
    for (const area of Object.values(AREAS))
      for (const units of ['mm', 'in', 'in/1000'] as const)
        expect(sheet(all, units, area).flatMap(sheetFaults)).toEqual([]);
  });
});
