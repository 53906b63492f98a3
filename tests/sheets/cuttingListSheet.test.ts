import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cuttingList } from '../../src/drawer/cuttingList.ts';
import { parts } from '../../src/drawer/partsList.ts';
import { cuttingListSheets } from '../../src/sheets/cuttingListSheet.ts';
import { USUAL_SAWING } from '../../src/stock/usualSawing.ts';
import { AREAS, anySpec, made } from './anyDrawer.ts';
import { sheetFaults, wordsOf } from './sheetFaults.ts';

it('the cutting list of any drawer can be read on any paper, and has every size', () => {
  fc.assert(
    fc.property(
      anySpec,
      fc.constantFrom(...Object.values(AREAS)),
      fc.constantFrom('mm' as const, 'in/32' as const),
      (spec, area, units) => {
        const drawer = made(spec)?.drawer;
        fc.pre(drawer !== undefined);
        const groups = cuttingList(parts({ drawers: [drawer], advice: [] }, units), USUAL_SAWING.mm);
        const pages = cuttingListSheets(groups, { title: 'Chest', saw: USUAL_SAWING.mm, units, area });
        for (const page of pages) expect(sheetFaults(page)).toEqual([]);
        const text = pages.map(wordsOf).join(' ').replaceAll('\u00A0', ' ');
        expect(text.match(/ in all,/gu)).toHaveLength(groups.length);
        if (units === 'mm')
          for (const { rows } of groups)
            for (const { roughLength } of rows) expect(text).toContain(` ${roughLength} `);
      },
    ),
    { numRuns: 60 },
  );
});
